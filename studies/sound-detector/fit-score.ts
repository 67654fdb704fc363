import type { ScoreNumbers } from '../../packages/engine/src/sound/learned-score.ts';
import type { Dice } from '../careers/dice.ts';
import type { Labelled } from './label-candidates.ts';

/** Times that every row is gone through, and rows of one step. */
const ROUNDS = 25;
const BATCH = 128;
const RATE = 0.004;
/** Keeps the weights small: what each loses in a step, as a share of the rate. */
const SHRINK = 0.1;
/** Added to each spread, so that a figure that hardly varied does not count for much. */
const LEAST_SPREAD = 0.05;

/** Each figure less its mean over its spread, held at five spreads. */
function centred(rows: readonly Labelled[]) {
  const inputs = rows[0]!.figures.length;
  const mean = new Float64Array(inputs);
  const sd = new Float64Array(inputs);
  for (const { figures } of rows)
    figures.forEach((v, i) => {
      mean[i] = mean[i]! + v / rows.length;
    });
  for (const { figures } of rows)
    figures.forEach((v, i) => {
      sd[i] = sd[i]! + (v - mean[i]!) ** 2 / rows.length;
    });
  for (let i = 0; i < inputs; i++) sd[i] = Math.sqrt(sd[i]!) + LEAST_SPREAD;
  const table = rows.map(({ figures }) =>
    figures.map((v, i) => Math.max(-5, Math.min(5, (v - mean[i]!) / sd[i]!))),
  );
  return { mean, sd, table };
}

/** The rows in an order of chance (Fisher and Yates). */
function shuffled(count: number, dice: Dice): Uint32Array {
  const order = Uint32Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const k = dice.below(i + 1);
    [order[i], order[k]] = [order[k]!, order[i]!];
  }
  return order;
}

/**
 * Fits the numbers of a score (its form is told in the engine's `learned-score.ts`) to labelled candidates: cross entropy, some rows at
 * a time, by Adam [Kingma2015] with a rate that falls to nought and weights that shrink apart from it.
 */
function fitted(
  rows: readonly Labelled[],
  table: readonly Float64Array[],
  hidden: number,
  dice: Dice,
): Float64Array {
  const inputs = table[0]!.length;
  const width = inputs + 1;
  const countsAt = hidden * width;
  const plainAt = countsAt + hidden;
  const size = plainAt + width;
  const weights = new Float64Array(size);
  for (let j = 0; j < plainAt; j++) weights[j] = dice.between(-0.2, 0.2);
  const slope = new Float64Array(size);
  const first = new Float64Array(size);
  const second = new Float64Array(size);
  const bent = new Float64Array(hidden);

  function addSlope(x: Float64Array, isReal: boolean): void {
    let z = weights[size - 1]!;
    for (let i = 0; i < inputs; i++) z += weights[plainAt + i]! * x[i]!;
    for (let k = 0; k < hidden; k++) {
      let sum = weights[k * width + inputs]!;
      for (let i = 0; i < inputs; i++) sum += weights[k * width + i]! * x[i]!;
      bent[k] = Math.tanh(sum);
      z += weights[countsAt + k]! * bent[k]!;
    }
    const d = 1 / (1 + Math.exp(-z)) - (isReal ? 1 : 0);
    slope[size - 1]! += d;
    for (let i = 0; i < inputs; i++) slope[plainAt + i]! += d * x[i]!;
    for (let k = 0; k < hidden; k++) {
      slope[countsAt + k]! += d * bent[k]!;
      const back = d * weights[countsAt + k]! * (1 - bent[k]! ** 2);
      slope[k * width + inputs]! += back;
      for (let i = 0; i < inputs; i++) slope[k * width + i]! += back * x[i]!;
    }
  }

  const steps = ROUNDS * Math.ceil(rows.length / BATCH);
  for (let round = 0, step = 1; round < ROUNDS; round++) {
    const order = shuffled(rows.length, dice);
    for (let from = 0; from < order.length; from += BATCH, step++) {
      const to = Math.min(order.length, from + BATCH);
      slope.fill(0);
      for (let r = from; r < to; r++) addSlope(table[order[r]!]!, rows[order[r]!]!.isReal);
      const rate = RATE * (1 - step / (steps + 1));
      const [firstLeft, secondLeft] = [1 - 0.9 ** step, 1 - 0.999 ** step];
      for (let j = 0; j < size; j++) {
        const g = slope[j]! / (to - from);
        first[j] = 0.9 * first[j]! + 0.1 * g;
        second[j] = 0.999 * second[j]! + 0.001 * g * g;
        const move = first[j]! / firstLeft / (Math.sqrt(second[j]! / secondLeft) + 1e-8);
        weights[j] = weights[j]! - rate * (move + SHRINK * weights[j]!);
      }
    }
  }
  return weights;
}

/** A fit of these rows, written as the numbers of a score. */
export function fitScore(rows: readonly Labelled[], hidden: number, dice: Dice): ScoreNumbers {
  const { mean, sd, table } = centred(rows);
  const short = (values: ArrayLike<number>) => Array.from(values, (value) => Number(value.toPrecision(5)));
  return { hidden, mean: short(mean), sd: short(sd), weights: short(fitted(rows, table, hidden, dice)) };
}
