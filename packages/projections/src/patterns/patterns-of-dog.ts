import {
  type CleanSend,
  expectationAt,
  expectationPosterior,
  findPatterns,
  type PatternLeg,
} from '@sedgeline/engine/ability';
import { wantedCleanShare } from '@sedgeline/engine/session';
import type { TrainingRecord } from '../record/training-record.ts';
import type { StatedLeg } from '../timeline/record-walk.ts';
import type { PatternsView } from '../views/patterns-view.ts';

/** What patterns are found in: the walk through the record. */
export interface StatedWalk {
  readonly stated: readonly StatedLeg[];
  walk(dog: string): { readonly cleanSends: readonly CleanSend[] };
}

/** One dog's legs as patterns are found in them, out of everybody's. */
export function patternLegs(stated: readonly StatedLeg[], dog: string): PatternLeg[] {
  return stated
    .filter(({ result }) => result.dog === dog)
    .map(({ result, cause, wasBlownLate }) => ({ ...result, cause, wasBlownLate }));
}

/** All seven patterns in a dog's record, and its share of clean sends. `null` for a dog that no fact names. */
export function patternsOfDog(record: TrainingRecord, walk: StatedWalk, dog: string): PatternsView | null {
  if (!record.dogs.has(dog)) return null;
  const legs = patternLegs(walk.stated, dog);
  const sends = walk.walk(dog).cleanSends;
  const share = wantedCleanShare(sends);
  return {
    dog,
    legs: legs.length,
    patterns: findPatterns({ legs, sends }),
    clean: { share, expectation: expectationAt(expectationPosterior(sends), share) },
  };
}
