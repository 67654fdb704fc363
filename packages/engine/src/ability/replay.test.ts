import { describe, expect, it } from 'vitest';
import figures from '../../reference/scores.json' with { type: 'json' };
import { logistic } from '../numeric/logistic.ts';
import { wilsonInterval } from '../numeric/proportion-interval.ts';
import { seededRandom } from '../numeric/random.ts';
import type { Grade } from './ask.ts';
import { calibrationTable, type StatedOutcome } from './calibration.ts';
import { correctChances, recalibrate } from './recalibrate.ts';
import { type ReplayedLeg, scoreReplay } from './replay.ts';

const leg = (good: number, fair: number, grade: Grade, change: Partial<ReplayedLeg> = {}): ReplayedLeg => ({
  dog: 'a',
  skill: 'stop',
  chance: { missed: 1 - good - fair, fair, good },
  grade,
  weight: 1,
  ...change,
});

describe('scores', () => {
  it('two outcomes only: twice the reference Brier, its log score, twice its Brier as ranked score', () => {
    // With no fair both cuts tell the same: sums over grades and over cuts are twice the score of one event.
    const legs = figures.outcomes.map((y, i) => leg(figures.forecasts[i]!, 0, y === 1 ? 'good' : 'missed'));
    const { stated } = scoreReplay(legs);
    expect(Math.abs(stated!.brier - 2 * figures.brier)).toBeLessThan(1e-9);
    expect(Math.abs(stated!.logLoss - figures.logLoss)).toBeLessThan(1e-9);
    expect(Math.abs(stated!.rankedProbability - 2 * figures.brier)).toBeLessThan(1e-9);
    expect(stated!.legs).toBe(figures.outcomes.length);
  });
  it('three grades, worked by hand', () => {
    // Stated 0.5 good, 0.3 fair, 0.2 missed; came fair. Brier 0.25 + 0.49 + 0.04; ranked 0.2^2 + (0.5 - 1)^2.
    const { stated } = scoreReplay([leg(0.5, 0.3, 'fair')]);
    expect(stated!.logLoss).toBeCloseTo(-Math.log(0.3), 12);
    expect(stated!.brier).toBeCloseTo(0.78, 12);
    expect(stated!.rankedProbability).toBeCloseTo(0.29, 12);
  });
  it('a leg of weight 0 is left out and listed', () => {
    const with0 = [leg(0.5, 0.3, 'fair'), leg(0.01, 0.01, 'good', { weight: 0 }), leg(0.6, 0.2, 'good')];
    const scores = scoreReplay(with0);
    expect(scores.leftOut).toEqual([1]);
    const { leftOut, ...rest } = scores;
    expect({ ...scoreReplay([with0[0]!, with0[2]!]), leftOut }).toEqual({ ...rest, leftOut });
  });
  it('says nothing of nothing', () => {
    const { stated, baselines, calibration } = scoreReplay([]);
    expect([stated, baselines['always-average'], baselines['recent-average']]).toEqual([null, null, null]);
    expect(calibration).toEqual([]);
  });
});

describe('baselines', () => {
  it('always-average: running share with add-one, strictly before', () => {
    // good, good, missed: stated 1/3, then 2/4 of good, then 1/5 of missed.
    const legs = (['good', 'good', 'missed'] as const).map((grade) => leg(0.5, 0.3, grade));
    const want = -(Math.log(1 / 3) + Math.log(2 / 4) + Math.log(1 / 5)) / 3;
    expect(scoreReplay(legs).baselines['always-average']!.logLoss).toBeCloseTo(want, 12);
  });
  it('recent-average: the same with counts that halve in ten legs', () => {
    const keep = 2 ** -0.1;
    const legs = (['good', 'good', 'missed'] as const).map((grade) => leg(0.5, 0.3, grade));
    const want = -(Math.log(1 / 3) + Math.log(2 / 4) + Math.log(1 / (3 + 1 + keep))) / 3;
    expect(scoreReplay(legs).baselines['recent-average']!.logLoss).toBeCloseTo(want, 12);
  });
  it('dogs and skills are apart', () => {
    const legs = [
      leg(0.5, 0.3, 'good'),
      leg(0.5, 0.3, 'good', { dog: 'b' }),
      leg(0.5, 0.3, 'good', { skill: 'line' }),
    ];
    expect(scoreReplay(legs).baselines['always-average']!.logLoss).toBeCloseTo(Math.log(3), 12);
  });
});

/** Outcomes whose true log-odds are `slope` times the stated ones, plus `intercept`. */
function outcomes(n: number, slope: number, intercept: number, seed: number): StatedOutcome[] {
  const random = seededRandom(seed);
  return Array.from({ length: n }, () => {
    const x = 1.5 * random.normal();
    return { stated: logistic(x), came: random.uniform() < logistic(intercept + slope * x) };
  });
}

describe('calibration table', () => {
  it('counts every leg once, in rows of 20 or more that touch', () => {
    for (const n of [1, 19, 20, 47, 150, 1000]) {
      const rows = calibrationTable(outcomes(n, 1, 0, n));
      expect(rows.reduce((sum, row) => sum + row.legs, 0)).toBe(n);
      if (n >= 20) for (const row of rows) expect(row.legs).toBeGreaterThanOrEqual(20);
      rows.forEach((row, k) => {
        expect(row.from).toBe(k === 0 ? 0 : rows[k - 1]!.to);
        expect(row.stated >= row.from && row.stated <= row.to).toBe(true);
        expect(row.interval95).toEqual(wilsonInterval(Math.round(row.happened * row.legs), row.legs));
      });
      expect(rows.at(-1)!.to).toBe(1);
    }
  });
  it('has 7 rows or more when there is enough', () => {
    expect(calibrationTable(outcomes(1000, 1, 0, 1)).length).toBeGreaterThanOrEqual(7);
  });
  it('0 and 1 stated fall into the end rows', () => {
    const ends = Array.from({ length: 40 }, (_, k) => ({ stated: k % 2, came: k % 2 === 1 }));
    expect(calibrationTable(ends).map(({ legs, happened }) => [legs, happened])).toEqual([
      [20, 0],
      [20, 1],
    ]);
  });
});

/**
 * Legs stated with one logit between the cuts, whose true log-odds of not missed and of good are `slope` times the
 * stated ones, plus an intercept each.
 */
function statedLegs(n: number, slope: number, [notMissed, good]: readonly [number, number], seed: number) {
  const random = seededRandom(seed);
  return Array.from({ length: n }, () => {
    const x = 1.5 * random.normal();
    const u = random.uniform();
    const grade: Grade =
      u < logistic(good + slope * (x - 1)) ? 'good' : u < logistic(notMissed + slope * x) ? 'fair' : 'missed';
    const chance = {
      missed: 1 - logistic(x),
      fair: logistic(x) - logistic(x - 1),
      good: logistic(x - 1),
    };
    return { chance, grade };
  });
}

describe('recalibration', () => {
  it('is not earned with fewer than 150 legs, however wrong', () => {
    expect(recalibrate(statedLegs(149, 0.2, [1, 1], 2))).toEqual({
      kind: 'notEarned',
      why: 'tooFewLegs',
      have: 149,
      need: 150,
    });
  });
  it('is seldom earned by chances that are right', () => {
    // One in ten slopes lies outside its own 90 % interval; of those, half would not have helped. 40 runs, 5 % each: more
    // than 6 come once in a hundred times.
    const earned = Array.from({ length: 40 }, (_, n) => recalibrate(statedLegs(400, 1, [0, 0], n + 10)));
    expect(earned.filter(({ kind }) => kind === 'earned').length).toBeLessThanOrEqual(6);
  });
  it('finds the slope and both intercepts of chances that are too sure', () => {
    const answer = recalibrate(statedLegs(4000, 0.5, [0.6, 0.1], 4));
    if (answer.kind !== 'earned') throw new Error('expected to be earned');
    // Standard errors of 4,000 legs are near 0.03: five of them, with the little that the prior pulls.
    expect(Math.abs(answer.slope - 0.5)).toBeLessThan(0.15);
    expect(Math.abs(answer.notMissedIntercept - 0.6)).toBeLessThan(0.15);
    expect(Math.abs(answer.goodIntercept - 0.1)).toBeLessThan(0.15);
    expect(answer.interval90[0]).toBeLessThan(answer.slope);
    expect(answer.interval90[1]).toBeGreaterThan(answer.slope);
  });
  it('states a slope interval that holds the truth about nine times in ten', () => {
    const inside = Array.from({ length: 60 }, (_, n) =>
      recalibrate(statedLegs(600, 0.7, [0, 0], n + 100)),
    ).filter(
      (answer) => 'interval90' in answer && answer.interval90[0] <= 0.7 && answer.interval90[1] >= 0.7,
    ).length;
    // Binomial(60, 0.9) lies in 47..60 with 99.7 %; the prior about 1 leans a little.
    expect(inside).toBeGreaterThanOrEqual(46);
  });
  it('is not earned by a record that contradicts the chances: it would level them all', () => {
    for (const slope of [-0.5, 0, 0.1])
      expect(recalibrate(statedLegs(2000, slope, [0.5, 0], 7))).toMatchObject({
        kind: 'notEarned',
        why: 'tooFlat',
      });
  });
  it('lowers the log loss of legs to come where it was earned', () => {
    const answer = recalibrate(statedLegs(800, 0.5, [0.3, 0], 5));
    if (answer.kind !== 'earned') throw new Error('expected to be earned');
    const loss = (correct: boolean) =>
      statedLegs(4000, 0.5, [0.3, 0], 6).reduce((sum, { chance, grade }) => {
        const shown = correct ? correctChances(chance, answer) : chance;
        return sum - Math.log(shown[grade]);
      }, 0);
    expect(loss(true)).toBeLessThan(loss(false));
  });
  it('corrected chances add up to 1 and keep their order; slope 1 and intercepts 0 change nothing', () => {
    const chance = { missed: 0.1, fair: 0.3, good: 0.6 };
    const same = correctChances(chance, { slope: 1, notMissedIntercept: 0, goodIntercept: 0 });
    const flat = correctChances(chance, { slope: 0.5, notMissedIntercept: 0.2, goodIntercept: 0.1 });
    const crossed = correctChances(chance, { slope: -1, notMissedIntercept: -1, goodIntercept: 2 });
    for (const grade of ['missed', 'fair', 'good'] as const) {
      expect(same[grade]).toBeCloseTo(chance[grade], 12);
      expect(flat[grade]).toBeGreaterThan(0);
      expect(crossed[grade]).toBeGreaterThanOrEqual(0);
    }
    for (const shown of [flat, crossed]) expect(shown.missed + shown.fair + shown.good).toBeCloseTo(1, 14);
  });
});
