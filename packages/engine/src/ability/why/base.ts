import type { AbilityFilter, DemandPart, LogitEstimate } from '../forecaster.ts';
import { type AskField, harderFields } from '../harder-fields.ts';
import type { LegQuestion } from '../leg.ts';

/** A leg that went well: good, or fair where the skill has no good one. */
export interface WellDone {
  readonly rep: string;
  readonly leg: number;
  readonly question: LegQuestion;
  readonly grade: 'good' | 'fair';
}

/** The base of an ask and how much harder the ask is. */
export interface BasedStep<Base extends WellDone = WellDone> {
  readonly base: Base;
  readonly harder: readonly (readonly AskField[])[];
  /** What is harder against every base that ties with it by the count of things, itself among them. */
  readonly tied: readonly (readonly (readonly AskField[])[])[];
  readonly stretch: LogitEstimate & { readonly parts: readonly DemandPart[] };
}

/** A base is looked for among so many of the last successes (contract). */
export const LAST_SUCCESSES = 10;

/**
 * The base of an ask: among the last ten successes at the skill (oldest first), the one from which the fewest things
 * are harder, then the one of least stretch, then the newest. A later stop on the same line is one thing
 * (`harderFields`). `null` with no success before.
 */
export function basedStep<Base extends WellDone>(
  filter: AbilityFilter,
  question: LegQuestion,
  successes: readonly Base[],
): BasedStep<Base> | null {
  const among = successes.slice(-LAST_SUCCESSES).map((base) => ({
    base,
    harder: harderFields(question.ask, base.question.ask, question.skill),
  }));
  const fewest = Math.min(...among.map(({ harder }) => harder.length));
  const tied = among.map(({ harder }) => harder).filter((harder) => harder.length === fewest);
  let best: BasedStep<Base> | null = null;
  // Only what ties at the fewest needs its stretch, which costs far more than counting fields.
  for (const { base, harder } of among) {
    if (harder.length > fewest) continue;
    const stretch = filter.stretch(question, base.question);
    if (best === null || stretch.mean <= best.stretch.mean) best = { base, harder, tied, stretch };
  }
  return best;
}
