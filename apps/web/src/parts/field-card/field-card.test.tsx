import type { RepPicture } from '@sedgeline/engine/ground';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { FieldCard } from './field-card.tsx';

const SEND = { eastM: 0, northM: 0 };
const stoppedAt = (stopM: number): RepPicture => ({
  layout: { handlerAt: SEND, things: [] },
  sendFrom: SEND,
  handlerAt: SEND,
  dogAt: SEND,
  strokes: [
    { kind: 'line', from: SEND, to: { eastM: 0, northM: stopM }, lengthM: stopM },
    { kind: 'stop', at: { eastM: 0, northM: stopM }, distanceM: stopM },
  ],
  things: [],
  cover: 0,
  obstacles: [],
  reachM: 40,
});

const attribute = (svg: string, name: string): string => new RegExp(`${name}="([^"]*)"`).exec(svg)?.[1] ?? '';

/** Reads the stop bar off the picture as anyone could who has only the SVG. */
function barM(svg: string): number {
  const bar = /<line[^>]*data-mark="stop"[^>]*>/.exec(svg)?.[0] ?? '';
  return (
    (Number(attribute(svg, 'data-send-y')) - Number(attribute(bar, 'y1'))) *
    Number(attribute(svg, 'data-metres-per-unit'))
  );
}

it.each([5, 20, 35, 120])('draws a stop at %i m where the svg itself says it is', (stopM) => {
  for (const size of ['full', 'low', 'wide', 'small'] as const) {
    const svg = renderToStaticMarkup(<FieldCard picture={stoppedAt(stopM)} size={size} />);
    // Places are written to a hundredth of a unit; on the smallest card that is 2 cm at 120 m.
    expect(Math.abs(barM(svg) - stopM)).toBeLessThan(0.02);
  }
});

it('is a picture with a name and a text', () => {
  const svg = renderToStaticMarkup(<FieldCard picture={stoppedAt(18)} title="Rep 5" />);
  expect(svg).toContain('role="img"');
  expect(svg).toMatch(/<title[^>]*>Rep 5<\/title>/);
  expect(svg).toMatch(/<desc[^>]*>Line of 18 m; stop at 18 m\.<\/desc>/);
  const [title, said] = attribute(svg, 'aria-labelledby').split(' ');
  expect(svg).toContain(`id="${title}"`);
  expect(svg).toContain(`id="${said}"`);
});
