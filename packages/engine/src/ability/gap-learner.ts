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

/** One dog's evidence: log-likelihood at each gap, and what it says of each kennel centre. */
export interface GapEvidence {
  readonly ofGap: Float64Array;
  readonly ofCentre: Float64Array;
}

export function noGapEvidence(): GapEvidence {
  return { ofGap: new Float64Array(G), ofCentre: new Float64Array(C) };
}

/**
 * Learns each dog's gap on a grid, and the centre the kennel's dogs spread about: dog gap ~ N(centre, sd
 * between dogs) on the grid, centre ~ N(prior). A leg counts by its predictive likelihood at every gap, given
 * the one shared state. A dog's own weights use the centre as the other dogs and the prior have it, so that
 * nothing counts twice.
 */
export class GapLearner {
  readonly #priorOfCentre: Float64Array;
  readonly #spread: Float64Array;
  /** Summed `ofCentre` of all dogs; part of the state. */
  readonly total: Float64Array;
  readonly #weights = new Float64Array(G);
  readonly #centreWeights = new Float64Array(C);
  readonly #ofGap = new Float64Array(G);

  constructor(priors: AbilityPriors, total: Float64Array = new Float64Array(C)) {
    this.total = total;
    this.#priorOfCentre = CENTRES.map((c) => -0.5 * ((c - priors.gapCentre) / priors.gapCentreSd) ** 2);
    this.#spread = new Float64Array(C * G);
    for (let c = 0; c < C; c++) {
      let sum = 0;
      for (let g = 0; g < G; g++) {
        const p = Math.exp(-0.5 * ((GAP_GRID[g]! - CENTRES[c]!) / priors.gapDogSd) ** 2);
        this.#spread[c * G + g] = p;
        sum += p;
      }
      for (let g = 0; g < G; g++) this.#spread[c * G + g]! /= sum;
    }
  }

  /** Posterior mean and variance of a dog's gap; `null` for a dog nobody has seen. */
  gap(dog: GapEvidence | null, out: Moments): Moments {
    const weights = this.#dogWeights(dog);
    let mean = 0;
    let square = 0;
    for (let g = 0; g < G; g++) {
      mean += weights[g]! * GAP_GRID[g]!;
      square += weights[g]! * GAP_GRID[g]! * GAP_GRID[g]!;
    }
    out.mean = mean;
    out.variance = Math.max(0, square - mean * mean);
    return out;
  }

  #dogWeights(dog: GapEvidence | null): Float64Array {
    const centre = this.#centreWeights;
    let most = -Infinity;
    for (let c = 0; c < C; c++) {
      const log = this.#priorOfCentre[c]! + this.total[c]! - (dog === null ? 0 : dog.ofCentre[c]!);
      centre[c] = log;
      if (log > most) most = log;
    }
    for (let c = 0; c < C; c++) centre[c] = Math.exp(centre[c]! - most);
    const weights = this.#weights;
    const top = dog === null ? 0 : Math.max(...dog.ofGap);
    let sum = 0;
    for (let g = 0; g < G; g++) {
      let prior = 0;
      for (let c = 0; c < C; c++) prior += centre[c]! * this.#spread[c * G + g]!;
      const weight = dog === null ? prior : prior * Math.exp(dog.ofGap[g]! - top);
      weights[g] = weight;
      sum += weight;
    }
    for (let g = 0; g < G; g++) weights[g]! /= sum;
    return weights;
  }

  /** Takes in a grade of a leg whose eta was N(mean, variance); a miss says nothing of the gap. */
  learn(dog: GapEvidence, grade: Grade, eta: Moments, weight: number): void {
    if (grade === 'missed' || weight === 0) return;
    this.#predict(grade, eta);
    let top = -Infinity;
    for (let g = 0; g < G; g++) {
      dog.ofGap[g]! += weight * Math.log(Math.max(this.#ofGap[g]!, 1e-300));
      if (dog.ofGap[g]! > top) top = dog.ofGap[g]!;
    }
    for (let g = 0; g < G; g++) this.#ofGap[g] = Math.exp(dog.ofGap[g]! - top);
    for (let c = 0; c < C; c++) {
      let sum = 0;
      for (let g = 0; g < G; g++) sum += this.#spread[c * G + g]! * this.#ofGap[g]!;
      const log = top + Math.log(Math.max(sum, 1e-300));
      this.total[c]! += log - dog.ofCentre[c]!;
      dog.ofCentre[c] = log;
    }
  }

  /** Predictive chance of good or fair at every gap, into `#ofGap`. */
  #predict(grade: Grade, eta: Moments): void {
    const { nodes, weights } = ruleForLogistic(eta.variance);
    const sd = Math.sqrt(eta.variance);
    const chance = this.#ofGap.fill(0);
    for (let k = 0; k < nodes.length; k++) {
      const e = Math.exp(-(eta.mean + sd * nodes[k]!));
      const weight = weights[k]!;
      const base = grade === 'good' ? 0 : weight / (1 + e);
      for (let g = 0; g < G; g++) {
        const good = weight / (1 + e * EXP_GAP[g]!);
        chance[g]! += grade === 'good' ? good : base - good;
      }
    }
  }
}
