import { choleskyFactor, choleskyInverse, choleskyLogDet } from './cholesky.ts';
import type { LaplaceFit } from './logistic-map.ts';

/**
 * Laplace's approximation at a mode found elsewhere, for a density whose derivatives nobody wrote down: minus
 * the Hessian by central differences (Nocedal2006, 8.1), its inverse, `logJoint + (d/2) ln 2 pi + ln det(cov)/2`. With
 * a log-likelihood for density, `sd` are the standard errors of maximum likelihood. `null` if the curvature is not
 * positive definite: no maximum there, or data that can't tell the parameters apart.
 * @param difference half the width of the differences, in the parameters' unit; the curvature's error is about
 * `difference^2/12` fourth derivatives and `1e-16/difference^2` of the value
 * @throws RangeError unless difference is positive
 */
export function laplaceByDifferences(
  logJoint: (x: Float64Array) => number,
  mode: Float64Array,
  difference = 1e-3,
): LaplaceFit | null {
  if (!(difference > 0)) throw new RangeError(`difference: expected > 0, got ${difference}`);
  const d = mode.length;
  const peak = logJoint(mode);
  const beside = (i: number, a: number, j: number, b: number) => {
    const x = mode.slice();
    x[i]! += a * difference;
    x[j]! += b * difference;
    return logJoint(x);
  };
  const curvature = new Float64Array(d * d);
  for (let i = 0; i < d; i++) {
    curvature[i * (d + 1)] = (2 * peak - beside(i, 1, i, 0) - beside(i, -1, i, 0)) / difference ** 2;
    for (let j = 0; j < i; j++) {
      const cross = beside(i, 1, j, -1) + beside(i, -1, j, 1) - beside(i, 1, j, 1) - beside(i, -1, j, -1);
      curvature[i * d + j] = cross / (4 * difference ** 2);
      curvature[j * d + i] = curvature[i * d + j]!;
    }
  }
  const factor = choleskyFactor(curvature, d);
  if (factor === null) return null;
  const cov = choleskyInverse(factor, d);
  return {
    mode: mode.slice(),
    cov,
    sd: Float64Array.from({ length: d }, (_, j) => Math.sqrt(cov[j * (d + 1)]!)),
    logJoint: peak,
    logEvidence: peak + 0.5 * d * Math.log(2 * Math.PI) - 0.5 * choleskyLogDet(factor, d),
  };
}
