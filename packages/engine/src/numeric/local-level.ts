/** A Gaussian level followed over time: one entry a step. */
export interface LevelPath {
  readonly mean: Float64Array;
  readonly variance: Float64Array;
}

export interface LevelFilter {
  readonly predicted: LevelPath;
  readonly filtered: LevelPath;
}

/**
 * Backward pass over a filtered random walk (Rauch1965): smoothed means and variances. Step t+1's walk
 * variance is `predicted.variance[t+1] - filtered.variance[t]`.
 */
export function smoothLevel({ predicted, filtered }: LevelFilter): LevelPath {
  const mean = filtered.mean.slice();
  const variance = filtered.variance.slice();
  for (let t = mean.length - 2; t >= 0; t--) {
    const gain = filtered.variance[t]! / predicted.variance[t + 1]!;
    mean[t]! += gain * (mean[t + 1]! - predicted.mean[t + 1]!);
    variance[t]! += gain * gain * (variance[t + 1]! - predicted.variance[t + 1]!);
  }
  return { mean, variance };
}

/**
 * Kalman filter of a local level (Durbin2012, 2.2): `y_t = a_t + N(0, noise)`, `a_(t+1) = a_t + N(0, walk)`,
 * `a_1 ~ N(mean, variance)` before the first observation. `noise`, `walk`, `variance` are variances in the
 * square of y's unit. `logLik` is the density of all y.
 * @throws RangeError if noise is not positive or walk or variance negative
 */
export function filterLocalLevel(
  y: readonly number[],
  start: { readonly mean: number; readonly variance: number },
  noise: number,
  walk: number,
): LevelFilter & { readonly logLik: number } {
  if (!(noise > 0)) throw new RangeError(`noise: expected > 0, got ${noise}`);
  if (!(walk >= 0)) throw new RangeError(`walk: expected >= 0, got ${walk}`);
  if (!(start.variance >= 0)) throw new RangeError(`variance: expected >= 0, got ${start.variance}`);
  const path = (): LevelPath => ({ mean: new Float64Array(y.length), variance: new Float64Array(y.length) });
  const predicted = path();
  const filtered = path();
  let { mean, variance } = start;
  let logLik = 0;
  y.forEach((value, t) => {
    predicted.mean[t] = mean;
    predicted.variance[t] = variance;
    const innovation = value - mean;
    const spread = variance + noise;
    logLik -= 0.5 * (Math.log(2 * Math.PI * spread) + (innovation * innovation) / spread);
    mean += (variance / spread) * innovation;
    variance = (variance * noise) / spread;
    filtered.mean[t] = mean;
    filtered.variance[t] = variance;
    variance += walk;
  });
  return { predicted, filtered, logLik };
}
