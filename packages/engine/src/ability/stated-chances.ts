import { logistic } from '../numeric/logistic.ts';
import { meanLogistic } from '../numeric/logistic-normal.ts';
import { Z90 } from './chain-chance.ts';
import type { LegForecast } from './leg.ts';
import type { Moments } from './ordinal-update.ts';

/**
 * What is stated of a leg whose log-odds of "not missed" are N(mean, variance), with a gap to good that is N(mean, variance) too:
 * `E s(eta)` and `E s(eta - gap)` by quadrature, and the 5 % and 95 % quantiles of both (logits in, probabilities out). Good is
 * never likelier than not missed.
 */
export function statedChances({ mean, variance }: Moments, gap: Moments): LegForecast {
  const notMissed = meanLogistic(mean, variance);
  const goodMean = mean - gap.mean;
  const goodVariance = variance + gap.variance;
  const good = Math.min(notMissed, meanLogistic(goodMean, goodVariance));
  const half = Z90 * Math.sqrt(variance);
  const goodHalf = Z90 * Math.sqrt(goodVariance);
  return {
    chance: { missed: 1 - notMissed, fair: notMissed - good, good },
    interval90: {
      good: [logistic(goodMean - goodHalf), logistic(goodMean + goodHalf)],
      notMissed: [logistic(mean - half), logistic(mean + half)],
    },
    logOdds: { mean, sd: Math.sqrt(variance) },
  };
}
