import { betaCdf, logBeta } from '../../numeric/incomplete-beta.ts';
import { PRIOR_CHANCE, type ShareSize } from './sizes.ts';

export interface SharePosterior {
  /** Under the wide prior, 0..1. */
  readonly mean: number;
  readonly sd: number;
  readonly probability: number;
}

/**
 * A share of `count` out of `n` under two Beta priors, ordinary and wide, weighed 9 to 1: each becomes
 * `Beta(a + count, b + n - count)` with evidence `B(a + count, b + n - count)/B(a, b)`; the probability is that the share is
 * over the size that matters. Exact.
 * @throws RangeError unless 0 <= count <= n
 */
export function sharePosterior(count: number, n: number, size: ShareSize): SharePosterior {
  if (!(count >= 0 && count <= n)) throw new RangeError(`count: expected 0..${n}, got ${count}`);
  const under = ([a, b]: readonly [number, number]) => ({
    a: a + count,
    b: b + n - count,
    log: logBeta(a + count, b + n - count) - logBeta(a, b),
  });
  const wide = under(size.wide);
  const ordinary = under(size.ordinary);
  const odds = (PRIOR_CHANCE / (1 - PRIOR_CHANCE)) * Math.exp(Math.min(700, wide.log - ordinary.log));
  const chance = odds / (1 + odds);
  const over = ({ a, b }: { a: number; b: number }) => 1 - betaCdf(size.matters, a, b);
  const total = wide.a + wide.b;
  return {
    mean: wide.a / total,
    sd: Math.sqrt((wide.a * wide.b) / (total + 1)) / total,
    probability: chance * over(wide) + (1 - chance) * over(ordinary),
  };
}
