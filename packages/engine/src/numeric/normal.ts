/**
 * Standard normal distribution. The cdf is the complementary error function by its continued fraction in the
 * tails and by its series in the middle (Abramowitz1964, 7.1.5 and 26.2.14); the quantile is a rational start
 * (Acklam's shape, 1e-9) made exact by one Halley step on our own cdf.
 */

const SQRT_2PI = Math.sqrt(2 * Math.PI);

/** Density at z, `exp(-z^2/2) / sqrt(2 pi)`. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / SQRT_2PI;
}

/** P(Z <= z), absolute error under 1e-15, relative error of the lower tail under 1e-12. */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  const a = Math.abs(z);
  if (a < 3) {
    let term = a;
    let sum = a;
    for (let k = 1; Math.abs(term) > 1e-18 * sum; k++) {
      term *= (a * a) / (2 * k + 1);
      sum += term;
    }
    const middle = normalDensity(a) * sum;
    return z < 0 ? 0.5 - middle : 0.5 + middle;
  }
  let fraction = 0;
  for (let k = 150; k >= 1; k--) fraction = k / (a + fraction);
  const tail = a > 40 ? 0 : normalDensity(a) / (a + fraction);
  return z < 0 ? tail : 1 - tail;
}

const A = [
  -39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716,
  2.506628277459239,
];
const B = [
  -54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572, 1,
];
const C = [
  -0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968,
  2.938163982698783,
];
const D = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416, 1];

function horner(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, c) => sum * x + c, 0);
}

function start(p: number): number {
  if (p < 0.02425) {
    const q = Math.sqrt(-2 * Math.log(p));
    return horner(C, q) / horner(D, q);
  }
  const q = p - 0.5;
  return (horner(A, q * q) * q) / horner(B, q * q);
}

/**
 * Quantile z of the standard normal: `P(Z <= z) = p`.
 * @throws RangeError unless 0 < p < 1
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`p: expected between 0 and 1, got ${p}`);
  if (p > 0.5) return -normalQuantile(1 - p);
  const z = start(p);
  const error = (normalCdf(z) - p) / normalDensity(z);
  return z - error / (1 + (z * error) / 2);
}
