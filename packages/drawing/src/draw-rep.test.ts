import type { RepPicture, RepStroke } from '@sedgeline/engine/ground';
import { words } from '@sedgeline/words';
import { describe, expect, it } from 'vitest';
import { drawRep } from './draw-rep.ts';
import type { Mark, RepDrawing } from './drawing.ts';
import { sayRep } from './say-rep.ts';

const CARD = { width: 366, height: 300, labels: true };
const SEND = { eastM: 0, northM: 0 };
const WORDS = words().picture;

const out = (northM: number, eastM = 0) => ({ eastM, northM });

/** A line of 50 m with a memory at its end, stopped on the way, cast 14 m to a side. */
function stopped(stopM: number, side: 'left' | 'right' = 'left'): RepPicture {
  const blind = out(stopM, side === 'left' ? -14 : 14);
  const strokes: RepStroke[] = [
    { kind: 'line', from: SEND, to: out(stopM), lengthM: stopM },
    { kind: 'unrun', from: out(stopM), to: out(50) },
    { kind: 'stop', at: out(stopM), distanceM: stopM },
    { kind: 'whistle', at: out(stopM - 4), distanceM: stopM - 4 },
    { kind: 'cast', side, from: out(stopM), to: blind, lengthM: 14 },
  ];
  return {
    layout: { handlerAt: SEND, things: [], windFromDeg: 250, windMPerS: 3 },
    sendFrom: SEND,
    handlerAt: SEND,
    dogAt: SEND,
    strokes,
    things: [
      { thing: 'memory', kind: 'dummy', ...out(50), role: 'other', goal: 'memory' },
      { thing: 'asked', kind: 'dummy', ...blind, role: 'asked', goal: 'blind' },
    ],
    cover: 2,
    obstacles: [{ level: 1, on: 'cast', from: out(stopM), to: blind }],
    reachM: 50,
  };
}

const across = (drawing: RepDrawing, kind: 'stop' | 'whistle') =>
  drawing.marks.find((mark) => mark.mark === kind) as Extract<Mark, { mark: 'stop' | 'whistle' }>;
const castOf = (drawing: RepDrawing) =>
  drawing.marks.find((mark) => mark.mark === 'cast') as Extract<Mark, { mark: 'cast' }>;

describe('a card drawn to scale', () => {
  it('moves the bar by 15 m of its scale when the stop moves from 20 m to 35 m', () => {
    const [near, far] = [drawRep(stopped(20), CARD, WORDS), drawRep(stopped(35), CARD, WORDS)];
    expect(far.metresPerUnit).toBe(near.metresPerUnit);
    const moved = across(near, 'stop').at.y - across(far, 'stop').at.y;
    // Double precision over a few hundred units: 1e-9 m is far below a pixel.
    expect(moved * near.metresPerUnit).toBeCloseTo(15, 9);
    expect((near.send.y - across(near, 'stop').from.y) * near.metresPerUnit).toBeCloseTo(20, 9);
  });

  it('has the same scale across as along: the blind lies 14 m to the left of the stop', () => {
    const drawing = drawRep(stopped(20), CARD, WORDS);
    const blind = drawing.marks.find((mark) => mark.mark === 'thing' && mark.isUnseen);
    expect(blind && 'at' in blind && (drawing.send.x - blind.at.x) * drawing.metresPerUnit).toBeCloseTo(
      14,
      9,
    );
    const right = castOf(drawRep(stopped(20, 'right'), CARD, WORDS));
    expect(right.to.x).toBeGreaterThan(right.from.x);
  });

  it('puts the whistle on the near side of the stop, where it is to be blown', () => {
    const drawing = drawRep(stopped(20), CARD, WORDS);
    expect(
      (across(drawing, 'whistle').at.y - across(drawing, 'stop').at.y) * drawing.metresPerUnit,
    ).toBeCloseTo(4, 9);
  });

  it('counts its ruler from the send point in whole metres, or whole yards of 0.9144 m', () => {
    for (const [units, unitM] of [
      ['metres', 1],
      ['yards', 0.9144],
    ] as const) {
      const drawing = drawRep(stopped(20), CARD, words('en-GB', units).picture);
      const figures = drawing.ruler!.ticks.filter((tick) => tick.text !== null);
      expect(figures.length).toBeGreaterThan(1);
      for (const { y, text } of figures) {
        const shown = Number.parseFloat(text!);
        expect(((drawing.send.y - y) * drawing.metresPerUnit) / unitM).toBeCloseTo(shown, 9);
      }
    }
  });

  it('points the wind where it blows to: from 250 degrees it goes to 70', () => {
    expect(drawRep(stopped(20), CARD, WORDS).wind?.towardsDeg).toBe(70);
  });

  it('says where to blow and where the dog halts', () => {
    const texts = drawRep(stopped(20), CARD, WORDS).labels.map((label) => label.text);
    expect(texts).toContain('blow at 16 m');
    expect(texts).toContain('halts at 20 m');
    expect(texts).toContain('blind, 14 m');
    expect(texts).toContain('memory, 50 m');
  });

  it('has neither labels nor ruler when it is small, and the same marks', () => {
    const small = drawRep(stopped(20), { width: 160, height: 108, labels: false }, WORDS);
    expect(small.labels).toEqual([]);
    expect(small.ruler).toBeNull();
    expect((small.send.y - across(small, 'stop').at.y) * small.metresPerUnit).toBeCloseTo(20, 9);
  });

  it('is said in full, in order, with its figures', () => {
    expect(sayRep(stopped(20), WORDS)).toBe(
      'Line of 20 m; stop at 20 m; blow when the dog is at 16 m; then left 14 m; memory, 50 m; blind, 14 m; knee-high cover; ditch across the cast; wind 3 m/s.',
    );
  });

  it('refuses a place that is not finite', () => {
    const broken = { ...stopped(20), handlerAt: out(Number.NaN) };
    expect(() => drawRep(broken, CARD, WORDS)).toThrow(RangeError);
  });
});
