import { describe, expect, it } from 'vitest';
import law from '../../reference/rank-law.json' with { type: 'json' };
import { seededRandom } from '../numeric/random.ts';
import { calibrationSample, rankChiSquare, rankOf, type StatedTruth } from './rank-check.ts';

/**
 * Chi-square of 20 bins, 19 degrees. Limit: its 99 % quantile (reference file), so each of the three tests
 * would alarm falsely for 1 seed in 100; the seed is fixed. 1,000 dogs: `studies/sbc.ts`.
 */
const LIMIT = law.chiSquare.df19_99;
const DRAWS = 99;
const sample = calibrationSample(200, 20260301);

function chiSquare(pairs: readonly StatedTruth[], spread = 1): number {
  const random = seededRandom(5);
  const ranks = pairs.map(({ truth, stated }) =>
    rankOf(truth, { mean: stated.mean, sd: stated.sd * spread }, DRAWS, random),
  );
  return rankChiSquare(ranks, DRAWS, 20);
}

describe('simulation-based calibration of the filter, 200 dogs', () => {
  it.each(['ability', 'hardAsk', 'form'] as const)('%s: ranks are uniform', (quantity) => {
    expect(chiSquare(sample[quantity])).toBeLessThan(LIMIT);
  });
  it.each(['ability', 'hardAsk', 'form'] as const)('%s: half or twice the spread is caught', (quantity) => {
    expect(chiSquare(sample[quantity], 0.5)).toBeGreaterThan(LIMIT);
    expect(chiSquare(sample[quantity], 2)).toBeGreaterThan(LIMIT);
  });
});

describe('rank law under a wrong spread', () => {
  it.each([
    ['s_1', 1],
    ['s_0.5', 0.5],
    ['s_2', 2],
    ['s_0.9', 0.9],
  ] as const)('%s', (key, spread) => {
    const want = law.wrongSpread[key];
    const random = seededRandom(17);
    const n = 40_000;
    const counts = new Float64Array(10);
    for (let k = 0; k < n; k++)
      counts[rankOf(random.normal(), { mean: 0, sd: spread }, law.draws, random)]! += 1 / n;
    // Five standard errors of a share near 0.24: 5 sqrt(0.24 x 0.76 / 40,000) = 0.011.
    want.forEach((share, rank) => {
      expect(Math.abs(counts[rank]! - share)).toBeLessThan(0.011);
    });
  });
});
