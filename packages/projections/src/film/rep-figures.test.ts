import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LegRecord } from '../record/training-record.ts';
import type { FilmMark } from './film-record.ts';
import { timeBetween } from './mark-times.ts';
import { repFigures } from './rep-figures.ts';

const FRAME_S = 1 / 25;
const marked = (...said: readonly (readonly [FilmMark['what'], number])[]): FilmMark[] =>
  said.map(([what, atS], n) => ({
    mark: `k${n}`,
    film: 'm',
    rep: 'a',
    what,
    atS,
    frameS: FRAME_S,
    heard: false,
  }));
const leg = (skill: LegRecord['skill'], more: Partial<LegRecord> = {}): LegRecord => ({
  skill,
  ask: {},
  grade: 'good',
  cause: null,
  ...more,
});

describe('what the marks of a rep come to, worked by hand at 25 frames a second', () => {
  // Sent at 10 s, blown at 12 s, sits at 12.8 s, cast at 14.3 s, at the dummy at 18 s, home at 25 s; asked: a stop at 21 m, home from 28 m.
  const chain = [
    leg('line', { ask: { distanceM: 35 } }),
    leg('stop', { ask: { distanceM: 21 } }),
    leg('cast-left'),
    leg('pickup'),
    leg('delivery', { ask: { distanceM: 28 } }),
  ];
  const figures = repFigures(
    marked(['sent', 10], ['whistle', 12], ['halt', 12.8], ['cast', 14.3], ['pick-up', 18], ['delivery', 25]),
    chain,
  );

  it('the halt: 0.8 s after the whistle, two frames either way', () => {
    expect(figures.halts).toHaveLength(1);
    const [halt] = figures.halts;
    expect(halt).toMatchObject({ leg: 1, blasts: 1 });
    expect(halt?.latency?.s).toBeCloseTo(0.8, 9);
    expect(halt?.latency?.lowS).toBeCloseTo(0.72, 9);
    expect(halt?.latency?.highS).toBeCloseTo(0.88, 9);
    expect(halt?.held?.s).toBeCloseTo(1.5, 9);
  });

  it('out 8 s, back 7 s, blown 2 s after the send', () => {
    expect(figures.out?.s).toBeCloseTo(8, 9);
    expect(figures.back?.s).toBeCloseTo(7, 9);
    expect(figures.untilWhistle?.s).toBeCloseTo(2, 9);
  });

  it('speeds over what was asked: 21 m in 2.8 s, 28 m in 7 s; none straight out, since it was stopped', () => {
    expect(figures.speedToHalt?.mPerS).toBeCloseTo(7.5, 9);
    expect(figures.speedToHalt?.lowMPerS).toBeCloseTo(21 / 2.88, 9);
    expect(figures.speedToHalt?.highMPerS).toBeCloseTo(21 / 2.72, 9);
    expect(figures.speedBack?.mPerS).toBeCloseTo(4, 9);
    expect(figures.speedOut).toBeNull();
  });

  it('a send straight through: 40 m in 5 s is 8 m/s', () => {
    const { speedOut, halts } = repFigures(marked(['sent', 1], ['pick-up', 6]), [
      leg('line', { ask: { distanceM: 40 } }),
    ]);
    expect(speedOut?.mPerS).toBeCloseTo(8, 9);
    expect(halts).toEqual([]);
  });

  it('a second whistle counts from the first; one before the send does not count', () => {
    const { halts } = repFigures(
      marked(['whistle', 3], ['sent', 5], ['whistle', 8], ['whistle', 9], ['halt', 9.6]),
      [leg('stop', { grade: 'fair', cause: 'dog' })],
    );
    expect(halts[0]?.blasts).toBe(2);
    expect(halts[0]?.latency?.s).toBeCloseTo(1.6, 9);
  });

  it('two stops on one line, each with its own whistle', () => {
    const { halts } = repFigures(
      marked(['sent', 0], ['whistle', 2], ['halt', 2.6], ['cast', 4], ['whistle', 6], ['halt', 7]),
      [leg('line'), leg('stop'), leg('cast-back'), leg('stop')],
    );
    expect(halts.map((halt) => halt.leg)).toEqual([1, 3]);
    expect(halts.map((halt) => halt.latency?.s)).toEqual([expect.closeTo(0.6, 9), expect.closeTo(1, 9)]);
  });

  it('a stop that was missed has no halt: the halt is that of the stop that was kept', () => {
    const legs = [leg('stop', { grade: 'missed', cause: 'dog' }), leg('stop')];
    const { halts } = repFigures(marked(['whistle', 1], ['halt', 2]), legs);
    expect(halts[0]?.leg).toBe(1);
  });

  it('where halts and stops do not tally, it says to no leg', () => {
    const { halts } = repFigures(marked(['whistle', 1], ['halt', 2], ['halt', 3]), [leg('stop')]);
    expect(halts.map((halt) => halt.leg)).toEqual([null, null]);
  });

  it('marks that are not there give no figure', () => {
    expect(repFigures(marked(['halt', 2]), [leg('stop')])).toMatchObject({
      out: null,
      back: null,
      untilWhistle: null,
      speedOut: null,
      speedToHalt: null,
      speedBack: null,
      halts: [{ leg: 0, latency: null, blasts: 0, held: null }],
    });
  });
});

describe('time between two marks: laws', () => {
  it('the true time lies within the bounds, wherever in its frames each moment was', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 7200, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (fromS, laterS, fromFrameS, toFrameS, offFrom, offTo) => {
          const [from, to] = marked(['whistle', fromS], ['halt', fromS + laterS]);
          const time = timeBetween({ ...from!, frameS: fromFrameS }, { ...to!, frameS: toFrameS })!;
          const trueS = laterS + offTo * toFrameS - offFrom * fromFrameS;
          // A true halt before its whistle cannot be: the bound stops at nought. 1e-9: rounding of doubles at two hours.
          return trueS <= time.highS + 1e-9 && Math.max(0, trueS) >= time.lowS - 1e-9;
        },
      ),
    );
  });

  it('is none where the second comes first', () => {
    const [halt, whistle] = marked(['halt', 3], ['whistle', 2]);
    expect(timeBetween(halt, whistle)).toBeNull();
    expect(timeBetween(undefined, whistle)).toBeNull();
  });
});
