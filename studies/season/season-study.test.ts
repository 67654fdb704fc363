import { shippedPriors } from '@sedgeline/engine/ability';
import { gainShares } from '@sedgeline/engine/season';
import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { careerOutcome } from './career-study.ts';
import { ModelDog } from './model-dog.ts';
import { modelOutcomes, ourForecaster, overconfident } from './model-study.ts';
import { binomialCdf, coverageOf, holds, isCovered, placeOf, readyWeek } from './ready-week.ts';

/** Few dogs and futures, so that the suite stays quick; seeds that the long form does not use. */
const DOGS = 80;
const FIRST_SEED = 50_000;
const FUTURES = 400;

describe('the week of readiness', () => {
  const outcomes = Array.from({ length: DOGS }, (_, n) =>
    modelOutcomes(FIRST_SEED + n, [ourForecaster, overconfident(0.05)], FUTURES),
  );
  const coverage = (which: number) =>
    coverageOf(
      outcomes.map((one) => one[which]!),
      diceNamed('season test').uniform,
    );

  it('lies within as often as is said, where dogs live by the model’s law', () => {
    const ours = coverage(0);
    expect(isCovered(ours)).toBe(true);
    expect(binomialCdf(ours.held, DOGS, 0.8)).toBeGreaterThan(0.001);
  });

  it('a forecaster that is sure of what it can’t know fails', () => {
    expect(isCovered(coverage(1))).toBe(false);
  });

  it('has a truth in every mechanism, through the whole program', () => {
    for (const mechanism of ['practice-curve', 'exemplar', 'threshold', 'linear-operator'] as const) {
      const { forecast, truth } = careerOutcome(mechanism, FIRST_SEED);
      expect(forecast.weeks).toHaveLength(27);
      expect(truth === null || (truth >= 0 && truth <= 26)).toBe(true);
    }
  });
});

describe('what a session is worth to a dog', () => {
  const recordOf = (seed: number, times: number) => {
    const priors = { ...shippedPriors, gainPerSession: times * shippedPriors.gainPerSession };
    const dice = diceNamed(`gain ${seed}`);
    const dog = new ModelDog(priors, dice);
    return Array.from({ length: 30 }, (_, n) => {
      if (n > 0) dog.pass(3);
      return dog.works(12);
    }).flat();
  };
  const mean = (seed: number, times: number) =>
    gainShares(recordOf(seed, times), shippedPriors).reduce((sum, one) => sum + one.times * one.weight, 0);
  const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];

  it('is read from its record: less where it gains nothing, more where it gains double', () => {
    const average = (times: number) => SEEDS.reduce((sum, seed) => sum + mean(seed, times), 0) / SEEDS.length;
    expect(average(0)).toBeLessThan(1);
    expect(average(2)).toBeGreaterThan(1);
  });

  it('is anything alike with no leg, or with one: the first session can’t tell', () => {
    for (const legs of [[], recordOf(1, 1).slice(0, 1)])
      for (const { weight } of gainShares(legs, shippedPriors)) expect(weight).toBeCloseTo(0.2, 12);
  });
});

describe('scoring, by hand', () => {
  const weeks = [0.1, 0.5, 0.8].map((probabilityReady, week) => ({
    week,
    probabilityReady,
    chance: 0.5,
    interval90: [0, 1] as const,
  }));
  const forecast = { weeks, readyInWeeks: { p10: 0, p50: 1, p90: null } };

  it('finds the first week in which every ask is there', () => {
    const chances = [
      [0.6, 0.7],
      [0.7, 0.6],
      [0.7, 0.7],
      [0.9, 0.1],
    ];
    expect(readyWeek(chances, [0.7, 0.7])).toBe(2);
    expect(readyWeek(chances, [0.95, 0.7])).toBeNull();
  });

  it('places a truth within its week’s own share, past the horizon in what is left', () => {
    expect(placeOf({ forecast, truth: 0 }, 0.5)).toBeCloseTo(0.05, 12);
    expect(placeOf({ forecast, truth: 1 }, 0.25)).toBeCloseTo(0.2, 12);
    expect(placeOf({ forecast, truth: null }, 0.5)).toBeCloseTo(0.9, 12);
  });

  it('an interval with no end within the horizon holds what lies beyond it', () => {
    expect(holds({ forecast, truth: null })).toBe(true);
    const early = { weeks, readyInWeeks: { p10: 1, p50: 1, p90: 2 } };
    expect([0, 1, 2, null].map((truth) => holds({ forecast: early, truth }))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});
