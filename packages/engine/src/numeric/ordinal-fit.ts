import { choleskyInverse } from './cholesky.ts';
import { logistic, logisticSlope, logLogistic } from './logistic.ts';
import { maximiseConcave } from './newton.ts';

/** One row: grade 0..K-1 (worst first), covariates without intercept, and how often it came. */
export interface OrdinalRow {
  readonly grade: number;
  readonly x: readonly number[];
  readonly count: number;
}

export interface OrdinalFit {
  /** K - 1 cuts, ascending, then the slopes. */
  readonly cuts: Float64Array;
  readonly slopes: Float64Array;
  /** Standard errors in the same order, cuts first. */
  readonly se: Float64Array;
  readonly logLik: number;
}

/** ln(s(a) - s(b)) for a > b, without cancellation. */
function logDifference(a: number, b: number): number {
  return logLogistic(a) + logLogistic(-b) + Math.log(-Math.expm1(b - a));
}

/**
 * Cumulative logit by maximum likelihood (McCullagh1980): `P(Y <= k) = s(cut_k - x'b)`, larger x'b means
 * higher grades; concave in cuts and slopes (Pratt1981), so Newton finds the one maximum. The log-likelihood
 * has no multinomial constant. With a finite `slopeSd` the slopes have a normal prior, mean 0, the cuts none: the
 * fit is then at the mode and `logLik` less `b^2/(2 slopeSd^2)`, the normal constant left out. `null` if there is no
 * maximum, or a grade never came.
 * @throws RangeError if grades is under 2 or a row's grade is not one of them
 */
export function fitOrdinal(
  rows: readonly OrdinalRow[],
  grades: number,
  slopeSd = Infinity,
): OrdinalFit | null {
  if (!(slopeSd > 0)) throw new RangeError(`slopeSd: expected > 0, got ${slopeSd}`);
  if (!(grades >= 2)) throw new RangeError(`grades: expected 2 or more, got ${grades}`);
  const seen = new Float64Array(grades);
  for (const { grade, count } of rows) {
    if (!(grade in seen)) throw new RangeError(`grade: expected 0..${grades - 1}, got ${grade}`);
    seen[grade]! += count;
  }
  if (seen.some((count) => count === 0)) return null;
  const k = grades - 1;
  const d = k + (rows[0]?.x.length ?? 0);
  const total = seen.reduce((sum, count) => sum + count, 0);
  const start = new Float64Array(d);
  let below = 0;
  for (let c = 0; c < k; c++) {
    below += seen[c]!;
    start[c] = Math.log(below / (total - below));
  }
  const maximum = maximiseConcave(start, (b) => {
    let value = 0;
    const gradient = new Float64Array(d);
    const curvature = new Float64Array(d * d);
    for (const row of rows) value += addRow(row, b, k, gradient, curvature);
    for (let j = k; j < d; j++) {
      const precision = 1 / (slopeSd * slopeSd);
      value -= 0.5 * precision * b[j]! * b[j]!;
      gradient[j]! -= precision * b[j]!;
      curvature[j * (d + 1)]! += precision;
    }
    return { value, gradient, curvature };
  });
  if (maximum === null) return null;
  const cov = choleskyInverse(maximum.factor, d);
  return {
    cuts: maximum.x.slice(0, k),
    slopes: maximum.x.slice(k),
    se: Float64Array.from({ length: d }, (_, j) => Math.sqrt(cov[j * (d + 1)]!)),
    logLik: maximum.value,
  };
}

/** Adds a row's gradient and curvature; returns its log-likelihood, -Infinity if the cuts have crossed. */
function addRow(
  row: OrdinalRow,
  b: Float64Array,
  k: number,
  gradient: Float64Array,
  curvature: Float64Array,
): number {
  const d = b.length;
  const eta = row.x.reduce((sum, x, j) => sum + x * b[k + j]!, 0);
  const top = row.grade < k ? b[row.grade]! - eta : Infinity;
  const floor = row.grade > 0 ? b[row.grade - 1]! - eta : -Infinity;
  if (!(top > floor)) return -Infinity;
  // With a, b the ends: d ln(s(a) - s(b)) = s(-a) ... by the product form ln s(a) + ln s(-b) + ln(1 - e^(b-a)).
  const gap = top - floor;
  const between = gap === Infinity ? 0 : 1 / Math.expm1(gap);
  const dTop = top === Infinity ? 0 : logistic(-top) + between;
  const dFloor = floor === -Infinity ? 0 : -logistic(floor) - between;
  const cross = between * (1 + between);
  const hTop = top === Infinity ? 0 : logisticSlope(top) + cross;
  const hFloor = floor === -Infinity ? 0 : logisticSlope(floor) + cross;
  const direction = (end: number | null): Float64Array => {
    const v = new Float64Array(d);
    if (end !== null) {
      v[end] = 1;
      row.x.forEach((x, j) => {
        v[k + j] = -x;
      });
    }
    return v;
  };
  const u = direction(row.grade < k ? row.grade : null);
  const w = direction(row.grade > 0 ? row.grade - 1 : null);
  for (let i = 0; i < d; i++) {
    gradient[i]! += row.count * (dTop * u[i]! + dFloor * w[i]!);
    for (let j = 0; j < d; j++) {
      const both = hTop * u[i]! * u[j]! + hFloor * w[i]! * w[j]! - cross * (u[i]! * w[j]! + w[i]! * u[j]!);
      curvature[i * d + j]! += row.count * both;
    }
  }
  if (top === Infinity) return row.count * logLogistic(-floor);
  if (floor === -Infinity) return row.count * logLogistic(top);
  return row.count * logDifference(top, floor);
}
