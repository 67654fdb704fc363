import { describe, expect, it } from 'vitest';
import { placeProgress } from './place-progress.ts';

const DAY_MS = 86_400_000;
const point = (session: string, day: number, chance: number) => ({
  session,
  atMs: day * DAY_MS,
  counts: { good: 0, fair: 0, missed: 0, excused: 0 },
  filtered: { chance, interval90: [chance - 0.1, chance + 0.1] as const },
  smoothed: { chance, interval90: [chance - 0.1, chance + 0.1] as const },
});
const leg = (session: string, day: number, chance: number) => ({
  rep: `${session}-${chance}`,
  session,
  atMs: day * DAY_MS,
  grade: 'good' as const,
  cause: null,
  weight: 1,
  chance,
});

describe('places in the picture of progress', () => {
  const points = [point('a', 0, 0.5), point('b', 10, 0.6), point('c', 100, 0.8)];

  it('days keep their distance: a lay-off of 90 days is nine times that of 10', () => {
    const legs = points.map(({ session, atMs }) => leg(session, atMs / DAY_MS, 0.4));
    const [a, b, c] = placeProgress({ points, legs }).legs.map(({ x }) => x);
    expect((c! - b!) / (b! - a!)).toBeCloseTo(9, 9);
    expect(a).toBeGreaterThan(0);
    expect(c).toBeLessThan(1);
  });

  it('chance 1 is at the top, and the line and its band run through every session', () => {
    const placed = placeProgress({ points, legs: [leg('a', 0, 1), leg('a', 0, 0)] });
    expect(placed.legs.map(({ y }) => y)).toEqual([0, 1]);
    expect(placed.line).toBe('M0.03 0.5L0.124 0.4L0.97 0.2');
    expect(placed.band).toBe('M0.03 0.4L0.124 0.3L0.97 0.1L0.97 0.3L0.124 0.5L0.03 0.6Z');
  });

  it('legs of one day stand side by side in their order, about their day', () => {
    const legs = [0.1, 0.2, 0.3].map((chance) => leg('b', 10, chance));
    const xs = placeProgress({ points, legs }).legs.map(({ x }) => x);
    expect(xs[0]).toBeLessThan(xs[1]!);
    expect(xs[1]).toBeLessThan(xs[2]!);
    expect(xs[1]).toBeCloseTo(0.124, 9);
  });

  it('one day, the same moment twice, none: no place that is no number', () => {
    const one = placeProgress({ points: [point('a', 3, 0.5)], legs: [leg('a', 3, 0.5)] });
    expect(one.line).toBe('M0.42 0.5L0.58 0.5');
    const twice = [point('a', 3, 0.5), point('b', 3, 0.7)];
    for (const placed of [one, placeProgress({ points: twice, legs: [leg('b', 3, 0.5)] })]) {
      expect(placed.line + placed.band).not.toMatch(/NaN|Infinity|undefined/);
      for (const { x, y } of placed.legs) expect(Number.isFinite(x + y)).toBe(true);
    }
    expect(placeProgress({ points: [], legs: [] })).toEqual({ line: '', band: '', legs: [] });
  });
});
