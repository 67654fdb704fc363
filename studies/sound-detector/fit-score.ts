import type { ScoreNumbers } from '../../packages/engine/src/sound/learned-score.ts';
import type { Dice } from '../careers/dice.ts';
import type { Labelled } from './gather-candidates.ts';

const ROUNDS = 600;
const RATE = 0.03;
/** What is none counts half as much again: a false alarm costs the handler more than a miss. */
const NONE_WEIGHT = 1.5;
/** Keeps the weights small. */
const SHRINK = 0.016;
/** Added to each spread, so that a figure that hardly varied does not count for much. */
const LEAST_SPREAD = 0.05;

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
  return { inputs, mean, sd, table };
}

/**
 * Fits the numbers of a score (its form is told in the engine's `learned-score.ts`) to labelled candidates: weighted cross entropy, all rows at
 * once, by Adam [Kingma2015] with a rate that falls to nought.
 */
export function fitScore(rows: readonly Labelled[], hidden: number, dice: Dice): ScoreNumbers {
  const { inputs, mean, sd, table } = centred(rows);
  const width = inputs + 1;
  const countsAt = hidden * width;
  const plainAt = countsAt + hidden;
  const size = plainAt + width;
  const weights = new Float64Array(size);
  for (let j = 0; j < countsAt; j++) weights[j] = dice.between(-0.2, 0.2);
  for (let k = 0; k < hidden; k++) weights[countsAt + k] = dice.between(-0.2, 0.2);
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
    const error = 1 / (1 + Math.exp(-z)) - (isReal ? 1 : 0);
    const d = (error * (isReal ? 1 : NONE_WEIGHT)) / rows.length;
    slope[size - 1] = slope[size - 1]! + d;
    for (let i = 0; i < inputs; i++) slope[plainAt + i] = slope[plainAt + i]! + d * x[i]!;
    for (let k = 0; k < hidden; k++) {
      slope[countsAt + k] = slope[countsAt + k]! + d * bent[k]!;
      const back = d * weights[countsAt + k]! * (1 - bent[k]! ** 2);
      slope[k * width + inputs] = slope[k * width + inputs]! + back;
      for (let i = 0; i < inputs; i++) slope[k * width + i] = slope[k * width + i]! + back * x[i]!;
    }
  }

  for (let round = 1; round <= ROUNDS; round++) {
    slope.fill(0);
    rows.forEach(({ isReal }, r) => {
      addSlope(table[r]!, isReal);
    });
    const rate = RATE * Math.min(1, 2 * (1 - round / ROUNDS) + 0.02);
    for (let j = 0; j < size; j++) {
      const g = slope[j]! + (SHRINK * weights[j]!) / size;
      first[j] = 0.9 * first[j]! + 0.1 * g;
      second[j] = 0.999 * second[j]! + 0.001 * g * g;
      const [m, v] = [first[j]! / (1 - 0.9 ** round), second[j]! / (1 - 0.999 ** round)];
      weights[j] = weights[j]! - (rate * m) / (Math.sqrt(v) + 1e-8);
    }
  }
  const short = (values: Float64Array) => Array.from(values, (value) => Number(value.toPrecision(5)));
  return { hidden, mean: short(mean), sd: short(sd), weights: short(weights) };
}
