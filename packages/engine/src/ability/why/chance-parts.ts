import { meanLogistic } from '../../numeric/logistic-normal.ts';

/** A stated log-odds of good: mean and variance of a normal, logits. */
export interface GoodLogOdds {
  readonly mean: number;
  readonly variance: number;
}

/** A leg's log-odds of good by the model, and its chance as it was stated: recalibrated where that was earned. */
export interface StatedGood extends GoodLogOdds {
  readonly chance: number;
}

/** Under this difference of the means the slope is taken at one place: the quadrature is good to 1e-6. */
const SAME_MEAN = 1e-3;
const HALF_STEP = 0.05;

/**
 * How much chance of good one logit was worth on the way from one leg to another, per logit: the change of the chance
 * `E s(eta - g)` that the means make, shared evenly between "means first" and "variances first" (Shapley1953 for two
 * players), over the difference of the means. Between 0 and 0.25, and defined where the means are the same.
 */
export function chancePerLogit(from: GoodLogOdds, to: GoodLogOdds): number {
  const difference = to.mean - from.mean;
  const centre = (from.mean + to.mean) / 2;
  const half = Math.abs(difference) < SAME_MEAN ? HALF_STEP : difference / 2;
  const change = (variance: number) =>
    meanLogistic(centre + half, variance) - meanLogistic(centre - half, variance);
  return (change(from.variance) + change(to.variance)) / (4 * half);
}

/**
 * The same for chances as they were stated: where they are recalibrated, a logit is worth as much more or less as the
 * curve stretches the way between the two (its slope there, where the two are the same). A part of `d` logits is then
 * worth `d x` this; what the parts leave over is how sure the two chances are.
 */
export function statedChancePerLogit(from: StatedGood, to: StatedGood): number {
  const plainFrom = meanLogistic(from.mean, from.variance);
  const plainTo = meanLogistic(to.mean, to.variance);
  const way = plainTo - plainFrom;
  const stretched =
    Math.abs(way) > SAME_CHANCE
      ? (to.chance - from.chance) / way
      : (to.chance * (1 - to.chance)) / (plainTo * (1 - plainTo));
  return chancePerLogit(from, to) * (Number.isFinite(stretched) ? stretched : 1);
}

/** Chances closer than this are the same: what is left of them in a double would be noise. */
const SAME_CHANCE = 1e-9;
