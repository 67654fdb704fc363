import { choleskyFactor, choleskySolve } from './cholesky.ts';

/** Value, gradient and minus the Hessian (positive definite, in the caller's own form) of a concave function. */
export interface ConcavePoint<Curvature = Float64Array> {
  readonly value: number;
  readonly gradient: Float64Array;
  readonly curvature: Curvature;
}

export interface Maximum<Factor = Float64Array> {
  readonly x: Float64Array;
  readonly value: number;
  /** Factor of the curvature at the maximum (lower Cholesky, where the curvature is dense). */
  readonly factor: Factor;
  readonly steps: number;
}

/** How a form of curvature is factored (`null` if it is not positive definite) and solved with. */
export interface CurvatureSolver<Curvature, Factor> {
  factor(curvature: Curvature): Factor | null;
  solve(factor: Factor, gradient: Float64Array): Float64Array;
}

const MOST_STEPS = 200;
const SMALLEST_STEP = 1e-11;
const JUDGEABLE_GAIN = 1e-11;

/**
 * Maximises a concave function by Newton steps, halved while they do not raise it (Nocedal2006, 3.3). Stops
 * when the step is under 1e-11 of the point's size. `null` when it finds no maximum: a curvature that is not
 * positive definite (data that can't tell the parameters apart), or no rest within 200 steps (a maximum that
 * runs away, as separated data without a prior do).
 */
export function climbConcave<Curvature, Factor>(
  start: Float64Array,
  at: (x: Float64Array) => ConcavePoint<Curvature>,
  solver: CurvatureSolver<Curvature, Factor>,
): Maximum<Factor> | null {
  let x = start.slice();
  let point = at(x);
  for (let step = 1; step <= MOST_STEPS; step++) {
    const factor = solver.factor(point.curvature);
    if (factor === null) return null;
    const direction = solver.solve(factor, point.gradient);
    const size = direction.reduce((most, d, i) => Math.max(most, Math.abs(d) / (1 + Math.abs(x[i]!))), 0);
    if (size < SMALLEST_STEP) return { x, value: point.value, factor, steps: step };
    // Where the gain is under the rounding of the value, the value can't judge the step: take it whole.
    const gain = 0.5 * direction.reduce((sum, d, i) => sum + d * point.gradient[i]!, 0);
    const judged = gain > JUDGEABLE_GAIN * (1 + Math.abs(point.value));
    let length = 1;
    let next = x;
    let nextPoint = point;
    do {
      next = x.map((value, i) => value + length * direction[i]!);
      nextPoint = at(next);
      length /= 2;
    } while (judged && length > 1e-9 && !(nextPoint.value >= point.value));
    x = next;
    point = nextPoint;
  }
  return null;
}

/** `climbConcave` for a dense curvature, row-major. */
export function maximiseConcave(start: Float64Array, at: (x: Float64Array) => ConcavePoint): Maximum | null {
  const n = start.length;
  return climbConcave(start, at, {
    factor: (curvature) => choleskyFactor(curvature, n),
    solve: (factor, gradient) => choleskySolve(factor, n, gradient),
  });
}
