import { describe, expect, it } from 'vitest';
import { openSnapshot } from '../ability/filter-snapshot.ts';
import { EASY_CONTEXT, type LegContext, shippedPriors } from '../ability/index.ts';
import { seededRandom } from '../numeric/index.ts';
import { MS_PER_DAY } from '../quantity/index.ts';
import { dogBelief } from './dog-belief.ts';
import { madeSeason } from './made-season.fixture.ts';
import type { SeasonQuestion } from './season-forecast.ts';
import { evenly } from './session-days.ts';
import { TwinFutures } from './twin-futures.ts';

const PAIRS = 4000;
/**
 * A mirrored pair is one draw of a square, so a sample variance from n pairs has a relative error of sqrt(2/n) (one standard error,
 * normal law); four of them are let pass: 9 in 100 with 4,000 pairs.
 */
const VARIANCE_TOLERANCE = 4 * Math.sqrt(2 / PAIRS);

/** Mean and variance over futures of each ask's log-odds of "not missed", form left out, at the ends of weeks. */
function moments({ snapshot, priors, dog, asks, atMs, work, weeks }: SeasonQuestion) {
  const random = seededRandom(11);
  const belief = dogBelief(openSnapshot(snapshot, priors), priors, dog, asks, atMs);
  const pair = new TwinFutures(belief, asks, priors, work, random);
  const at = Array.from({ length: weeks + 1 }, () => asks.map(() => ({ sum: 0, squares: 0 })));
  const out = new Float64Array(asks.length);
  for (let n = 0; n < PAIRS; n++) {
    pair.begin(weeks);
    for (let week = 0; week <= weeks; week++) {
      if (week > 0) pair.playTo(week);
      for (const future of pair.twins)
        pair.logOddsOfGood(future, out).forEach((logOdds, l) => {
          const one = at[week]![l]!;
          one.sum += logOdds + future.gap;
          one.squares += (logOdds + future.gap) ** 2;
        });
    }
  }
  return at.map((asked) =>
    asked.map(({ sum, squares }) => {
      const mean = sum / (2 * PAIRS);
      return { mean, variance: squares / (2 * PAIRS) - mean * mean };
    }),
  );
}

describe('futures against the filter they are drawn from', () => {
  it.each([1, 2, 3])('seed %i: today they have its means and variances', (seed) => {
    const { filter, question } = madeSeason(seed);
    const [today] = moments({ ...question, weeks: 0 });
    question.asks.forEach(({ skill, ask, context }, l) => {
      const { mean, sd } = filter.forecast({
        dog: 'a',
        session: null,
        atMs: question.atMs,
        skill,
        ask,
        context,
      }).logOdds;
      const variance = sd ** 2 - shippedPriors.formSd ** 2;
      // Mirrored pairs have the mean itself, to rounding.
      expect(today![l]!.mean).toBeCloseTo(mean, 9);
      expect(Math.abs(today![l]!.variance / variance - 1)).toBeLessThan(VARIANCE_TOLERANCE);
    });
  });

  it('in a lay-off they go where the filter goes: the walk of 60 days at most, the lapse, the age', () => {
    const { filter, question } = madeSeason(4);
    const context: LegContext = { ...EASY_CONTEXT, ageMonths: 8, daysSinceWorked: 2, stopsRunning: 3 };
    const asks = [
      { skill: 'line' as const, ask: { distanceM: 40, cover: 1 }, wanted: 0.7, context },
      // Never worked: it neither walks nor lapses.
      { skill: 'heel' as const, ask: {}, wanted: 0.7, context: { ...context, daysSinceWorked: 0 } },
    ];
    const weeks = 14;
    const work = { sessionDays: evenly(0), share: () => 1 };
    const played = moments({ ...question, asks, weeks, work });
    for (const week of [0, 1, 5, 14]) {
      asks.forEach(({ skill, ask, context: now }, l) => {
        const then = {
          ...now,
          ageMonths: 8 + (7 * week) / 30.4375,
          daysSinceWorked: skill === 'heel' ? 0 : 2 + 7 * week,
        };
        const atMs = question.atMs + 7 * week * MS_PER_DAY;
        const { mean, sd } = filter.forecast({
          dog: 'a',
          session: null,
          atMs,
          skill,
          ask,
          context: then,
        }).logOdds;
        expect(played[week]![l]!.mean).toBeCloseTo(mean, 9);
        const variance = sd ** 2 - shippedPriors.formSd ** 2;
        // Demands that change in time bring their weights' walk with them, which the filter counts at their size of that day.
        expect(Math.abs(played[week]![l]!.variance / variance - 1)).toBeLessThan(VARIANCE_TOLERANCE + 0.01);
      });
    }
  });
});

/** Nothing but a level that walks: what is known of the rest is known for sure. */
const LEVEL_ALONE = {
  ...shippedPriors,
  weightMean: { ...shippedPriors.weightMean, lapse: 0 },
  kennelWeightSd: 0,
  dogWeightSd: 0,
  weightWalkPerDay: 0,
  generalWalkPerDay: 0,
  gainPerSession: 0,
};

describe('a pure random walk', () => {
  it('spreads as the local level model does: variance P + j Q after j steps, mean unmoved (Durbin2012, 2.2 and 2.11)', () => {
    // The Nile's level (Durbin2012): its walk has variance 1469.1 a year; a week here is a year there, in units of 10,000.
    const Q = 0.14691;
    const priors = { ...LEVEL_ALONE, abilityWalkPerDay: Q / 7 };
    const { question } = madeSeason(5, priors);
    const asks = question.asks.slice(0, 1);
    const played = moments({ ...question, asks });
    const [today] = played;
    played.forEach((week, j) => {
      expect(week[0]!.mean).toBeCloseTo(today![0]!.mean, 9);
      const P = today![0]!.variance;
      // Both are samples, so twice one's tolerance.
      expect(Math.abs(week[0]!.variance / (P + j * Q) - 1)).toBeLessThan(2 * VARIANCE_TOLERANCE);
    });
    expect(played[12]![0]!.variance / today![0]!.variance).toBeGreaterThan(3);
  });
});

describe('the gain', () => {
  it('comes to g (1 - f^n)/(1 - f) of f^k after n sessions with k before: the damped trend (Gardner1985), by hand', () => {
    const priors = { ...LEVEL_ALONE, abilityWalkPerDay: 0, gainPerSession: 0.05, gainFading: 0.9 };
    const { question } = madeSeason(6, priors);
    const asks = question.asks.slice(0, 1);
    const state = openSnapshot(question.snapshot, priors);
    const { gained } = dogBelief(state, priors, 'a', asks, question.atMs).skills[0]!;
    // 20 sessions of 10 legs of three skills: the stop was worked in nearly all of them.
    expect(gained).toBeGreaterThan(10);
    const work = { sessionDays: evenly(2), share: () => 1 };
    const played = moments({ ...question, asks, work });
    played.forEach((week, j) => {
      const won = (0.05 * 0.9 ** gained * (1 - 0.9 ** (2 * j))) / (1 - 0.9);
      expect(week[0]!.mean - played[0]![0]!.mean).toBeCloseTo(won, 9);
    });
  });
});
