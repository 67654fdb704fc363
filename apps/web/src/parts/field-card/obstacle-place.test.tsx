import type { Ask } from '@sedgeline/engine/ability';
import { drawnRep, type LaidLeg } from '@sedgeline/engine/session';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { FieldCard } from './field-card.tsx';

/** A line of 50 m, stopped at 20 m, cast 14 m to the right. */
const chain = (line: Ask, cast: Ask): LaidLeg[] => [
  { skill: 'line', ask: { distanceM: 50, temptation: 'placed-dummy', ...line } },
  { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.4 } },
  { skill: 'cast-right', ask: { distanceM: 20, castM: 14, ...cast } },
  { skill: 'pickup', ask: {} },
];

const number = (element: string, name: string): number =>
  Number(new RegExp(`${name}="(-?[0-9.]+)"`).exec(element)?.[1] ?? Number.NaN);

interface Bar {
  readonly eastM: number;
  readonly northM: number;
  /** From end to end of what is drawn. */
  readonly acrossEastM: number;
  readonly acrossNorthM: number;
}

/** Every obstacle in metres from the send point, read from the picture as anyone could who has only the SVG. */
function obstaclesM(legs: LaidLeg[], size: 'full' | 'small'): Bar[] {
  const svg = renderToStaticMarkup(<FieldCard picture={drawnRep(legs)} size={size} />);
  const metres = number(svg, 'data-metres-per-unit');
  return [...svg.matchAll(/<g[^>]*data-mark="obstacle"[^>]*><path d="([^"]*)"/g)].map(([group, path]) => {
    const figures = (path?.match(/-?[0-9.]+/g) ?? []).map(Number);
    const [x1, y1, x2, y2] = [...figures.slice(0, 2), ...figures.slice(-2)] as [
      number,
      number,
      number,
      number,
    ];
    return {
      eastM: (number(group, 'data-x') - number(svg, 'data-send-x')) * metres,
      northM: (number(svg, 'data-send-y') - number(group, 'data-y')) * metres,
      acrossEastM: Math.abs(x2 - x1) * metres,
      acrossNorthM: Math.abs(y2 - y1) * metres,
    };
  });
}

/** Places are written to a hundredth of a unit: 0.02 m at half a metre a unit, on the small card. */
const TO_M = 0.02;

it.each(['full', 'small'] as const)(
  'draws a fence that only the cast crosses across the cast, %s',
  (size) => {
    const bars = obstaclesM(chain({}, { obstacle: 2 }), size);
    expect(bars).toHaveLength(1);
    const [bar] = bars as [Bar];
    // The cast runs due east from (0, 20) to (14, 20): the fence stands between its ends, square to it.
    expect(Math.abs(bar.northM - 20)).toBeLessThan(TO_M);
    expect(bar.eastM).toBeGreaterThan(0);
    expect(bar.eastM).toBeLessThan(14);
    expect(bar.acrossEastM).toBeLessThan(TO_M);
    expect(bar.acrossNorthM).toBeGreaterThan(1);
  },
);

it.each(['full', 'small'] as const)(
  'draws a fence that only the line crosses across the line, %s',
  (size) => {
    const bars = obstaclesM(chain({ obstacle: 2 }, {}), size);
    expect(bars).toHaveLength(1);
    const [bar] = bars as [Bar];
    // The line runs due north from (0, 0) to the stop at (0, 20).
    expect(Math.abs(bar.eastM)).toBeLessThan(TO_M);
    expect(bar.northM).toBeGreaterThan(0);
    expect(bar.northM).toBeLessThan(20);
    expect(bar.acrossNorthM).toBeLessThan(TO_M);
    expect(bar.acrossEastM).toBeGreaterThan(1);
  },
);

it('draws both where both are crossed, and none on open ground', () => {
  const bars = obstaclesM(chain({ obstacle: 1 }, { obstacle: 3 }), 'full');
  expect(bars.map(({ eastM }) => eastM > 1)).toEqual([false, true]);
  expect(obstaclesM(chain({}, {}), 'full')).toEqual([]);
});
