import { describe, expect, it } from 'vitest';
import { createAbilityFilter, EASY_CONTEXT, shippedPriors } from '../ability/index.ts';
import { meanLogistic, seededRandom } from '../numeric/index.ts';
import { forecastGoal } from './forecast-goal.ts';
import { madeSeason } from './made-season.fixture.ts';
import type { SeasonQuestion } from './season-forecast.ts';
import { asBefore, evenly } from './session-days.ts';

const forecast = (question: SeasonQuestion, seed = 1) => forecastGoal(question, seededRandom(seed));

/** Neither walk nor gain nor lapse: tomorrow is as today. */
const STILL = {
  ...shippedPriors,
  weightMean: { ...shippedPriors.weightMean, lapse: 0 },
  kennelWeightSd: 0,
  dogWeightSd: 0,
  abilityWalkPerDay: 0,
  weightWalkPerDay: 0,
  generalWalkPerDay: 0,
  gainPerSession: 0,
};

describe('forecastGoal', () => {
  it('with no walk and no gain stays at today: every future, and every week', () => {
    const { question, filter } = madeSeason(1, STILL);
    const { now, weeks, readyInWeeks } = forecast(question);
    for (const one of weeks) {
      expect(one.chance).toBeCloseTo(now.chance, 12);
      expect(one.probabilityReady).toBe(weeks[0]!.probabilityReady);
    }
    for (const week of Object.values(readyInWeeks)) expect([0, null]).toContain(week);
    // All three legs in one go, as a chain: there asks do not share what is not known of the dog, here they do, which lifts it.
    const chain = filter.chain(
      question.asks.map(({ skill, ask, context }) => ({
        dog: 'a',
        session: null,
        atMs: question.atMs,
        skill,
        ask,
        context,
      })),
    );
    expect(now.chance).toBeGreaterThan(chain.allGood);
    expect(now.chance).toBeLessThan(chain.allGood + 0.1);
  });

  it('of one ask is, today, to the bit what the filter states; and the futures agree with it', () => {
    for (const seed of [1, 2, 3]) {
      const { question, filter } = madeSeason(seed, STILL);
      const asks = question.asks.slice(0, 1);
      const { skill, ask, context } = asks[0]!;
      const stated = filter.forecast({
        dog: 'a',
        session: null,
        atMs: question.atMs,
        skill,
        ask,
        context,
      });
      const { now, weeks } = forecast({ ...question, asks, weeks: 2 });
      expect(now).toEqual({ chance: stated.chance.good, interval90: stated.interval90.good });
      // 1,000 mirrored pairs of chances with an sd under 0.15: one standard error under 0.005 even without the mirror; the gap is
      // drawn from its grid here and taken as normal there.
      expect(weeks[1]!.chance).toBeCloseTo(now.chance, 2);
      expect(weeks[1]!.interval90[0]).toBeCloseTo(now.interval90[0], 1);
      expect(weeks[1]!.interval90[1]).toBeCloseTo(now.interval90[1], 1);
    }
  });

  it('a recalibrated chance is shown corrected, and what is wanted is asked of the corrected one', () => {
    const { question, filter } = madeSeason(2, STILL);
    const asks = question.asks.slice(0, 1);
    // Chances of good a half logit too low: whoever wants 0.7 of the shown wants 0.586 of the stated.
    const recalibration = { slope: 1, notMissedIntercept: 0.5, goodIntercept: 0.5 };
    const shown = forecast({ ...question, asks, recalibration });
    const plain = forecast({
      ...question,
      asks: [{ ...asks[0]!, wanted: 1 / (1 + Math.exp(0.5 - Math.log(0.7 / 0.3))) }],
    });
    expect(shown.weeks.map(({ probabilityReady }) => probabilityReady)).toEqual(
      plain.weeks.map(({ probabilityReady }) => probabilityReady),
    );
    const { chance } = plain.now;
    expect(shown.now.chance).toBeCloseTo(1 / (1 + Math.exp(-0.5 - Math.log(chance / (1 - chance)))), 9);
    expect(filter.ability('a', 'stop', question.atMs).mean).toBeGreaterThan(0);
  });

  it('more gain never makes it later or less likely: the same draws, more', () => {
    const { question } = madeSeason(3);
    const runs = [0, 0.05, 0.1].map((gainPerSession) => {
      const priors = { ...shippedPriors, gainPerSession };
      const snapshot = { ...(question.snapshot as object), priors: JSON.stringify(priors) };
      return forecast({ ...question, priors, snapshot });
    });
    for (let r = 1; r < runs.length; r++)
      runs[r]!.weeks.forEach((week, j) => {
        const less = runs[r - 1]!.weeks[j]!;
        expect(week.probabilityReady).toBeGreaterThanOrEqual(less.probabilityReady);
        if (j > 0) expect(week.chance).toBeGreaterThan(less.chance);
      });
    expect(runs[2]!.weeks.at(-1)!.chance).toBeGreaterThan(runs[0]!.weeks.at(-1)!.chance + 0.02);
  });

  it('the week of readiness is the first by which so many futures are ready; past the horizon it is null', () => {
    const { question } = madeSeason(3);
    for (const wanted of [0, 0.75, 0.85, 1]) {
      const asks = question.asks.map((one) => ({ ...one, wanted }));
      const { weeks, readyInWeeks } = forecast({ ...question, asks });
      const first = (share: number) => weeks.findIndex((one) => one.probabilityReady >= share);
      const named = (share: number) => (first(share) < 0 ? null : first(share));
      expect(readyInWeeks).toEqual({ p10: named(0.1), p50: named(0.5), p90: named(0.9) });
      // A chance of 0 is had by any dog, one of 1 by none.
      if (wanted === 0) expect(readyInWeeks).toEqual({ p10: 0, p50: 0, p90: 0 });
      if (wanted === 1) expect(readyInWeeks).toEqual({ p10: null, p50: null, p90: null });
    }
  });

  it('proofing a factor gains what the ask is likelier without it: by hand where all is known', () => {
    const sure = { ...STILL, kennelAbilitySd: 0, dogAbilitySd: 0, generalSd: 0, oddSd: 0, formSd: 0.4 };
    const ask = { distanceM: 20, cover: 1, wayFraction: 0.4, temptation: 'post' as const };
    const question: SeasonQuestion = {
      ...madeSeason(1).question,
      priors: sure,
      snapshot: createAbilityFilter(sure).snapshot(),
      asks: [{ skill: 'stop', ask, wanted: 0.8, context: EASY_CONTEXT }],
    };
    const { first } = forecast(question);
    // 1.8 - 0.5 x 2 (distance) - 0.45 (late) - 0.25 (post) - 0.05 (late and post) - 0.45 (cover); the gap is the kennel's prior.
    const gains = { distance: 1, late: 0.5, cover: 0.45, temptation: 0.3 };
    const eta = 1.8 - 1 - 0.45 - 0.25 - 0.05 - 0.45;
    const weights = Float64Array.from({ length: 20 }, (_, k) =>
      Math.exp(-((0.5 + 0.1 * k - 1.2) ** 2) / 0.43),
    );
    const total = weights.reduce((sum, w) => sum + w, 0);
    const chance = (logOdds: number) =>
      weights.reduce((sum, w, k) => sum + (w / total) * meanLogistic(logOdds - 0.5 - 0.1 * k, 0.16), 0);
    expect(first.map(({ skill, factor }) => `${skill} ${factor}`)).toEqual(
      Object.keys(gains).map((factor) => `stop ${factor}`),
    );
    first.forEach(({ gain }, k) => {
      // The gap is drawn: 1,000 mirrored pairs; its weights by hand take the kennel's centre (sd 0.3) and the dog (0.35) as one normal.
      expect(gain).toBeCloseTo(chance(eta + Object.values(gains)[k]!) - chance(eta), 2);
    });
  });

  it('the same seed gives the same answer to the bit, another another', () => {
    const { question } = madeSeason(3);
    const once = JSON.stringify(forecast(question, 7));
    expect(JSON.stringify(forecast(question, 7))).toBe(once);
    expect(JSON.stringify(forecast(question, 8))).not.toBe(once);
  });

  it('refuses what is no goal', () => {
    const { question } = madeSeason(3);
    const [ask] = question.asks;
    expect(() => forecast({ ...question, asks: [] })).toThrow(/asks: expected one or more/);
    expect(() => forecast({ ...question, asks: [{ ...ask!, wanted: 80 }] })).toThrow(/wanted: expected 0..1/);
    expect(() => forecast({ ...question, weeks: 1.5 })).toThrow(/weeks: expected a whole number/);
    expect(() => forecast({ ...question, futures: 3 })).toThrow(/futures: expected an even number/);
    expect(() => forecast({ ...question, snapshot: null })).toThrow(TypeError);
    expect(() => evenly(-1)).toThrow(/perWeek: expected a number >= 0/);
    expect(() => evenly(Number.NaN)).toThrow(RangeError);
    expect(() => asBefore([])).toThrow(/sessionsByWeek/);
  });
});

describe('days of sessions', () => {
  const drawn = (days: ReturnType<typeof evenly>, weeks: number) => {
    const random = seededRandom(5);
    return Array.from({ length: 2000 }, () => days(random, weeks));
  };

  it.each([0, 0.3, 2.5, 7])('%f a week, evenly apart, within the weeks', (perWeek) => {
    const runs = drawn(evenly(perWeek), 10);
    const apart = runs.flatMap((days) => days.slice(1).map((day, n) => day - days[n]!));
    expect(runs.flat().filter((day) => !(day >= 0 && day < 70))).toEqual([]);
    expect(apart.filter((gap) => !(Math.abs(gap - 7 / perWeek) < 1e-9))).toEqual([]);
    // The count is the whole number below or above: an sd of 0.5 at most, four standard errors of 2,000.
    const mean = runs.reduce((sum, days) => sum + days.length, 0) / runs.length;
    expect(Math.abs(mean - 10 * perWeek)).toBeLessThan((4 * 0.5) / Math.sqrt(2000));
  });

  it('as before: as many as the record had, and its lay-offs whole', () => {
    // Eight weeks of three, eight of none.
    const record = [...Array.from({ length: 8 }, () => 3), ...Array.from({ length: 8 }, () => 0)];
    const runs = drawn(asBefore(record), 16);
    const counts = runs.map((days) => days.length);
    const mean = counts.reduce((sum, n) => sum + n, 0) / counts.length;
    const sd = Math.sqrt(counts.reduce((sum, n) => sum + (n - mean) ** 2, 0) / counts.length);
    // Every week of a stationary bootstrap is any week of the record alike (Politis1994): 1.5 on average; four standard errors.
    expect(Math.abs(mean - 16 * 1.5)).toBeLessThan((4 * sd) / Math.sqrt(2000));
    // Weeks in no order would begin with four of none one time in 16. Whole: one of the five places from which four follow, and
    // no jump for three weeks, 5/16 (7/8)^3 = 0.21, and a little from jumps; four standard errors of 2,000 are 0.04.
    const share = runs.filter((days) => !days.some((day) => day < 28)).length / runs.length;
    expect(share).toBeGreaterThan(0.17);
    expect(runs.filter((days) => days.some((day, n) => n > 0 && !(day > days[n - 1]!)))).toEqual([]);
  });
});
