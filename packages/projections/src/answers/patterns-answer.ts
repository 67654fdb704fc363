import type { PatternFinding } from '@sedgeline/engine/ability';
import { patternsOfDog, type StatedWalk } from '../patterns/patterns-of-dog.ts';
import type { TrainingRecord } from '../record/training-record.ts';

/** The answer of `patterns`: the contract's fields, and beside them how it stands. `null` for a dog that no fact names. */
export function patternsAnswer(
  record: TrainingRecord,
  walk: StatedWalk,
  dog: string,
  say: (found: PatternFinding) => string,
) {
  const view = patternsOfDog(record, walk, dog);
  if (view === null) return null;
  return {
    dog,
    legs: view.legs,
    patterns: view.patterns.map((found) => ({ ...found, sentence: say(found) })),
    clean: view.clean,
  };
}
