import { describe, expect, it } from 'vitest';
import walks from '../../reference/binomial-walk.json' with { type: 'json' };
import maps from '../../reference/logistic-map.json' with { type: 'json' };
import { GRADES } from './ask.ts';
import { logGradeChance, type Moments, ordinalUpdate } from './ordinal-update.ts';

/** Posterior moments by 8,001 trapezes over 14 prior sds: spectrally accurate, and nothing of ours in it. */
function byTrapezes(prior: Moments, grade: (typeof GRADES)[number], gap: number, weight: number): Moments {
  const s = (x: number) => 1 / (1 + Math.exp(-x));
  const sd = Math.sqrt(prior.variance);
  const sums = [0, 0, 0];
  for (let k = -4000; k <= 4000; k++) {
    const z = (k * 14) / 4000;
    const eta = prior.mean + sd * z;
    const chance = { missed: 1 - s(eta), fair: s(eta) - s(eta - gap), good: s(eta - gap) }[grade];
    const p = Math.max(chance, 0) ** weight * Math.exp(-0.5 * z * z);
    sums[0]! += p;
    sums[1]! += p * z;
    sums[2]! += p * z * z;
  }
  const shift = sums[1]! / sums[0]!;
  return { mean: prior.mean + sd * shift, variance: prior.variance * (sums[2]! / sums[0]! - shift * shift) };
}

describe('one-dimensional update against trapezes', () => {
  const priors = [-4, -1, 0, 1.8, 5].flatMap((mean) =>
    [0.05, 0.5, 2, 9].map((variance) => ({ mean, variance })),
  );
  it.each(GRADES)('%s', (grade) => {
    for (const prior of priors) {
      for (const [gap, weight] of [
        [1.2, 1],
        [0.5, 1],
        [2.4, 0.5],
      ] as const) {
        const got = ordinalUpdate(prior, grade, gap, weight);
        const want = byTrapezes(prior, grade, gap, weight);
        // 11 nodes at the mode: a thousandth of the prior's sd, far under what projecting to a normal costs.
        expect(Math.abs(got.mean - want.mean) / Math.sqrt(prior.variance)).toBeLessThan(1e-3);
        expect(Math.abs(got.variance / want.variance - 1)).toBeLessThan(5e-3);
      }
    }
  });
});

describe('one-dimensional update against exact posteriors', () => {
  // n out of n is one grade with weight n: good with both cuts at 0, or missed.
  const ends = maps.interceptOnly.filter(({ y, n }) => y === n || y === 0);
  it.each(ends)('$name', ({ y, n, priorMean, priorSd, exact }) => {
    const prior = { mean: priorMean, variance: priorSd ** 2 };
    const got = ordinalUpdate(prior, y === 0 ? 'missed' : 'good', 0, n);
    expect(Math.abs(got.mean - exact.mean) / exact.sd).toBeLessThan(1e-3);
    expect(Math.abs(Math.sqrt(got.variance) / exact.sd - 1)).toBeLessThan(2.5e-3);
  });
  it('reads the three such cases', () => expect(ends.length).toBe(3));
});

describe('assumed-density filter against the exact grid filter', () => {
  const single = walks.cases.filter(({ n }) => Math.max(...n) === 1);
  it('reads the three single-trial cases', () => expect(single.length).toBe(3));
  it.each(single)('$name', ({ y, n, m0, P0, q, exact }) => {
    const state: Moments = { mean: m0, variance: P0 };
    y.forEach((value, t) => {
      if (t > 0) state.variance += q;
      if (n[t] === 1) ordinalUpdate({ ...state }, value === 1 ? 'good' : 'missed', 0, 1, state);
      const sd = Math.sqrt(exact.filteredVariance[t]!);
      // First step: the quadrature alone. Later: what forgetting the skewness costs, most (0.1 sd) with 12 of 12 good.
      expect(Math.abs(state.mean - exact.filteredMean[t]!) / sd).toBeLessThan(t === 0 ? 1e-3 : 0.12);
      expect(Math.abs(Math.sqrt(state.variance) / sd - 1)).toBeLessThan(t === 0 ? 2.5e-3 : 0.12);
    });
  });
});

describe('the likelihood', () => {
  it('adds up to 1 and never breaks at the ends', () => {
    for (const eta of [-1e9, -40, -2, 0, 1, 30, 1e9]) {
      const sum = GRADES.reduce((total, grade) => total + Math.exp(logGradeChance(grade, eta, 1.2)), 0);
      // Three rounded exponentials.
      expect(Math.abs(sum - 1)).toBeLessThan(1e-14);
    }
  });
  it('no variance grows, nothing is NaN, however far off', () => {
    for (const grade of GRADES) {
      for (const mean of [-1e9, -50, 0, 50, 1e9]) {
        for (const variance of [1e-9, 1, 1e6, 1e18]) {
          const got = ordinalUpdate({ mean, variance }, grade, 1.2, 1);
          expect(Number.isFinite(got.mean)).toBe(true);
          expect(got.variance > 0 && got.variance <= variance).toBe(true);
        }
      }
    }
  });
});
