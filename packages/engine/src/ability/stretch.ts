import { DEMANDS } from './demands.ts';
import { type FilterState, WIDTH } from './filter-state.ts';
import type { LogitEstimate } from './forecaster.ts';
import { projectVariance, sparseVector } from './gaussian-block.ts';
import type { LegQuestion, LogitPart } from './leg.ts';
import { designOf, LegReading } from './leg-reading.ts';
import type { AbilityPriors } from './priors.ts';

export interface Stretch extends LogitEstimate {
  readonly parts: readonly LogitPart[];
}

/**
 * How much harder one leg is than another of the same dog and skill, `sum_j w_j (x_j now - x_j then)`, in
 * logits, with its posterior sd; the parts are those of the demands that changed, and add up to the mean.
 * @throws RangeError if dog or skill differ, or a field is outside its range
 */
export function stretchOf(
  state: FilterState,
  now: LegQuestion,
  then: LegQuestion,
  priors: AbilityPriors,
): Stretch {
  if (now.dog !== then.dog)
    throw new RangeError(`dog: expected the same in both, got ${now.dog}, ${then.dog}`);
  if (now.skill !== then.skill) {
    throw new RangeError(`skill: expected the same in both, got ${now.skill}, ${then.skill}`);
  }
  const before = designOf(then, sparseVector(WIDTH));
  const reading = new LegReading(priors).fill(state, now);
  const kennel = state.kennel[reading.skillIndex]!;
  const departure = reading.departure;
  const change = sparseVector(WIDTH);
  const parts: LogitPart[] = [];
  let mean = 0;
  let squares = 0;
  for (let j = 1; j < WIDTH; j++) {
    const harder = before.values[j]! - reading.h.values[j]!;
    if (harder === 0) continue;
    change.values[j] = harder;
    change.support[change.count++] = j;
    squares += harder * harder;
    const logit = harder * (kennel.mean[j]! + departure.mean[j]!);
    parts.push({ factor: DEMANDS[j - 1]!, logit });
    mean += logit;
  }
  const walk = reading.walkDays * priors.weightWalkPerDay * squares;
  const variance = projectVariance(kennel, change) + projectVariance(departure, change) + walk;
  return { mean, sd: Math.sqrt(Math.max(0, variance)), parts };
}
