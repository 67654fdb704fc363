import { describe, expect, test } from 'vitest';
import { diceOf, rounded } from './dice.ts';

describe('dice', () => {
  const dice = diceOf(5);
  const draws = Array.from({ length: 40_000 }, () => dice.bell());
  const mean = draws.reduce((sum, x) => sum + x, 0) / draws.length;

  // Twelve uniforms less six: mean 0, variance 12/12 = 1, bounds +-6. Tolerances: 5 standard errors at 40,000 draws,
  // 5/sqrt(40000) = 0.025 for the mean, about 5 sqrt(2/40000) = 0.035 for the variance.
  test('the bell has mean 0 and variance 1', () => {
    const variance = draws.reduce((sum, x) => sum + (x - mean) ** 2, 0) / draws.length;
    expect(Math.abs(mean)).toBeLessThan(0.025);
    expect(Math.abs(variance - 1)).toBeLessThan(0.035);
    expect(draws.every((x) => Math.abs(x) < 6)).toBe(true);
  });
  test('whole numbers reach both ends and nothing else', () => {
    const seen = new Set(Array.from({ length: 500 }, () => dice.whole(2, 5)));
    expect([...seen].sort()).toEqual([2, 3, 4, 5]);
  });
  test('nothing can be picked from nothing', () => {
    expect(() => dice.pick([])).toThrow(RangeError);
  });
  test('numbers are written as a person writes them', () => {
    expect(rounded(12.3456, 1)).toBe(12.3);
    expect(rounded(7.5)).toBe(8);
  });
});
