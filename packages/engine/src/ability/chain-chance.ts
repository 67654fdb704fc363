import { gaussHermite } from '../numeric/gauss-hermite.ts';
import { logistic } from '../numeric/logistic.ts';
import { meanLogistic } from '../numeric/logistic-normal.ts';
import type { Interval90 } from './leg.ts';
import { fitLogitNormal, type LogitNormal, meanSquareLogistic } from './logit-normal-fit.ts';
import type { Moments } from './ordinal-update.ts';

/** What is shared is narrow (form of the day): eight nodes are good to 1e-7 up to an sd of 0.7. */
const RULE = gaussHermite(8);
/** 95 % quantile of the standard normal, for [5 %, 95 %] intervals. */
export const Z90 = 1.6448536269514722;

/** What every leg's s(a_l + u) is averaged to before legs are multiplied: s itself, or its square. */
type LegMean = (mean: number, variance: number) => number;

function expectedProduct(legs: readonly Moments[], sharedVariance: number, legMean: LegMean): number {
  const sd = Math.sqrt(sharedVariance);
  let sum = 0;
  for (let k = 0; k < RULE.nodes.length; k++) {
    let product = RULE.weights[k]!;
    for (const leg of legs) product *= legMean(leg.mean + sd * RULE.nodes[k]!, leg.variance);
    sum += product;
  }
  return Math.min(1, sum);
}

/**
 * `E prod_l s(a_l + u)` with independent a_l (mean and variance of each leg) and one shared
 * u ~ N(0, shared): what all legs share is integrated outside the product.
 */
export function sharedProduct(legs: readonly Moments[], sharedVariance: number): number {
  return expectedProduct(legs, sharedVariance, meanLogistic);
}

/** The product's logit as a normal, by its gradient at the means (delta method); exact for one leg. */
function byGradient(legs: readonly Moments[], sharedVariance: number): LogitNormal {
  let logProduct = 0;
  for (const leg of legs) logProduct += Math.log(Math.max(logistic(leg.mean), 1e-300));
  const missedSome = -Math.expm1(logProduct);
  let own = 0;
  let along = 0;
  for (const leg of legs) {
    // A chain that is as good as sure: each leg's share of the risk, its limit at equal means.
    const gradient = missedSome > 1e-12 ? logistic(-leg.mean) / missedSome : 1 / legs.length;
    own += gradient * gradient * leg.variance;
    along += gradient;
  }
  const mean = legs.length === 1 ? legs[0]!.mean : logProduct - Math.log(Math.max(missedSome, 1e-300));
  return { mean, sd: Math.sqrt(own + along * along * sharedVariance) };
}

/**
 * [5 %, 95 %] of `prod_l s(a_l + u)`: quantiles of the logit-normal with the product's first two moments
 * (exact for one leg; within 0.02 of simulation for three), or by the gradient where no such fit is found.
 * `first` is `sharedProduct` of the same, if it is known already.
 */
export function sharedProductInterval(
  legs: readonly Moments[],
  sharedVariance: number,
  first: number = sharedProduct(legs, sharedVariance),
): Interval90 {
  const rough = byGradient(legs, sharedVariance);
  const fitted =
    legs.length === 1 || first < 1e-4 || first > 1 - 1e-4
      ? null
      : fitLogitNormal(first, expectedProduct(legs, sharedVariance, meanSquareLogistic), rough);
  const { mean, sd } = fitted ?? rough;
  return [logistic(mean - Z90 * sd), logistic(mean + Z90 * sd)];
}
