/**
 * The logistic curve and its kin, stable at both ends (no overflow, no cancellation, for any finite argument).
 */

/** Logistic `s(x) = 1 / (1 + exp(-x))`; dimensionless, in [0, 1]. */
export function logistic(x: number): number {
  if (x >= 0) return 1 / (1 + Math.exp(-x));
  const e = Math.exp(x);
  return e / (1 + e);
}

/** `ln s(x)`, right to full precision where `s(x)` itself would be 0 (then it is `x`). */
export function logLogistic(x: number): number {
  return x >= 0 ? -Math.log1p(Math.exp(-x)) : x - Math.log1p(Math.exp(x));
}

/** Slope of the logistic, `s(x) s(-x)`, without cancellation. */
export function logisticSlope(x: number): number {
  const e = Math.exp(-Math.abs(x));
  return e / ((1 + e) * (1 + e));
}

/**
 * Log-odds `ln(p / (1 - p))` of a probability.
 * @throws RangeError unless 0 <= p <= 1; the ends give -Infinity and Infinity.
 */
export function logit(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`p: expected 0..1, got ${p}`);
  return Math.log(p) - Math.log1p(-p);
}
