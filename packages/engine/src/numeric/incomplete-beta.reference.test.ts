import { describe, expect, it } from 'vitest';
import { betaCdf, logBeta, logGamma } from './incomplete-beta.ts';

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n, k - 1) * (n - k + 1)) / k);

describe('the incomplete beta function', () => {
  it('has the factorials (Gamma(n) = (n - 1)!) and Gamma(1/2) = sqrt pi', () => {
    expect(logGamma(1)).toBeCloseTo(0, 12);
    expect(logGamma(6)).toBeCloseTo(Math.log(120), 12);
    expect(logGamma(11)).toBeCloseTo(Math.log(3_628_800), 12);
    expect(logGamma(0.5)).toBeCloseTo(0.5 * Math.log(Math.PI), 12);
  });

  it('obeys the recurrence Gamma(x + 1) = x Gamma(x) on both sides of the series', () => {
    // 3e-11: a few roundings of logs of size 3e4, 4e-12 each.
    for (const x of [0.01, 0.7, 3.3, 11.9, 12.1, 90, 4000.5])
      expect(Math.abs(logGamma(x + 1) - logGamma(x) - Math.log(x))).toBeLessThan(3e-11);
  });

  it('is the tail of the binomial: P(Beta(k, n - k + 1) <= x) = P(Bin(n, x) >= k), summed out', () => {
    for (const n of [1, 5, 12, 40]) {
      for (const x of [0.03, 0.12, 0.5, 0.9]) {
        let tail = 0;
        for (let k = n; k >= 1; k--) {
          tail += choose(n, k) * x ** k * (1 - x) ** (n - k);
          expect(Math.abs(betaCdf(x, k, n - k + 1) - tail)).toBeLessThan(1e-11);
        }
      }
    }
  });

  it('is x for the flat law, and has its ends and its mirror', () => {
    expect(betaCdf(0.3, 1, 1)).toBeCloseTo(0.3, 14);
    expect(betaCdf(0, 2, 5)).toBe(0);
    expect(betaCdf(1, 2, 5)).toBe(1);
    expect(betaCdf(0.2, 2.5, 7.5)).toBeCloseTo(1 - betaCdf(0.8, 7.5, 2.5), 12);
    expect(logBeta(2, 3)).toBeCloseTo(Math.log(1 / 12), 12);
  });
});
