import { describe, expect, it } from 'vitest';
import reference from '../../../reference/fleshler-hoffman.json' with { type: 'json' };
import { fleshlerHoffman } from './fleshler-hoffman.ts';

describe('intervals after Fleshler & Hoffman (1962)', () => {
  it('is the printed table of 12 intervals of mean 30', () => {
    const { N, mean, values_3dp: printed } = reference.published;
    const values = fleshlerHoffman(N, mean);
    expect(printed).toHaveLength(12);
    // Half of the last printed digit.
    printed.forEach((value, n) => {
      expect(Math.abs(values[n]! - value)).toBeLessThanOrEqual(0.0005);
    });
  });

  it.each(reference.tables)('is the table of $N intervals of mean $mean', ({ N, mean, values }) => {
    const found = fleshlerHoffman(N, mean);
    expect(found).toHaveLength(values.length);
    // 1e-9 of the mean: the reference has 15 digits.
    found.forEach((value, n) => {
      expect(Math.abs(value - values[n]!)).toBeLessThan(1e-9 * mean);
    });
  });

  it('adds up to the count times the mean (the paper), and ends at mean (1 + ln N)', () => {
    for (const count of [1, 2, 7, 12, 40]) {
      const values = fleshlerHoffman(count, 2.5);
      const sum = values.reduce((so, value) => so + value, 0);
      // Rounding of 40 sums of logarithms.
      expect(sum).toBeCloseTo(2.5 * count, 10);
      expect(values.at(-1)).toBeCloseTo(2.5 * (1 + Math.log(count)), 12);
    }
  });

  it('says which argument is wrong', () => {
    expect(() => fleshlerHoffman(0, 3)).toThrow('count: expected a whole number >= 1, got 0');
    expect(() => fleshlerHoffman(3, 0)).toThrow('mean: expected > 0, got 0');
    expect(() => fleshlerHoffman(3, Number.NaN)).toThrow(RangeError);
  });
});
