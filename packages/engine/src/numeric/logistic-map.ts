import { choleskyInverse, choleskyLogDet } from './cholesky.ts';
import { logistic, logisticSlope, logLogistic } from './logistic.ts';
import { maximiseConcave } from './newton.ts';

/** One row: covariates (with a 1 for the intercept), and y successes out of n. */
export interface LogisticRow {
  readonly x: readonly number[];
  readonly y: number;
  readonly n: number;
}

export interface LaplaceFit {
  readonly mode: Float64Array;
  /** Inverse of minus the Hessian at the mode, row-major. */
  readonly cov: Float64Array;
  readonly sd: Float64Array;
  /** ln of likelihood times prior at the mode, the normal constants of the prior in, `ln C(n, y)` out. */
  readonly logJoint: number;
  /** `logJoint + (d/2) ln 2 pi + ln det(cov)/2` (MacKay1992). */
  readonly logEvidence: number;
}

/**
 * Logistic regression with independent normal priors, at its mode: `y ~ Bin(n, s(x'b))`, `b_j ~ N(mean_j,
 * sd_j^2)`; an infinite sd is a flat prior (its constant is left out). Laplace's covariance and evidence are
 * approximations; the reference test says how far from exact. `null` if there is no maximum (flat priors and
 * separated data).
 * @throws RangeError if rows and priors differ in length, or y is not within 0..n
 */
export function logisticMap(
  rows: readonly LogisticRow[],
  priorMean: readonly number[],
  priorSd: readonly number[],
): LaplaceFit | null {
  const d = priorMean.length;
  if (priorSd.length !== d) throw new RangeError(`priorSd: expected ${d} values, got ${priorSd.length}`);
  for (const row of rows) {
    if (row.x.length !== d) throw new RangeError(`x: expected ${d} values, got ${row.x.length}`);
    if (!(row.y >= 0 && row.y <= row.n)) throw new RangeError(`y: expected 0..${row.n}, got ${row.y}`);
  }
  const precision = priorSd.map((sd) => 1 / (sd * sd));
  const constant = priorSd.reduce(
    (sum, sd) => (sd === Infinity ? sum : sum - Math.log(sd) - 0.5 * Math.log(2 * Math.PI)),
    0,
  );
  const maximum = maximiseConcave(Float64Array.from(priorMean), (b) => {
    let value = constant;
    const gradient = new Float64Array(d);
    const curvature = new Float64Array(d * d);
    for (let j = 0; j < d; j++) {
      const away = b[j]! - priorMean[j]!;
      value -= 0.5 * precision[j]! * away * away;
      gradient[j] = -precision[j]! * away;
      curvature[j * (d + 1)] = precision[j]!;
    }
    for (const { x, y, n } of rows) {
      const eta = x.reduce((sum, value, j) => sum + value * b[j]!, 0);
      // 0 * -Infinity cannot arise: logLogistic is finite for finite eta.
      value += y * logLogistic(eta) + (n - y) * logLogistic(-eta);
      const residual = y * logistic(-eta) - (n - y) * logistic(eta);
      const weight = n * logisticSlope(eta);
      for (let j = 0; j < d; j++) {
        gradient[j]! += residual * x[j]!;
        for (let k = 0; k < d; k++) curvature[j * d + k]! += weight * x[j]! * x[k]!;
      }
    }
    return { value, gradient, curvature };
  });
  if (maximum === null) return null;
  const cov = choleskyInverse(maximum.factor, d);
  return {
    mode: maximum.x,
    cov,
    sd: Float64Array.from({ length: d }, (_, j) => Math.sqrt(cov[j * (d + 1)]!)),
    logJoint: maximum.value,
    logEvidence: maximum.value + 0.5 * d * Math.log(2 * Math.PI) - 0.5 * choleskyLogDet(maximum.factor, d),
  };
}
