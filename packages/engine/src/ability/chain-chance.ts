import { gaussHermite } from '../numeric/gauss-hermite.ts';
import { logistic } from '../numeric/logistic.ts';
import { meanLogistic } from '../numeric/logistic-normal.ts';
import type { Interval90 } from './leg.ts';
import type { Moments } from './ordinal-update.ts';

const RULE = gaussHermite(16);
/** 95 % quantile of the standard normal, for [5 %, 95 %] intervals. */
export const Z90 = 1.6448536269514722;

/**
 * `E prod_l s(a_l + u)` with independent a_l (mean and variance of each leg) and one shared
 * u ~ N(0, shared): what all legs share is integrated outside the product.
 */
export function sharedProduct(legs: readonly Moments[], sharedVariance: number): number {
  const sd = Math.sqrt(sharedVariance);
  let sum = 0;
  for (let k = 0; k < RULE.nodes.length; k++) {
    let product = RULE.weights[k]!;
    for (const leg of legs) product *= meanLogistic(leg.mean + sd * RULE.nodes[k]!, leg.variance);
    sum += product;
  }
  return Math.min(1, sum);
}

/**
 * [5 %, 95 %] of `prod_l s(a_l + u)`: normal on the logit of the product, by its gradient at the means
 * (delta method; exact for one leg, for several tested against simulation).
 */
export function sharedProductInterval(legs: readonly Moments[], sharedVariance: number): Interval90 {
  let logProduct = 0;
  for (const leg of legs) logProduct += Math.log(Math.max(logistic(leg.mean), 1e-300));
  const missedSome = -Math.expm1(logProduct);
  let own = 0;
  let along = 0;
  for (const leg of legs) {
    // A chain that is as good as sure: each leg's share of the risk, whose limit is 1 over the legs at equal means.
    const gradient = missedSome > 1e-12 ? logistic(-leg.mean) / missedSome : 1 / legs.length;
    own += gradient * gradient * leg.variance;
    along += gradient;
  }
  const centre = legs.length === 1 ? legs[0]!.mean : logProduct - Math.log(Math.max(missedSome, 1e-300));
  const half = Z90 * Math.sqrt(own + along * along * sharedVariance);
  return [logistic(centre - half), logistic(centre + half)];
}
