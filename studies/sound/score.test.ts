import { describe, expect, it } from 'vitest';
import type { TrueWhistle } from './recording.ts';
import { count, figures, fMeasure, noCounts, pairTimes, quantile } from './score.ts';

const blast = (startS: number, endS: number, kind: 'long' | 'pip', inBandSnrDb = 30): TrueWhistle => ({
  startS,
  endS,
  kind,
  pitchHz: 3000,
  distanceM: 2,
  inBandSnrDb,
  whose: 'own',
});
const heard = (startS: number, endS: number, kind: 'long' | 'pip') => ({ startS, endS, kind, pitchHz: 3000 });

describe('pairs of true and heard times', () => {
  it('are one to one within 50 ms', () => {
    expect(pairTimes([1, 2, 3], [1.04, 2.06, 2.96])).toEqual({
      pairs: [
        [0, 0],
        [2, 2],
      ],
      strayHeard: [1],
    });
    // Two heard for one: one of them is stray.
    expect(pairTimes([1], [0.99, 1.02])).toEqual({ pairs: [[0, 0]], strayHeard: [1] });
  });

  it('are as many as can be, where the nearest first would lose one', () => {
    // By hand: 1.03 is nearest to 1.04, which would leave 1.00 and 1.085 alone; each with its neighbour, none is lost.
    expect(pairTimes([1.0, 1.04], [1.03, 1.085]).pairs).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });

  it('are the least sum of errors among the many', () => {
    // One pair can be made in two ways: 10 ms off or 20 ms off.
    expect(pairTimes([1], [0.98, 1.01]).pairs).toEqual([[0, 1]]);
  });

  it('are none without truth, without detections, and far apart', () => {
    expect(pairTimes([], [1, 2])).toEqual({ pairs: [], strayHeard: [0, 1] });
    expect(pairTimes([1, 2], [])).toEqual({ pairs: [], strayHeard: [] });
    expect(pairTimes([1, 2], [5, 9])).toEqual({ pairs: [], strayHeard: [0, 1] });
  });
});

describe('figures', () => {
  it('are worked by hand for a recording of a minute', () => {
    const counts = noCounts();
    const truth = {
      whistles: [blast(1, 2, 'long'), blast(3, 3.2, 'pip'), blast(4, 4.2, 'pip'), blast(5, 5.2, 'pip', 4)],
      clicks: [
        { timeS: 10, snrDb: 30 },
        { timeS: 12, snrDb: 5 },
      ],
    };
    const said = {
      // Right; right in time and wrong in kind; one too many; on a blast that is too faint to be asked for.
      whistles: [
        heard(1.004, 1.99, 'long'),
        heard(3.01, 3.5, 'long'),
        heard(8, 8.1, 'pip'),
        heard(5.02, 5.2, 'pip'),
      ],
      // The press; its release as a click of its own; the release of the press that is too faint.
      clicks: [{ timeS: 10.002 }, { timeS: 10.12 }, { timeS: 12.15 }],
    };
    count(counts, truth, said, 60, [9, 99]);
    const found = figures(counts);
    // Three asked for, two found, one stray: 2·2 / (3 + 3); with kind 2·1 / 6. Clicks: 2·1 / (1 + 2).
    expect(found.whistleF).toBeCloseTo(4 / 6, 12);
    expect(found.whistleKindF).toBeCloseTo(2 / 6, 12);
    expect(found.clickF).toBeCloseTo(2 / 3, 12);
    expect(found.falseWhistlesPerHour).toBeCloseTo(60, 9);
    expect(found.falseClicksPerHour).toBeCloseTo(60, 9);
    // Onsets 4 and 10 ms late; ends 10 ms early and 300 ms late.
    expect(found.onsetMedianS).toBeCloseTo(0.007, 9);
    expect(found.onsetP95S).toBeCloseTo(0.004 + 0.95 * 0.006, 9);
    expect(found.endMedianS).toBeCloseTo(0.155, 9);
    expect(counts.ungraded).toBe(2);
  });

  it('do not say an F of nothing', () => {
    const counts = noCounts();
    count(counts, { whistles: [], clicks: [] }, { whistles: [], clicks: [] }, 3600, [9, 99]);
    expect(figures(counts)).toMatchObject({
      whistleF: null,
      clickF: null,
      falseWhistlesPerHour: 0,
      onsetMedianS: null,
    });
  });

  it('take F as 2 TP / (2 TP + FP + FN) and quantiles between neighbours', () => {
    // 8 right, 1 false, 2 missed: precision 8/9, recall 8/10.
    expect(fMeasure(8, 10, 9)).toBeCloseTo((2 * (8 / 9) * 0.8) / (8 / 9 + 0.8), 12);
    expect(quantile([4, 1, 3, 2], 0.5)).toBe(2.5);
    expect(quantile([7], 0.95)).toBe(7);
    expect(quantile([], 0.5)).toBeNull();
  });
});
