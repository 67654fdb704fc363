import { choleskyFactor, choleskySolve } from './cholesky.ts';
import type { LogitTerm } from './logit-term.ts';

/** A Gaussian state of a few components; `cov` row-major. */
export interface VectorState {
  readonly mean: Float64Array;
  readonly cov: Float64Array;
}

/** One step's observation: `eta = h's`; without one, time passes. */
export interface VectorReading {
  readonly term: LogitTerm;
  readonly h: readonly number[];
}

export interface VectorPath {
  readonly filtered: readonly VectorState[];
  readonly smoothed: readonly VectorState[];
}

const MOST_STEPS = 100;

/**
 * Sequential mode filter of a walk of several components seen through one log-odds a step (Fahrmeir1992):
 * `s_1 ~ N(start)`, `s_t = s_(t-1) + N(0, diag walk)`, each step at its one-dimensional mode with the curvature
 * there, then the linear backward pass (Rauch1965). `walk` are variances.
 * @throws RangeError if walk and start differ in size, or a walk variance is not positive
 */
export function sequentialModeVectorWalk(
  readings: readonly (VectorReading | null)[],
  start: VectorState,
  walk: readonly number[],
): VectorPath {
  const d = start.mean.length;
  if (walk.length !== d) throw new RangeError(`walk: expected ${d} values, got ${walk.length}`);
  for (const q of walk) if (!(q > 0)) throw new RangeError(`walk: expected > 0, got ${q}`);
  const filtered: VectorState[] = [];
  const predicted: VectorState[] = [];
  readings.forEach((reading, t) => {
    const before = t === 0 ? start : walkOn(filtered[t - 1]!, walk);
    predicted.push(before);
    filtered.push(reading === null ? before : readStep(before, reading));
  });
  const smoothed = filtered.slice();
  for (let t = smoothed.length - 2; t >= 0; t--)
    smoothed[t] = smoothStep(filtered[t]!, predicted[t + 1]!, smoothed[t + 1]!);
  return { filtered, smoothed };
}

function walkOn({ mean, cov }: VectorState, walk: readonly number[]): VectorState {
  const next = cov.slice();
  walk.forEach((q, i) => {
    next[i * (walk.length + 1)]! += q;
  });
  return { mean, cov: next };
}

/** The mode along the one direction that the observation speaks of, `P h`, and the loss of variance there. */
function readStep({ mean, cov }: VectorState, { term, h }: VectorReading): VectorState {
  const d = mean.length;
  const toward = mean.map((_, i) => h.reduce((sum, x, j) => sum + cov[i * d + j]! * x, 0));
  const prior = h.reduce((sum, x, j) => sum + x * mean[j]!, 0);
  const variance = h.reduce((sum, x, j) => sum + x * toward[j]!, 0);
  const logJoint = (shift: number) => term.logLik(prior + variance * shift) - 0.5 * variance * shift * shift;
  // eta = prior + variance * shift: the mode is where shift equals the slope.
  let shift = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    const { slope, curvature } = term.turn(prior + variance * shift);
    let move = (slope - shift) / (1 + variance * curvature);
    while (Math.abs(move) > 1e-14 && logJoint(shift + move) < logJoint(shift)) move /= 2;
    shift += move;
    if (Math.abs(move) < 1e-13) break;
  }
  const { curvature } = term.turn(prior + variance * shift);
  const loss = curvature / (1 + variance * curvature);
  return {
    mean: mean.map((value, i) => value + toward[i]! * shift),
    cov: cov.map((value, at) => value - loss * toward[Math.floor(at / d)]! * toward[at % d]!),
  };
}

/** One step of the backward pass: gain `G = P_t R^-1`, R the predicted covariance of the step after. */
function smoothStep(at: VectorState, predicted: VectorState, after: VectorState): VectorState {
  const d = at.mean.length;
  const factor = choleskyFactor(predicted.cov, d);
  if (factor === null) throw new RangeError('cov: expected positive definite');
  // Row i of G solves R g = (row i of P), both symmetric.
  const gain = Array.from({ length: d }, (_, i) =>
    choleskySolve(factor, d, at.cov.slice(i * d, (i + 1) * d)),
  );
  const away = after.mean.map((value, i) => value - predicted.mean[i]!);
  const change = after.cov.map((value, i) => value - predicted.cov[i]!);
  return {
    mean: at.mean.map((value, i) => value + gain[i]!.reduce((sum, g, j) => sum + g * away[j]!, 0)),
    cov: at.cov.map((value, place) => {
      const left = gain[Math.floor(place / d)]!;
      const right = gain[place % d]!;
      let sum = value;
      for (let i = 0; i < d; i++)
        for (let j = 0; j < d; j++) sum += left[i]! * change[i * d + j]! * right[j]!;
      return sum;
    }),
  };
}
