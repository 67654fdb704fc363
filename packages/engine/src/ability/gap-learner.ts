import { ruleForLogistic } from '../numeric/logistic-normal.ts';
import type { Grade } from './ask.ts';
import type { Moments } from './ordinal-update.ts';
import type { AbilityPriors } from './priors.ts';

/** Gaps between the two cuts that are weighed, 0.5 to 2.4 logits by 0.1. */
export const GAP_GRID = Float64Array.from({ length: 20 }, (_, k) => 0.5 + 0.1 * k);
/** Kennel centres that are weighed, 0.6 to 2.2 by 0.1. */
const CENTRES = Float64Array.from({ length: 17 }, (_, k) => 0.6 + 0.1 * k);
const EXP_GAP = GAP_GRID.map((gap) => Math.exp(gap));
const G = GAP_GRID.length;
const C = CENTRES.length;
/** Floor of a chance and of a relative likelihood: out of reach, yet never nought by nought. */
const LEAST = 1e-100;

/** One dog's gap: what its legs say, what the kennel was told of it, and the posterior weights on the grid. */
export interface GapState {
  /** Likelihood of all its legs at each gap, the best being 1. */
  readonly likelihood: Float64Array;
  /** Log-likelihood of each kennel centre, as far as the kennel was told. */
  readonly logOfCentre: Float64Array;
  /** Posterior weights on the grid; they add up to 1. */
  readonly weights: Float64Array;
}

function largest(values: Float64Array): number {
  let most = -Infinity;
  for (let k = 0; k < values.length; k++) if (values[k]! > most) most = values[k]!;
  return most;
}

function normalise(weights: Float64Array): void {
  let sum = 0;
  for (let k = 0; k < weights.length; k++) sum += weights[k]!;
  for (let k = 0; k < weights.length; k++) weights[k]! /= sum;
}

/** Predictive chance of good (or fair) at every gap of the grid for eta ~ N(mean, variance), into `out`. */
function predictOnGrid(grade: 'fair' | 'good', eta: Moments, out: Float64Array): void {
  const { nodes, weights } = ruleForLogistic(eta.variance);
  const sd = Math.sqrt(eta.variance);
  out.fill(0);
  let notMissed = 0;
  for (let k = 0; k < nodes.length; k++) {
    const e = Math.exp(-(eta.mean + sd * nodes[k]!));
    const weight = weights[k]!;
    notMissed += weight / (1 + e);
    for (let g = 0; g < G; g++) out[g]! += weight / (1 + e * EXP_GAP[g]!);
  }
  if (grade === 'fair') for (let g = 0; g < G; g++) out[g] = notMissed - out[g]!;
}

/**
 * Learns each dog's gap on a grid, and the centre the kennel's dogs spread about: dog gap ~ N(centre, sd
 * between dogs) on the grid, centre ~ N(prior). A leg counts by its predictive likelihood at every gap, given
 * the one shared state. Dog and kennel speak to each other when a session of the dog begins: the dog tells
 * its evidence, and takes the centre as the prior and the other dogs have it, so that nothing counts twice.
 */
export class GapLearner {
  readonly #logPrior: Float64Array;
  /** P(gap | centre), row by row. */
  readonly #spread: Float64Array;
  /** Summed `logOfCentre` of all dogs; part of the state. */
  readonly total: Float64Array;
  readonly #chance = new Float64Array(G);
  readonly #centre = new Float64Array(C);

  constructor(priors: AbilityPriors, total: Float64Array = new Float64Array(C)) {
    this.total = total;
    this.#logPrior = CENTRES.map((c) => -0.5 * ((c - priors.gapCentre) / priors.gapCentreSd) ** 2);
    this.#spread = new Float64Array(C * G);
    for (let c = 0; c < C; c++) {
      const row = this.#spread.subarray(c * G, (c + 1) * G);
      row.set(GAP_GRID.map((gap) => Math.exp(-0.5 * ((gap - CENTRES[c]!) / priors.gapDogSd) ** 2)));
      normalise(row);
    }
  }

  /** State of a dog that nobody has seen: the kennel's gap as it stands. */
  newcomer(): GapState {
    const gap = {
      likelihood: new Float64Array(G).fill(1),
      logOfCentre: new Float64Array(C),
      weights: new Float64Array(G),
    };
    this.#weigh(gap);
    return gap;
  }

  /** Exchange between dog and kennel, at the beginning of a session. */
  beginSession(dog: GapState): void {
    for (let c = 0; c < C; c++) {
      let sum = 0;
      for (let g = 0; g < G; g++) sum += this.#spread[c * G + g]! * dog.likelihood[g]!;
      const log = Math.log(sum);
      this.total[c]! += log - dog.logOfCentre[c]!;
      dog.logOfCentre[c] = log;
    }
    this.#weigh(dog);
  }

  #weigh(dog: GapState): void {
    const centre = this.#centre;
    for (let c = 0; c < C; c++) centre[c] = this.#logPrior[c]! + this.total[c]! - dog.logOfCentre[c]!;
    const most = largest(centre);
    for (let c = 0; c < C; c++) centre[c] = Math.exp(centre[c]! - most);
    for (let g = 0; g < G; g++) {
      let prior = 0;
      for (let c = 0; c < C; c++) prior += centre[c]! * this.#spread[c * G + g]!;
      dog.weights[g] = prior * dog.likelihood[g]!;
    }
    normalise(dog.weights);
  }

  /** Takes in a grade of a leg whose eta was N(mean, variance); a miss says nothing of the gap. */
  learn(dog: GapState, grade: Grade, eta: Moments, weight: number): void {
    if (grade === 'missed' || weight === 0) return;
    predictOnGrid(grade, eta, this.#chance);
    const { likelihood, weights } = dog;
    let most = 0;
    let sum = 0;
    for (let g = 0; g < G; g++) {
      const plain = Math.max(this.#chance[g]!, LEAST);
      const chance = weight === 1 ? plain : plain ** weight;
      likelihood[g]! *= chance;
      weights[g]! *= chance;
      if (likelihood[g]! > most) most = likelihood[g]!;
      sum += weights[g]!;
    }
    for (let g = 0; g < G; g++) {
      likelihood[g] = Math.max(likelihood[g]! / most, LEAST);
      weights[g]! /= sum;
    }
  }
}

/** Mean and variance of a dog's gap by its posterior weights, into `out`. */
export function gapMoments(dog: GapState, out: Moments): Moments {
  let mean = 0;
  for (let g = 0; g < G; g++) mean += dog.weights[g]! * GAP_GRID[g]!;
  let variance = 0;
  for (let g = 0; g < G; g++) {
    const away = GAP_GRID[g]! - mean;
    variance += dog.weights[g]! * away * away;
  }
  out.mean = mean;
  out.variance = variance;
  return out;
}
