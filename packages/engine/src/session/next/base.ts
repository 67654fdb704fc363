import {
  type AbilityFilter,
  type Ask,
  type AskField,
  harderFields,
  type LegQuestion,
  type LogitEstimate,
  type LogitPart,
  type Skill,
} from '../../ability/index.ts';
import type { LaidLeg } from '../picture/chain-shape.ts';

/** A leg that went well: good, or fair where the skill has no good one. */
export interface Success {
  readonly rep: string;
  readonly leg: number;
  readonly question: LegQuestion;
  readonly grade: 'good' | 'fair';
  /** The whole chain of its rep as it was asked. */
  readonly asked: readonly LaidLeg[];
}

/** The base of an ask and how much harder the ask is. */
export interface BasedStep {
  readonly base: Success;
  readonly harder: readonly (readonly AskField[])[];
  readonly stretch: LogitEstimate & { readonly parts: readonly LogitPart[] };
}

/** A base is looked for among so many of the last successes (contract). */
export const LAST_SUCCESSES = 10;

/**
 * The base of an ask: among the last ten successes at the skill, the one from which the fewest fields are harder,
 * then the one of least stretch (contract, "Details"). `null` with no success before.
 */
export function basedStep(
  filter: AbilityFilter,
  question: LegQuestion,
  successes: readonly Success[],
): BasedStep | null {
  let best: BasedStep | null = null;
  for (const base of successes.slice(-LAST_SUCCESSES)) {
    const harder = harderFields(question.ask, base.question.ask, question.skill);
    if (best && harder.length > best.harder.length) continue;
    const stretch = filter.stretch(question, base.question);
    if (best === null || harder.length < best.harder.length || stretch.mean < best.stretch.mean) {
      best = { base, harder, stretch };
    }
  }
  return best;
}

/** Exact sameness of two asks, an absent field standing at its easy end. */
export function sameAsk(a: Ask, b: Ask, skill: Skill): boolean {
  return harderFields(a, b, skill).length === 0 && harderFields(b, a, skill).length === 0;
}
