import { isAbilitySnapshot } from '@sedgeline/engine/ability';
import { copyDogWalk, type DogWalk } from './dog-walk.ts';
import { fromJsonForm, toJsonForm } from './json-form.ts';

/**
 * The walk's state before some rep: what the filter knew and what each dog had worked. Kept beside the journal so that the program opens without walking the past again, and let fall when it
 * no longer fits the record.
 */
export interface TimelineState {
  readonly form: 'timeline-1';
  /** Reps walked, and their fingerprint. */
  readonly reps: number;
  readonly fingerprint: string;
  readonly filter: unknown;
  readonly walks: ReadonlyMap<string, DogWalk>;
}

/** A state as a note can hold it (JSON). */
export function writeTimelineState(state: TimelineState): unknown {
  return toJsonForm(state);
}

/** A note's value as a state; `null` when it is none of this version. */
export function readTimelineState(note: unknown): TimelineState | null {
  const value = fromJsonForm(note);
  if (typeof value !== 'object' || value === null) return null;
  const state = value as Partial<TimelineState>;
  const isWhole =
    state.form === 'timeline-1' &&
    typeof state.reps === 'number' &&
    typeof state.fingerprint === 'string' &&
    state.walks instanceof Map &&
    isAbilitySnapshot(state.filter);
  return isWhole ? (state as TimelineState) : null;
}

export function copyWalks(walks: ReadonlyMap<string, DogWalk>): Map<string, DogWalk> {
  return new Map([...walks].map(([dog, walk]) => [dog, copyDogWalk(walk)] as const));
}
