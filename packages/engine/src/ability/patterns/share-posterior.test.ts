import { describe, expect, it } from 'vitest';
import { sharePosterior } from './share-posterior.ts';

/** Counts small enough for paper: flat priors on the whole against one that is sure of small shares. */
const SIZE = { matters: 0.5, ordinary: [1, 3], wide: [1, 1], need: 1 } as const;

describe('a share under two Beta priors', () => {
  it('worked by hand: 2 of 2', () => {
    // Wide: Beta(3, 1), mean 3/4, variance 3/80, P(> 1/2) = 7/8, evidence B(3,1)/B(1,1) = 1/3.
    // Ordinary: Beta(3, 3), P(> 1/2) = 1/2, evidence B(3,3)/B(1,3) = (1/30)/(1/3) = 1/10.
    // Odds 1/9 x (1/3)/(1/10) = 10/27, chance 10/37: 10/37 x 7/8 + 27/37 x 1/2 = 89/148.
    const { mean, sd, probability } = sharePosterior(2, 2, SIZE);
    expect(mean).toBeCloseTo(0.75, 12);
    expect(sd).toBeCloseTo(Math.sqrt(3 / 80), 12);
    expect(probability).toBeCloseTo(89 / 148, 10);
  });

  it('with nothing seen is the prior, 1 to 9: 1/10 x 1/2 + 9/10 x 1/8', () => {
    expect(sharePosterior(0, 0, SIZE).probability).toBeCloseTo(0.05 + 0.9 / 8, 10);
  });

  it('grows with each one more, and stays within 0..1 for very many', () => {
    let last = -1;
    for (let count = 0; count <= 30; count++) {
      const { probability } = sharePosterior(count, 30, SIZE);
      expect(probability).toBeGreaterThan(last);
      last = probability;
    }
    for (const count of [0, 50_000, 100_000]) {
      const { probability, mean, sd } = sharePosterior(count, 100_000, SIZE);
      expect(probability).toBeGreaterThanOrEqual(0);
      expect(probability).toBeLessThanOrEqual(1);
      expect(Number.isFinite(mean + sd)).toBe(true);
    }
  });

  it('refuses more than there are', () => {
    expect(() => sharePosterior(3, 2, SIZE)).toThrow(RangeError);
  });
});
