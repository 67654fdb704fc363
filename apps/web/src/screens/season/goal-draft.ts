import type { Ask, Skill } from '@sedgeline/engine/ability';
import type { GoalRecord } from '@sedgeline/projections';

/** A goal as it is being made: `by` is text as the date field has it, empty for none. */
export interface GoalDraft {
  /** `null` for a goal that is new. */
  readonly goal: string | null;
  readonly name: string;
  readonly by: string;
  readonly asks: readonly { readonly skill: Skill; readonly ask: Ask; readonly chance: number }[];
}

export type GoalFault = 'no-ask' | 'bad-date';

export const NEW_GOAL: GoalDraft = { goal: null, name: '', by: '', asks: [] };

/** Four times in five is what most handlers mean by "trusted with" (our judgement, 2026). */
const FIRST_WANTED = 0.8;
const DAY_MS = 86_400_000;

export const draftOf = ({ goal, name, by, asks }: GoalRecord): GoalDraft => ({
  goal,
  name,
  by: by ?? '',
  asks,
});

/** The asks with one more; one of the same skill is asked harder or easier, and stays as sure as it was wanted. */
export function withAsk(
  asks: GoalDraft['asks'],
  { skill, ask }: { readonly skill: Skill; readonly ask: Ask },
): GoalDraft['asks'] {
  if (asks.some((one) => one.skill === skill))
    return asks.map((one) => (one.skill === skill ? { ...one, ask } : one));
  return [...asks, { skill, ask, chance: asks.at(-1)?.chance ?? FIRST_WANTED }];
}

/** What is wrong with a goal before it is set, the first thing first. */
export function goalFault({ asks, by }: GoalDraft, nowMs: number): GoalFault | null {
  if (asks.length === 0) return 'no-ask';
  if (by === '') return null;
  const atMs = Date.parse(`${by}T00:00:00Z`);
  return /^\d{4}-\d\d-\d\d$/.test(by) && atMs > nowMs - DAY_MS ? null : 'bad-date';
}
