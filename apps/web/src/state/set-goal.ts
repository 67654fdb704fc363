import type { GoalRecord } from '@sedgeline/projections';
import { append, newId } from './kennel.ts';

/** A goal as it was made; `by` is a date or empty. */
interface GoalToSet {
  /** `null` for a new one. */
  readonly goal: string | null;
  readonly name: string;
  readonly by: string;
  readonly asks: GoalRecord['asks'];
}

/** Sets a goal, new or again; resolves when it is on disk (or kept in memory). What it was before stays in the record. */
export async function setGoal(dog: string, { goal, name, by, asks }: GoalToSet): Promise<void> {
  await append([
    { kind: 'goal-set', body: { goal: goal ?? newId(), dog, name, asks, ...(by === '' ? {} : { by }) } },
  ]);
}
