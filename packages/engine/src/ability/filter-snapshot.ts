import { SKILLS } from './ask.ts';
import { copyFilterState, type FilterState, WIDTH } from './filter-state.ts';
import { type AbilityPriors, shippedPriors } from './priors.ts';

/** A stored state: which form it has, the priors it was made with, and the state; fit for structured cloning. */
export interface AbilitySnapshot {
  readonly form: 'ability-2';
  readonly priors: string;
  readonly state: FilterState;
}

export function sealSnapshot(state: FilterState, priors: AbilityPriors): AbilitySnapshot {
  return { form: 'ability-2', priors: JSON.stringify(priors), state: copyFilterState(state) };
}

/** Whether a stored value is a snapshot of this version's filter, made with these priors. */
export function isAbilitySnapshot(
  value: unknown,
  priors: AbilityPriors = shippedPriors,
): value is AbilitySnapshot {
  if (typeof value !== 'object' || value === null) return false;
  const { form, priors: made, state } = value as Partial<AbilitySnapshot>;
  if (form !== 'ability-2' || made !== JSON.stringify(priors)) return false;
  return state?.kennel.length === SKILLS.length && state.kennel.every((block) => block.mean.length === WIDTH);
}

/**
 * A copy of the state in a snapshot.
 * @throws TypeError if it is none of this version with these priors
 */
export function openSnapshot(value: unknown, priors: AbilityPriors): FilterState {
  if (!isAbilitySnapshot(value, priors)) {
    throw new TypeError('snapshot: expected one made by this version with the same priors');
  }
  return copyFilterState(value.state);
}
