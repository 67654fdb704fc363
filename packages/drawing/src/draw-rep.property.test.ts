import type { PlanePoint, RepPicture, RepStroke } from '@sedgeline/engine/ground';
import { words } from '@sedgeline/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawRep } from './draw-rep.ts';
import type { RepDrawing } from './drawing.ts';
import { overlap } from './spots.ts';
import { cutToWidth, textWidth } from './text-width.ts';

const CARDS = [
  { width: 366, height: 300, labels: true },
  { width: 366, height: 224, labels: true },
  { width: 560, height: 400, labels: true },
  { width: 160, height: 108, labels: false },
];

/** Places anywhere a handler could put them, on top of one another and 400 m apart included. */
const place: fc.Arbitrary<PlanePoint> = fc.oneof(
  fc.record({
    eastM: fc.double({ min: -400, max: 400, noNaN: true }),
    northM: fc.double({ min: -400, max: 400, noNaN: true }),
  }),
  fc.record({ eastM: fc.integer({ min: -30, max: 30 }), northM: fc.integer({ min: 0, max: 60 }) }),
  fc.constant({ eastM: 0, northM: 0 }),
);
const lengthM = fc.double({ min: 0, max: 400, noNaN: true });
const stroke: fc.Arbitrary<RepStroke> = fc.oneof(
  fc.record({ kind: fc.constant('line' as const), from: place, to: place, lengthM }),
  fc.record({ kind: fc.constant('recall' as const), from: place, to: place, lengthM }),
  fc.record({ kind: fc.constant('unrun' as const), from: place, to: place }),
  fc.record({ kind: fc.constant('stop' as const), at: place, distanceM: lengthM }),
  fc.record({ kind: fc.constant('whistle' as const), at: place, distanceM: lengthM }),
  fc.record({ kind: fc.constant('sit' as const), at: place }),
  fc.record({
    kind: fc.constant('hunt' as const),
    at: place,
    radiusM: fc.double({ min: 0, max: 60, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant('cast' as const),
    side: fc.constantFrom('left' as const, 'right' as const, 'back' as const),
    from: place,
    to: place,
    lengthM,
  }),
);
const thing = fc.record({
  thing: fc.constantFrom('asked', 'memory', 'other-1', 'post-1'),
  kind: fc.constantFrom(
    'post' as const,
    'dummy' as const,
    'hazard' as const,
    'jump' as const,
    'other' as const,
  ),
  role: fc.constantFrom('asked' as const, 'other' as const, 'scenery' as const),
  goal: fc.constantFrom(
    'blind' as const,
    'memory' as const,
    'mark' as const,
    'game' as const,
    'post' as const,
    null,
  ),
  label: fc.option(fc.string({ unit: 'grapheme', maxLength: 80 }), { nil: undefined }),
  at: place,
});
const picture: fc.Arbitrary<RepPicture> = fc
  .record({
    sendFrom: place,
    handlerAt: place,
    strokes: fc.array(stroke, { maxLength: 7 }),
    things: fc.array(thing, { maxLength: 8 }),
    windFromDeg: fc.option(fc.double({ min: 0, max: 360, noNaN: true }), { nil: undefined }),
    cover: fc.double({ min: 0, max: 3, noNaN: true }),
    obstacles: fc.array(
      fc.record({
        level: fc.double({ min: 0, max: 3, noNaN: true }),
        on: fc.constantFrom('line' as const, 'cast' as const, 'recall' as const, 'ahead' as const),
        from: place,
        to: place,
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ sendFrom, handlerAt, strokes, things, windFromDeg, cover, obstacles }) => ({
    layout: { handlerAt, things: [], windFromDeg, windMPerS: 4 },
    sendFrom,
    handlerAt,
    dogAt: sendFrom,
    strokes,
    things: things.map(({ at, ...rest }) => ({ ...rest, ...at })),
    cover,
    obstacles,
    reachM: 60,
  }));

function expectFinite(drawing: RepDrawing): void {
  const told = JSON.stringify(drawing, (_key, value) =>
    typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
  );
  expect(told).not.toMatch(/NOT FINITE|NaN|Infinity|undefined/);
  expect(drawing.metresPerUnit).toBeGreaterThan(0);
}

const DOG_NAMES = fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 60 });

describe('any picture on any card', () => {
  it('keeps every label whole on the card and off every other label', () => {
    fc.assert(
      fc.property(picture, fc.constantFrom(...CARDS), DOG_NAMES, (drawn, card, dogName) => {
        const { labels } = drawRep(drawn, card, { ...words().picture, dogName });
        labels.forEach(({ box }, i) => {
          expect(box.x).toBeGreaterThanOrEqual(0);
          expect(box.y).toBeGreaterThanOrEqual(0);
          expect(box.x + box.width).toBeLessThanOrEqual(card.width);
          expect(box.y + box.height).toBeLessThanOrEqual(card.height);
          for (const other of labels.slice(i + 1)) expect(overlap(box, other.box)).toBe(0);
        });
      }),
      { numRuns: 150 },
    );
  });

  it('draws every true place on the card, at one scale', () => {
    fc.assert(
      fc.property(picture, fc.constantFrom(...CARDS), (drawn, card) => {
        const drawing = drawRep(drawn, card, words().picture);
        expectFinite(drawing);
        const things = drawing.marks.filter((mark) => mark.mark === 'thing');
        drawn.things.forEach((each, i) => {
          const at = things[i]!.at;
          expect(at.x).toBeGreaterThanOrEqual(0);
          expect(at.x).toBeLessThanOrEqual(card.width);
          expect(at.y).toBeGreaterThanOrEqual(0);
          expect(at.y).toBeLessThanOrEqual(card.height);
          // Back to metres: a thousandth of a metre over 800 m in double precision is generous.
          expect((at.x - drawing.send.x) * drawing.metresPerUnit).toBeCloseTo(
            each.eastM - drawn.sendFrom.eastM,
            3,
          );
          expect((drawing.send.y - at.y) * drawing.metresPerUnit).toBeCloseTo(
            each.northM - drawn.sendFrom.northM,
            3,
          );
        });
      }),
      { numRuns: 150 },
    );
  });
});

describe('degenerate pictures', () => {
  const nowhere = { eastM: 0, northM: 0 };
  const empty: RepPicture = {
    layout: { handlerAt: nowhere, things: [] },
    sendFrom: nowhere,
    handlerAt: nowhere,
    dogAt: nowhere,
    strokes: [],
    things: [],
    cover: 0,
    obstacles: [],
    reachM: 0,
  };
  const allAt = (to: PlanePoint): RepPicture => ({
    ...empty,
    strokes: [
      { kind: 'line', from: nowhere, to, lengthM: 0 },
      { kind: 'stop', at: to, distanceM: 0 },
      { kind: 'whistle', at: to, distanceM: 0 },
      { kind: 'cast', side: 'left', from: to, to, lengthM: 0 },
      { kind: 'recall', from: to, to: nowhere, lengthM: 0 },
      { kind: 'hunt', at: to, radiusM: 0 },
    ],
    obstacles: [
      { level: 2, on: 'line', from: nowhere, to },
      { level: 3, on: 'cast', from: to, to },
    ],
  });
  it.each([
    ['nothing at all', empty],
    ['everything on one spot', allAt(nowhere)],
    ['a line of a billionth of a metre', allAt({ eastM: 1e-9, northM: 1e-9 })],
    ['a line of a million kilometres', allAt({ eastM: 1e9, northM: 1e9 })],
    ['a line straight to the side', allAt({ eastM: 300, northM: 0 })],
    ['a line behind the handler', allAt({ eastM: 0, northM: -80 })],
  ])('%s is drawn without a figure that is none', (_name, drawn) => {
    for (const card of CARDS) expectFinite(drawRep(drawn, card, words().picture));
  });
});

it('cuts a text to the room there is, never wider, and leaves one that fits', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme' }),
      fc.double({ min: 20, max: 300, noNaN: true }),
      (text, room) => {
        expect(textWidth(cutToWidth(text, 14, room), 14)).toBeLessThanOrEqual(room);
        if (textWidth(text, 14) <= room) expect(cutToWidth(text, 14, room)).toBe(text);
      },
    ),
  );
});
