import { DEMANDS } from './demands.ts';
import { type FilterState, WIDTH } from './filter-state.ts';
import type { DemandPart, LogitEstimate } from './forecaster.ts';
import { append, projectVariance, type SparseVector, sparseVector } from './gaussian-block.ts';
import type { LegQuestion } from './leg.ts';
import { designOf, type LegReading } from './leg-reading.ts';
import type { AbilityPriors } from './priors.ts';

export interface Stretch extends LogitEstimate {
  readonly parts: readonly DemandPart[];
}

/** Filled anew for every stretch; thousands are asked for in the choice of one rep. */
const HARDER = new Float64Array(WIDTH);
const THEN = sparseVector(WIDTH);
const CHANGE = sparseVector(WIDTH);

function addTo(dense: Float64Array, vector: SparseVector, sign: number): void {
  for (let k = 0; k < vector.count; k++) dense[vector.support[k]!]! += sign * vector.values[k]!;
}

/**
 * How much harder one leg is than another of the same dog and skill, `sum_j w_j (x_j now - x_j then)`, in
 * logits, with its posterior sd; the parts are those of the demands that changed, and add up to the mean.
 * `reading` is filled anew.
 * @throws RangeError if dog or skill differ, or a field is outside its range
 */
export function stretchOf(
  state: FilterState,
  reading: LegReading,
  now: LegQuestion,
  then: LegQuestion,
  priors: AbilityPriors,
): Stretch {
  if (now.dog !== then.dog)
    throw new RangeError(`dog: expected the same in both, got ${now.dog}, ${then.dog}`);
  if (now.skill !== then.skill) {
    throw new RangeError(`skill: expected the same in both, got ${now.skill}, ${then.skill}`);
  }
  reading.fill(state, now);
  const kennel = state.kennel[reading.skillIndex]!;
  const departure = reading.departure;
  const harder = HARDER.fill(0);
  addTo(harder, designOf(then, THEN), 1);
  addTo(harder, reading.h, -1);
  const change = CHANGE;
  change.count = 0;
  const parts: DemandPart[] = [];
  let mean = 0;
  let squares = 0;
  harder.forEach((x, j) => {
    if (x === 0) return;
    append(change, j, x);
    const logit = x * (kennel.mean[j]! + departure.mean[j]!);
    parts.push({ factor: DEMANDS[j - 1]!, logit });
    mean += logit;
    squares += x * x;
  });
  const walk = reading.walkDays * priors.weightWalkPerDay * squares;
  const variance = projectVariance(kennel, change) + projectVariance(departure, change) + walk;
  return { mean, sd: Math.sqrt(Math.max(0, variance)), parts };
}
