import { describe, expect, it } from 'vitest';
import { seededRandom } from '../numeric/random.ts';
import { filterEvidence, fitKennel, fittingKennel, KENNEL_FIT_NEEDS } from './kennel-fit.ts';
import type { LegResult } from './leg.ts';
import { type AbilityPriors, shippedPriors } from './priors.ts';
import { simulateDog, simulateKennel } from './simulated-kennel.ts';

/** Legs of a kennel drawn from the model under priors, in time order. */
function simulated(priors: AbilityPriors, seed: number, dogs: number, sessions: number): LegResult[] {
  const random = seededRandom(seed);
  const kennel = simulateKennel(random, priors);
  const careers = Array.from({ length: dogs }, (_, n) =>
    simulateDog(`dog ${n}`, kennel, random, priors, sessions, 8),
  );
  return careers.flatMap(({ legs }) => legs).sort((a, b) => a.atMs - b.atMs);
}

const meanOver = (seeds: readonly number[], of: (seed: number) => number) =>
  seeds.reduce((sum, seed) => sum + of(seed), 0) / seeds.length;

describe('what a kennel makes of the priors', () => {
  it('recovers a wide form of the day and a narrow one, each from kennels drawn with it', () => {
    // Truth 0.9 and 0.15 against the shipped 0.4. The latest 75 days of 8 legs tell a variance to about 0.23 at 0.81 and 0.1 at 0.02
    // (8 legs weigh 1.6; its sd is (1/1.6 + v) sqrt(2/75)); the weak prior pulls, on the log scale, half the way at most.
    const fitted = (formSd: number) =>
      meanOver([1, 2], (seed) => {
        const answer = fitKennel(simulated({ ...shippedPriors, formSd }, seed, 6, 25));
        if (answer.kind !== 'fitted') throw new Error(answer.kind);
        return answer.priors.formSd;
      });
    const wide = fitted(0.9);
    expect(wide).toBeGreaterThan(Math.sqrt(0.9 * 0.4));
    expect(wide).toBeLessThan(1.1);
    expect(fitted(0.15)).toBeLessThan(shippedPriors.formSd);
  });

  it('recovers how unlike the dogs are, and how able', () => {
    const unlike = { ...shippedPriors, dogAbilitySd: 1.3, abilityMean: 2.8 };
    const found = [4, 5].map((seed) => {
      const answer = fitKennel(simulated(unlike, seed, 6, 25));
      if (answer.kind !== 'fitted') throw new Error(answer.kind);
      return answer.priors;
    });
    // 18 dog-skills a kennel: sd of an estimated log-sd near 1/sqrt(36) = 0.17; the prior pulls to 0.6 and 1.8.
    expect(meanOver([0, 1], (n) => found[n]!.dogAbilitySd)).toBeGreaterThan(0.85);
    expect(meanOver([0, 1], (n) => found[n]!.abilityMean)).toBeGreaterThan(2.1);
  });

  it('stays by the shipped values where the record is drawn from them', () => {
    const answers = [7, 8, 9].map((seed) => fitKennel(simulated(shippedPriors, seed, 4, 20)));
    for (const answer of answers) {
      if (answer.kind !== 'fitted') throw new Error(answer.kind);
      // What 6 free numbers gain by chance is half a chi-square of 6 at most: 99.9 % quantile 22.5 / 2.
      expect(answer.gainNats).toBeGreaterThan(-1);
      expect(answer.gainNats).toBeLessThan(11.3);
    }
  });

  it('is never likelier at the shipped values than at what it found', () => {
    const legs = simulated({ ...shippedPriors, formSd: 0.8, generalSd: 0.9 }, 10, 4, 15);
    const answer = fitKennel(legs);
    if (answer.kind !== 'fitted') throw new Error(answer.kind);
    expect(answer.gainNats).toBeCloseTo(
      filterEvidence(legs, answer.priors) - filterEvidence(legs, shippedPriors),
      9,
    );
    expect(answer.gainNats).toBeGreaterThan(0);
    expect(answer).toMatchObject({ legs: legs.length, dogs: 4 });
  });

  it('says what is missing: dogs, then legs that count', () => {
    const two = simulated(shippedPriors, 11, 2, 40);
    expect(fitKennel(two)).toEqual({ kind: 'tooFewDogs', have: 2, need: KENNEL_FIT_NEEDS.dogs });
    const short = simulated(shippedPriors, 12, 3, 12);
    expect(short.length).toBeLessThan(KENNEL_FIT_NEEDS.legs);
    expect(fitKennel(short)).toEqual({ kind: 'tooFewLegs', have: short.length, need: KENNEL_FIT_NEEDS.legs });
    expect(fitKennel([])).toEqual({ kind: 'tooFewDogs', have: 0, need: KENNEL_FIT_NEEDS.dogs });
    const excused = simulated(shippedPriors, 13, 4, 20).map((leg) => ({ ...leg, weight: 0 }));
    expect(fitKennel(excused)).toMatchObject({ kind: 'tooFewDogs', have: 0 });
  });

  it('can be stopped between evaluations, and paused: the pause changes nothing', () => {
    const legs = simulated(shippedPriors, 14, 3, 16);
    let asked = 0;
    expect(fitKennel(legs, () => ++asked < 5)).toEqual({ kind: 'stopped' });
    expect(asked).toBe(5);
    const fitting = fittingKennel(legs);
    let at = fitting.next();
    while (at.done !== true) at = fitting.next();
    expect(at.value).toEqual(fitKennel(legs));
  });
});
