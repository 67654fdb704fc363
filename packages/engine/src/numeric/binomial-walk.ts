import { type LevelFilter, type LevelPath, smoothLevel } from './local-level.ts';
import { logistic, logisticSlope, logLogistic } from './logistic.ts';

/** y successes out of n at one step; n 0 is a step without observation (time still passes). */
export interface Trials {
  readonly y: number;
  readonly n: number;
}

export interface WalkStart {
  readonly mean: number;
  readonly variance: number;
}

const MOST_STEPS = 100;

/** Mode and Laplace variance of one binomial step under a normal prior. */
function stepMode(
  prior: WalkStart,
  { y, n }: Trials,
): { mode: number; variance: number; logPredictive: number } {
  let a = prior.mean;
  const value = (at: number) =>
    y * logLogistic(at) + (n - y) * logLogistic(-at) - (0.5 * (at - prior.mean) ** 2) / prior.variance;
  for (let step = 0; step < MOST_STEPS; step++) {
    const gradient = y - n * logistic(a) - (a - prior.mean) / prior.variance;
    let move = gradient / (n * logisticSlope(a) + 1 / prior.variance);
    while (Math.abs(move) > 1e-14 && value(a + move) < value(a)) move /= 2;
    a += move;
    if (Math.abs(move) < 1e-13) break;
  }
  const variance = 1 / (n * logisticSlope(a) + 1 / prior.variance);
  return { mode: a, variance, logPredictive: value(a) + 0.5 * Math.log(variance / prior.variance) };
}

/**
 * Sequential mode filter of a logit random walk (Smith2004; Fahrmeir1992): `y_t ~ Bin(n_t, s(a_t))`,
 * `a_1 ~ N(start)`, `a_t = a_(t-1) + N(0, walk)`, each step at its mode with the curvature there, then the
 * linear backward pass. Fast and a little off: one step is all it looks at.
 */
export function sequentialModeWalk(
  trials: readonly Trials[],
  start: WalkStart,
  walk: number,
): LevelFilter & { readonly smoothed: LevelPath; readonly logPredictive: Float64Array } {
  const size = trials.length;
  const path = (): LevelPath => ({ mean: new Float64Array(size), variance: new Float64Array(size) });
  const predicted = path();
  const filtered = path();
  const logPredictive = new Float64Array(size);
  let prior = start;
  trials.forEach((trial, t) => {
    predicted.mean[t] = prior.mean;
    predicted.variance[t] = prior.variance;
    const step = stepMode(prior, trial);
    filtered.mean[t] = step.mode;
    filtered.variance[t] = step.variance;
    logPredictive[t] = step.logPredictive;
    prior = { mean: step.mode, variance: step.variance + walk };
  });
  return { predicted, filtered, smoothed: smoothLevel({ predicted, filtered }), logPredictive };
}

/**
 * Joint mode of all states of the same model with Laplace's variances and evidence (Fahrmeir1992), without
 * `ln C(n, y)`: Newton on a tridiagonal curvature, each step one forward and one backward sweep, halved while
 * it does not rise.
 * @throws RangeError if walk or the start's variance is not positive
 */
export function jointModeWalk(
  trials: readonly Trials[],
  start: WalkStart,
  walk: number,
): LevelPath & { readonly logJoint: number; readonly logEvidence: number } {
  if (!(walk > 0)) throw new RangeError(`walk: expected > 0, got ${walk}`);
  if (!(start.variance > 0)) throw new RangeError(`variance: expected > 0, got ${start.variance}`);
  const size = trials.length;
  let states = new Float64Array(size).fill(start.mean);
  const logNormal = (away: number, variance: number) =>
    -0.5 * (Math.log(2 * Math.PI * variance) + (away * away) / variance);
  const joint = (a: Float64Array) =>
    trials.reduce((sum, { y, n }, t) => {
      const step =
        t === 0 ? logNormal(a[0]! - start.mean, start.variance) : logNormal(a[t]! - a[t - 1]!, walk);
      return sum + step + y * logLogistic(a[t]!) + (n - y) * logLogistic(-a[t]!);
    }, 0);
  const diagonal = new Float64Array(size);
  const gradient = new Float64Array(size);
  /** Pivots of the tridiagonal factor (off-diagonal entries are all -1/walk). */
  const pivots = (a: Float64Array) => {
    trials.forEach(({ y, n }, t) => {
      const before = t === 0 ? 1 / start.variance : 1 / walk;
      const after = t === size - 1 ? 0 : 1 / walk;
      diagonal[t] = n * logisticSlope(a[t]!) + before + after;
      const back = t === 0 ? start.mean : a[t - 1]!;
      const forth = t === size - 1 ? 0 : (a[t + 1]! - a[t]!) * after;
      gradient[t] = y - n * logistic(a[t]!) - (a[t]! - back) * before + forth;
    });
    const pivot = diagonal.slice();
    for (let t = 1; t < size; t++) pivot[t]! -= 1 / (walk * walk * pivot[t - 1]!);
    return pivot;
  };
  let pivot = pivots(states);
  let value = joint(states);
  for (let step = 0; step < MOST_STEPS; step++) {
    const move = gradient.slice();
    for (let t = 1; t < size; t++) move[t]! += move[t - 1]! / (walk * pivot[t - 1]!);
    move[size - 1]! /= pivot[size - 1]!;
    for (let t = size - 2; t >= 0; t--) move[t] = (move[t]! + move[t + 1]! / walk) / pivot[t]!;
    let length = 1;
    let next = states;
    let nextValue = value;
    for (; length > 1e-6; length /= 2) {
      next = states.map((a, t) => a + length * move[t]!);
      nextValue = joint(next);
      if (nextValue >= value - 1e-12 * Math.abs(value)) break;
    }
    states = next;
    value = nextValue;
    pivot = pivots(states);
    if (Math.max(...move.map(Math.abs)) < 1e-12) break;
  }
  // Diagonal of the inverse of a tridiagonal matrix, from its pivots, last first.
  const variance = new Float64Array(size);
  variance[size - 1] = 1 / pivot[size - 1]!;
  for (let t = size - 2; t >= 0; t--) {
    const link = 1 / (walk * pivot[t]!);
    variance[t] = 1 / pivot[t]! + link * link * variance[t + 1]!;
  }
  const logDet = pivot.reduce((sum, p) => sum + Math.log(p), 0);
  return {
    mean: states,
    variance,
    logJoint: value,
    logEvidence: value + 0.5 * size * Math.log(2 * Math.PI) - 0.5 * logDet,
  };
}
