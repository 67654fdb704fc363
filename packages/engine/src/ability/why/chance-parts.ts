import { meanLogistic } from '../../numeric/logistic-normal.ts';

/** A stated log-odds of good: mean and variance of a normal, logits. */
export interface GoodLogOdds {
  readonly mean: number;
  readonly variance: number;
}

/** Under this difference of the means the slope is taken at one place: the quadrature is good to 1e-6. */
const SAME_MEAN = 1e-3;
const HALF_STEP = 0.05;

/**
 * How much chance of good one logit was worth on the way from one leg to another, per logit: the change of the chance
 * `E s(eta - g)` that the means make, shared evenly between "means first" and "variances first" (Shapley1953 for two
 * players), over the difference of the means. Between 0 and 0.25, and defined where the means are the same.
 *
 * A part of `d` logits is then worth `d x slope`; what the parts leave over is how sure the two chances are.
 */
export function chancePerLogit(from: GoodLogOdds, to: GoodLogOdds): number {
  const difference = to.mean - from.mean;
  const centre = (from.mean + to.mean) / 2;
  const half = Math.abs(difference) < SAME_MEAN ? HALF_STEP : difference / 2;
  const change = (variance: number) =>
    meanLogistic(centre + half, variance) - meanLogistic(centre - half, variance);
  return (change(from.variance) + change(to.variance)) / (4 * half);
}
