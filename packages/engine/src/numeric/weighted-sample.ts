/** Points of a posterior with weights that add up to 1: nodes of a quadrature, or draws. */
export interface WeightedSample {
  readonly points: readonly Float64Array[];
  readonly weights: Float64Array;
  readonly logEvidence: number;
}

export interface SampleMoments {
  readonly mean: Float64Array;
  readonly sd: Float64Array;
  /** Row-major. */
  readonly cov: Float64Array;
}

/** Makes weights of log weights (unnormalised density over the points' own), without overflow. */
export function weighSample(points: readonly Float64Array[], logWeights: Float64Array): WeightedSample {
  const most = logWeights.reduce((a, b) => Math.max(a, b), -Infinity);
  const weights = logWeights.map((value) => Math.exp(value - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return { points, weights: weights.map((weight) => weight / total), logEvidence: most + Math.log(total) };
}

/** Mean of a function of the parameters. */
export function sampleMean({ points, weights }: WeightedSample, of: (x: Float64Array) => number): number {
  return points.reduce((sum, x, i) => sum + weights[i]! * of(x), 0);
}

/** Mean, sd and covariance of the parameters. */
export function sampleMoments(sample: WeightedSample): SampleMoments {
  const d = sample.points[0]?.length ?? 0;
  const mean = Float64Array.from({ length: d }, (_, j) => sampleMean(sample, (x) => x[j]!));
  const cov = new Float64Array(d * d);
  for (let i = 0; i < d; i++)
    for (let j = 0; j <= i; j++) {
      cov[i * d + j] = sampleMean(sample, (x) => (x[i]! - mean[i]!) * (x[j]! - mean[j]!));
      cov[j * d + i] = cov[i * d + j]!;
    }
  return { mean, cov, sd: mean.map((_, j) => Math.sqrt(cov[j * (d + 1)]!)) };
}

/** `1 / sum weights^2`: to how many independent draws the sample comes (Kong1994). */
export function effectiveSize({ weights }: WeightedSample): number {
  return 1 / weights.reduce((sum, weight) => sum + weight * weight, 0);
}

/** Standard error of `sampleMean` when the points are independent draws: `sqrt(sum w^2 (f - mean)^2)` (Geweke1989). */
export function sampleError(sample: WeightedSample, of: (x: Float64Array) => number): number {
  const mean = sampleMean(sample, of);
  const { points, weights } = sample;
  return Math.sqrt(points.reduce((sum, x, i) => sum + (weights[i]! * (of(x) - mean)) ** 2, 0));
}
