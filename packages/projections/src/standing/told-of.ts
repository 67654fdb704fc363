import type { AbilityFilter, Skill } from '@sedgeline/engine/ability';
import type { TrainingRecord } from '../record/training-record.ts';
import type { ToldView } from '../views/views.ts';

/** What was told of a dog at a skill last, and what is left of it; `null` where nothing was, or it was taken back. */
export function toldOf(
  record: TrainingRecord,
  filter: AbilityFilter,
  dog: string,
  skill: Skill,
): ToldView | null {
  const last = record.told.findLast((one) => one.dog === dog && one.skill === skill);
  const left = filter.toldLeft(dog, skill);
  if (last === undefined || last.isWithdrawn || left === null) return null;
  const { farthestM, ground, atMs } = last;
  return { farthestM, ground, atMs, left };
}
