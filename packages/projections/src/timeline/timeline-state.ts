import { isAbilitySnapshot, shippedPriors } from '@sedgeline/engine/ability';
import { fromJsonForm, toJsonForm } from './json-form.ts';
import { ownPriors } from './own-figures.ts';
import type { WalkState } from './record-walk.ts';

/**
 * A walk's state before some rep, and which reps led to it. Kept beside the journal so that the program opens without walking the
 * past again, and let fall when it no longer fits the record.
 */
export interface TimelineState extends WalkState {
  readonly form: typeof FORM;
  /** The priors the program came with when it was made. */
  readonly shipped: string;
  /** Reps walked, and their fingerprint. */
  readonly reps: number;
  readonly fingerprint: string;
  /** Of what was told till then. */
  readonly toldFingerprint: string;
}

const FORM = 'timeline-3';

export function timelineState(
  walk: WalkState,
  led: Pick<TimelineState, 'reps' | 'fingerprint' | 'toldFingerprint'>,
): TimelineState {
  return { form: FORM, shipped: JSON.stringify(shippedPriors), ...led, ...walk };
}

/** A state as a note can hold it (JSON). */
export function writeTimelineState(state: TimelineState): unknown {
  return toJsonForm(state);
}

/** A note's value as a state; `null` when it is none of this version of the program. */
export function readTimelineState(note: unknown): TimelineState | null {
  const value = fromJsonForm(note);
  if (typeof value !== 'object' || value === null) return null;
  const state = value as Partial<TimelineState>;
  const isWhole =
    state.form === FORM &&
    state.shipped === JSON.stringify(shippedPriors) &&
    typeof state.reps === 'number' &&
    typeof state.fingerprint === 'string' &&
    typeof state.told === 'number' &&
    typeof state.toldFingerprint === 'string' &&
    state.walks instanceof Map &&
    Array.isArray(state.own?.fits) &&
    isAbilitySnapshot(state.filter, ownPriors(state.own));
  return isWhole ? (state as TimelineState) : null;
}
