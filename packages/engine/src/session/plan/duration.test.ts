import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../numeric/index.ts';
import { learnedPace, medianS, type RepTime, timedRep, wholeMinutes } from './duration.ts';
import { PACE_PRIOR, REP_TIME_S } from './duration-priors.ts';

const times = (count: number, factor: number): RepTime[] =>
  Array.from({ length: count }, () => ({ kind: 'recall', usualS: 60, tookS: 60 * factor }));

describe('how long a rep takes', () => {
  it('without a record is the usual time: its own, its wait and its laying', () => {
    const pace = learnedPace([]);
    const rep = timedRep([{ skill: 'steady', ask: { waitS: 20 } }], 30, pace);
    // 40 s of a still rep (the table, our judgement) + 20 s of waiting + 30 s of laying.
    expect(medianS(rep, pace)).toBeCloseTo(90, 9);
  });

  it('learns a pace from the journal by the conjugate rule, by hand', () => {
    // Prior of the mean worth (repSd / sd)^2 = 1 rep at 0: three reps at ln 2 give 3/4 ln 2 (normal-normal).
    const weight = (PACE_PRIOR.repSd / PACE_PRIOR.sd) ** 2;
    const { recall, still } = learnedPace(times(3, 2));
    expect(recall.mean).toBeCloseTo((3 * Math.log(2)) / (3 + weight), 12);
    expect(recall.reps).toBe(3);
    expect(still.mean).toBe(0);
    // Two hundred alike: the pace is theirs, and nearly sure.
    const sure = learnedPace(times(200, 0.7)).recall;
    expect(Math.exp(sure.mean)).toBeCloseTo(0.7, 2);
    expect(Math.sqrt(sure.variance)).toBeLessThan(0.02);
  });

  it('leaves out what is no rep: entries made together, and a long talk', () => {
    const odd: RepTime[] = [REP_TIME_S.least - 1, 0, REP_TIME_S.most + 1].map((tookS) => ({
      kind: 'recall',
      usualS: 60,
      tookS,
    }));
    expect(learnedPace([...odd, ...times(3, 2)])).toEqual(learnedPace(times(3, 2)));
  });

  it('never plans a rep under 25 s (contract), however quick the record', () => {
    const pace = learnedPace(times(300, 0.26));
    expect(medianS(timedRep([{ skill: 'recall', ask: {} }], 0, pace), pace)).toBeGreaterThanOrEqual(
      25 - 1e-9,
    );
  });

  it('gives quantiles of the whole that simulation agrees with', () => {
    const pace = learnedPace([...times(8, 1.3), { kind: 'still', usualS: 40, tookS: 30 }]);
    const reps = [
      ...Array.from({ length: 5 }, () => ({ kind: 'recall' as const, usualS: 55 })),
      ...Array.from({ length: 3 }, () => ({ kind: 'still' as const, usualS: 40 })),
    ];
    const random = seededRandom(7);
    const sums = Array.from({ length: 40_000 }, () => {
      const shared = { recall: random.normal(), still: random.normal() };
      return reps.reduce((so, { kind, usualS: usual }) => {
        const { mean, variance, repSd } = pace[kind];
        return so + usual * Math.exp(mean + Math.sqrt(variance) * shared[kind] + repSd * random.normal());
      }, 0);
    }).sort((a, b) => a - b);
    const { p50, p90 } = wholeMinutes(reps, pace, 3);
    // 2 %: sampling error of a quantile of 40,000 is 0.4 %; the rest is Fenton's log-normal standing for the sum.
    expect(Math.abs(p50 - 3 - sums[20_000]! / 60) / p50).toBeLessThan(0.02);
    expect(Math.abs(p90 - 3 - sums[36_000]! / 60) / p90).toBeLessThan(0.02);
  });

  it('takes no time for nothing, and breaks as they are', () => {
    expect(wholeMinutes([], learnedPace([]), 3)).toEqual({ p50: 3, p90: 3 });
  });
});
