import { describe, expect, it } from 'vitest';
import { calibrationSlope } from './calibration-slope.ts';
import { elo } from './contestants/elo.ts';
import { RefittedLogistic } from './contestants/refitted-logistic.ts';
import { alwaysAverage, recentAverage, sameAsLastTime } from './contestants/running-shares.ts';
import { ratioOf } from './figures.ts';
import type { JudgedLeg } from './judged-leg.ts';
import { regretOf, Tally } from './tally.ts';

const leg = (grade: JudgedLeg['grade'], more: Partial<JudgedLeg> = {}): JudgedLeg => ({
  dog: 'd',
  skill: 'stop',
  demands: new Float64Array(21),
  grade,
  weight: 1,
  truth: { missed: 0.5, fair: 0.25, good: 0.25 },
  earlier: 0,
  earlierAtSkill: 0,
  isNewAsk: true,
  rep: 0,
  ...more,
});

describe('scores, worked by hand', () => {
  it('regret is 0.5 ln 2 - 0.25 ln 2 for (1/2, 1/4, 1/4) stated as (1/4, 1/4, 1/2), and 0 for the truth', () => {
    const truth = { missed: 0.5, fair: 0.25, good: 0.25 };
    expect(regretOf(truth, { missed: 0.25, fair: 0.25, good: 0.5 })).toBeCloseTo(0.25 * Math.LN2, 12);
    expect(regretOf(truth, truth)).toBe(0);
  });

  it('log loss, Brier and ranked probability of 0.2, 0.3, 0.5 and a good leg', () => {
    const tally = new Tally();
    const chance = { missed: 0.2, fair: 0.3, good: 0.5 };
    tally.add(leg('good'), { chance, interval90: { good: [0.2, 0.3], notMissed: [0.6, 0.9] } });
    expect(tally.logLoss).toBeCloseTo(Math.LN2, 12);
    expect(tally.brier).toBeCloseTo(0.04 + 0.09 + 0.25, 12);
    expect(tally.ranked).toBeCloseTo(0.04 + 0.25, 12);
    // The truth is good 0.25, not missed 0.5: inside the first interval and outside the second.
    expect([tally.goodInside, tally.notMissedInside]).toEqual([1, 0]);
  });

  it('luck is 0 on average over what the truth lets come, whatever is stated', () => {
    const parts = (['missed', 'fair', 'good'] as const).map((grade) => {
      const tally = new Tally();
      tally.add(leg(grade), { chance: { missed: 0.1, fair: 0.1, good: 0.8 } });
      return leg(grade).truth[grade] * tally.luck;
    });
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(0, 12);
  });

  it('the slope is ln 9 / ln 3 = 2 where 3 to 1 was stated and 9 to 1 came', () => {
    const tally = new Tally();
    for (const [stated, good, of] of [
      [0.75, 90, 100],
      [0.25, 10, 100],
    ] as const)
      for (let n = 0; n < of; n++)
        tally.add(leg(n < good ? 'good' : 'missed'), {
          chance: { missed: 1 - stated - 0.01, fair: 0.01, good: stated },
        });
    const fit = calibrationSlope([tally]);
    expect(fit?.slope).toBeCloseTo(2, 8);
    expect(fit?.intercept).toBeCloseTo(0, 8);
    expect(calibrationSlope([new Tally()])).toBeNull();
  });

  it('a ratio of sums and its linearised error: (1 + 2)/(2 + 4), no spread; (1 + 3)/(2 + 2), some', () => {
    expect(
      ratioOf([
        [1, 2],
        [2, 4],
      ]),
    ).toEqual({ value: 0.5, se: 0 });
    const { value, se } = ratioOf([
      [1, 2],
      [3, 2],
    ]);
    expect(value).toBe(1);
    expect(se).toBeCloseTo(Math.sqrt(2) / 4, 12);
  });
});

describe('baselines, worked by hand', () => {
  const statedAfter = (
    contestant: ReturnType<typeof alwaysAverage>,
    grades: readonly JudgedLeg['grade'][],
  ) => {
    for (const grade of grades) contestant.learns(leg(grade));
    return contestant.states(leg('good'));
  };

  it('always-average: after good, good, missed 3/6 good, 1/6 fair, 2/6 missed; another dog 1/3 each', () => {
    const average = alwaysAverage();
    const { good, fair, missed } = statedAfter(average, ['good', 'good', 'missed']);
    expect([good, fair, missed]).toEqual([3 / 6, 1 / 6, 2 / 6]);
    expect(average.states(leg('good', { dog: 'other' })).good).toBe(1 / 3);
  });

  it('recent-average: a good leg ten legs ago counts half', () => {
    const tenMisses = Array.from({ length: 10 }, () => 'missed' as const);
    const { good, missed } = statedAfter(recentAverage(), ['good', ...tenMisses]);
    expect(good / missed).toBeCloseTo(1.5 / (1 + (1 - 0.5) / (1 - 2 ** -0.1)), 12);
  });

  it('same-as-last-time: what followed good was good, then missed: 2/5, 1/5, 2/5', () => {
    const same = sameAsLastTime();
    const stated = statedAfter(same, ['good', 'good', 'missed']);
    same.learns(leg('good'));
    expect(same.states(leg('good')).good).toBe(2 / 5);
    expect(stated.good).toBe(1 / 3);
  });

  it('Elo: from 1/3 each, a good leg moves three parts of each cut by a third of its surprise', () => {
    const logitOf = (chance: number) => Math.log(chance / (1 - chance));
    const { good, missed } = statedAfter(elo(), ['good']);
    expect(logitOf(good)).toBeCloseTo(-Math.LN2 + 2 / 3, 12);
    expect(logitOf(1 - missed)).toBeCloseTo(Math.LN2 + 1 / 3, 12);
  });

  it('a refitted regression stands where the slope of its posterior is 0', () => {
    const fit = new RefittedLogistic(0.5, 0.3);
    const came = [1, 1, 0, 1, 1, 0, 1, 1];
    came.forEach((y, n) => {
      fit.learns({ at: [0, 1], much: [1, n % 3] }, y);
    });
    const [a, b] = [fit.logit({ at: [0], much: [1] }), fit.logit({ at: [1], much: [1] })];
    const away = came.map((y, n) => y - 1 / (1 + Math.exp(-(a + b * (n % 3)))));
    const sum = (of: (x: number, n: number) => number) => away.map(of).reduce((total, x) => total + x, 0);
    // Three Newton steps from the last fit: within 1e-6 of the mode on eight rows.
    expect(sum((x) => x) - (a - 0.3) / 1.5 ** 2).toBeCloseTo(0, 6);
    expect(sum((x, n) => x * (n % 3)) - b / 0.5 ** 2).toBeCloseTo(0, 6);
  });
});
