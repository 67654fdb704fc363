/** Where the search is: a point, its value, and slopes and bends along each parameter by central differences. */
interface Place {
  readonly x: Float64Array;
  readonly value: number;
  readonly gradient: Float64Array;
  /** Minus the second derivatives, never under the slope: a step by them is at most 1 in any parameter. */
  readonly bend: Float64Array;
  /** The best of the points that the differences were taken at. */
  readonly neighbour: { readonly x: Float64Array; readonly value: number };
}

/** Length of the differences, and the bend under which the function counts as flat. */
interface Look {
  readonly difference: number;
  readonly flat: number;
}

type Asking<Result> = Generator<Float64Array, Result, number>;

const SUFFICIENT = 1e-4;
const SHORTEST = 2 ** -30;

/**
 * Search for a local maximum as a conversation: it yields a point, is told the value there (`next(value)`), and
 * returns when it has converged; so the caller may stop, pause or report between any two evaluations (a worker
 * that must hear messages does). Quasi-Newton: BFGS on central differences with a backtracking line search
 * (Nocedal2006, 6.1 and 3.1), its first metric the differences' own bends. Where no step along the line rises, it
 * moves to the best of the difference points, and rests when none of them is better (Kolda2003). A value that is
 * not finite counts as minus infinity; the one at the start must be finite.
 * @throws RangeError unless tolerance and difference are positive
 */
export function* searchMaximum(
  start: ArrayLike<number>,
  tolerance: number,
  difference: number,
): Asking<void> {
  if (!(tolerance > 0)) throw new RangeError(`tolerance: expected > 0, got ${tolerance}`);
  if (!(difference > 0)) throw new RangeError(`difference: expected > 0, got ${difference}`);
  const n = start.length;
  if (n === 0) return;
  // A bend under the tolerance gains less than the tolerance over a distance of 1.
  const look = { difference, flat: tolerance };
  let here = yield* lookAround(Float64Array.from(start), look);
  let metric = diagonalMetric(here.bend);
  let fresh = true;
  for (;;) {
    const direction = times(metric, here.gradient);
    const rise = dot(direction, here.gradient);
    if (rise / 2 < tolerance) {
      if (fresh) return;
      // The metric was learnt on the way: judge once more by the bends at this very place.
      metric = diagonalMetric(here.bend);
      fresh = true;
      continue;
    }
    const next = yield* stepAlong(here, direction, rise);
    if (next !== null) {
      const there = yield* lookAround(next.x, look, next.value);
      fresh = !updateMetric(metric, here, there) && fresh;
      here = there;
    } else if (!fresh) {
      metric = diagonalMetric(here.bend);
      fresh = true;
    } else if (here.neighbour.value > here.value) {
      here = yield* lookAround(here.neighbour.x, look, here.neighbour.value);
      metric = diagonalMetric(here.bend);
    } else return;
  }
}

function* ask(x: Float64Array): Asking<number> {
  const value = yield x;
  return Number.isFinite(value) ? value : -Infinity;
}

function* lookAround(x: Float64Array, { difference, flat }: Look, known?: number): Asking<Place> {
  const value = known ?? (yield* ask(x));
  const gradient = new Float64Array(x.length);
  const bend = new Float64Array(x.length);
  let neighbour = { x, value };
  for (let i = 0; i < x.length; i++) {
    const sides: number[] = [];
    for (const side of [difference, -difference]) {
      const beside = x.slice();
      beside[i]! += side;
      const got = yield* ask(beside);
      if (got > neighbour.value) neighbour = { x: beside, value: got };
      sides.push(got);
    }
    const [above, below] = sides as [number, number];
    // At the edge of where the function is finite, take the one difference that there is.
    const up = above > -Infinity ? (above - value) / difference : null;
    const down = below > -Infinity ? (value - below) / difference : null;
    gradient[i] = up !== null && down !== null ? (up + down) / 2 : (up ?? down ?? 0);
    const second = up !== null && down !== null ? (down - up) / difference : 0;
    bend[i] = Math.max(second, Math.abs(gradient[i]!), flat);
  }
  return { x, value, gradient, bend, neighbour };
}

/** The first point along the direction, halving, that gains a sufficient part of what the slope promises. */
function* stepAlong(here: Place, direction: Float64Array, rise: number) {
  for (let length = 1; length >= SHORTEST; length /= 2) {
    const x = here.x.map((value, i) => value + length * direction[i]!);
    const value: number = yield* ask(x);
    if (value > here.value && value >= here.value + SUFFICIENT * length * rise) return { x, value };
  }
  return null;
}

function diagonalMetric(bend: Float64Array): Float64Array {
  const n = bend.length;
  const metric = new Float64Array(n * n);
  for (let i = 0; i < n; i++) metric[i * (n + 1)] = 1 / bend[i]!;
  return metric;
}

/** BFGS update of the inverse curvature, in place; left as it is (false) where the way taken did not bend down. */
function updateMetric(metric: Float64Array, from: Place, to: Place): boolean {
  const step = to.x.map((value, i) => value - from.x[i]!);
  const turn = from.gradient.map((value, i) => value - to.gradient[i]!);
  const along = dot(step, turn);
  if (!(along > 1e-10 * Math.sqrt(dot(step, step) * dot(turn, turn)))) return false;
  const bent = times(metric, turn);
  const factor = (1 + dot(turn, bent) / along) / along;
  const n = step.length;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      metric[i * n + j]! +=
        factor * step[i]! * step[j]! - (bent[i]! * step[j]! + step[i]! * bent[j]!) / along;
  return true;
}

function dot(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}

function times(matrix: Float64Array, x: Float64Array): Float64Array {
  return x.map((_, i) => dot(matrix.subarray(i * x.length, (i + 1) * x.length), x));
}
