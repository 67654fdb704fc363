import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gaussHermite } from './gauss-hermite.ts';
import { logistic, logisticSlope, logit, logLogistic } from './logistic.ts';
import { meanLogistic } from './logistic-normal.ts';
import { normalCdf, normalDensity, normalQuantile } from './normal.ts';
import { seededRandom } from './random.ts';

describe('logistic', () => {
  it('is stable at the ends', () => {
    expect(logistic(1e9)).toBe(1);
    expect(logistic(-1e9)).toBe(0);
    expect(logLogistic(-1e9)).toBe(-1e9);
    expect(logLogistic(1e9)).toBe(-0);
    expect(logisticSlope(1e9)).toBe(0);
    // exp(-40): the lower tail's own size, law.
    expect(Math.abs(logistic(-40) / Math.exp(-40) - 1)).toBeLessThan(1e-15);
  });
  it('laws: s(x) + s(-x) = 1, ln s, slope, logit', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (x) => {
        expect(Math.abs(logistic(x) + logistic(-x) - 1)).toBeLessThan(1e-15);
        expect(Math.abs(Math.exp(logLogistic(x)) - logistic(x))).toBeLessThan(1e-14);
        expect(Math.abs(logisticSlope(x) - logistic(x) * logistic(-x))).toBeLessThan(1e-15);
        // 1 - s(x) loses digits as e^x: 1e-15 e^|x| at worst.
        expect(Math.abs(logit(logistic(x)) - x)).toBeLessThan(1e-14 + 4e-16 * Math.exp(Math.abs(x)));
      }),
    );
  });
  it('names a probability that is none', () => expect(() => logit(1.5)).toThrow(/^p: /));
});

describe('Gauss-Hermite', () => {
  it.each([2, 3, 10, 11, 16, 17, 32, 64])('%i nodes give the normal moments', (n) => {
    const { nodes, weights } = gaussHermite(n);
    const moment = (k: number) => nodes.reduce((sum, z, i) => sum + weights[i]! * z ** k, 0);
    let doubleFactorial = 1;
    for (let k = 0; k <= Math.min(2 * n - 1, 12); k++) {
      // E Z^k = (k - 1)!! for even k, 0 for odd: law.
      if (k > 0 && k % 2 === 0) doubleFactorial *= k - 1;
      const want = k % 2 === 0 ? doubleFactorial : 0;
      expect(Math.abs(moment(k) - want)).toBeLessThan(1e-11 * Math.max(1, doubleFactorial * k));
    }
  });
  it('three nodes stand at 0 and the root of 3 (Abramowitz1964, table 25.10)', () => {
    const { nodes, weights } = gaussHermite(3);
    expect(nodes[2]).toBeCloseTo(Math.sqrt(3), 14);
    expect(weights[1]).toBeCloseTo(2 / 3, 14);
  });
  it('names a number of nodes that is none', () => expect(() => gaussHermite(1)).toThrow(/^n: /));
});

describe('normal', () => {
  it('cdf and quantile at tabled points', () => {
    // Abramowitz1964, tables 26.1 and 26.2 (15 and 10 digits).
    expect(Math.abs(normalCdf(1) - 0.841344746068543)).toBeLessThan(1e-15);
    expect(Math.abs(normalCdf(-2) - 0.022750131948179)).toBeLessThan(1e-15);
    expect(Math.abs(normalCdf(-5) / 2.866515719e-7 - 1)).toBeLessThan(1e-9);
    expect(Math.abs(normalQuantile(0.975) - 1.959963984540054)).toBeLessThan(1e-13);
    expect(Math.abs(normalQuantile(0.95) - 1.6448536269514722)).toBeLessThan(1e-13);
  });
  it('quantile undoes the cdf, and the cdf has the density for slope', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 4, noNaN: true }), (z) => {
        expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThan(1e-9);
        const slope = (normalCdf(z + 1e-5) - normalCdf(z - 1e-5)) / 2e-5;
        // Central difference: 1e-10/6 of the third derivative, rounding 1e-16/1e-5.
        expect(Math.abs(slope - normalDensity(z))).toBeLessThan(5e-11);
      }),
    );
  });
});

describe('mean of the logistic under a normal', () => {
  /** Trapezes, 4,000 of them over 12 sds: spectrally accurate for a smooth integrand that ends at nothing. */
  function trapezes(mean: number, variance: number): number {
    const sd = Math.sqrt(variance);
    let sum = 0;
    for (let k = -2000; k <= 2000; k++) {
      const z = (k * 12) / 2000;
      sum += (logistic(mean + sd * z) * normalDensity(z) * 12) / 2000;
    }
    return sum;
  }
  it.each([
    [0.01, 1e-6],
    [1, 1e-6],
    [2, 1e-6],
    [5, 1e-6],
    [8, 1e-6],
    [16, 2e-5],
    [25, 1e-4],
    [100, 1e-4],
  ])('variance %d to %d', (variance, tolerance) => {
    for (const mean of [-9, -3, -0.7, 0, 0.2, 1.5, 6]) {
      expect(Math.abs(meanLogistic(mean, variance) - trapezes(mean, variance))).toBeLessThan(tolerance);
    }
  });
  it('stays a probability at the ends', () => {
    for (const mean of [-1e9, 1e9])
      for (const variance of [0, 1, 1e18]) {
        const p = meanLogistic(mean, variance);
        expect(p >= 0 && p <= 1).toBe(true);
      }
  });
});

describe('seeded chance', () => {
  it('is the same for the same seed and another for another', () => {
    const draws = (seed: number) => Array.from({ length: 5 }, seededRandom(seed).uniform);
    expect(draws(7)).toEqual(draws(7));
    expect(draws(7)).not.toEqual(draws(8));
    expect(draws(7)).not.toEqual(draws(7 + 2 ** 32));
  });
  it('normals have mean 0, variance 1, kurtosis 3', () => {
    const random = seededRandom(11);
    const n = 100_000;
    let first = 0;
    let second = 0;
    let fourth = 0;
    for (let i = 0; i < n; i++) {
      const z = random.normal();
      first += z / n;
      second += (z * z) / n;
      fourth += z ** 4 / n;
    }
    // Five standard errors: 1, sqrt 2 and sqrt 96 over sqrt n.
    expect(Math.abs(first)).toBeLessThan(5 / Math.sqrt(n));
    expect(Math.abs(second - 1)).toBeLessThan((5 * Math.SQRT2) / Math.sqrt(n));
    expect(Math.abs(fourth - 3)).toBeLessThan((5 * Math.sqrt(96)) / Math.sqrt(n));
  });
});
