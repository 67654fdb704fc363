import type { Ask, AskField } from '../../ability/index.ts';
import type { Reason } from './next-answer.ts';
import type { ProposedLeg } from './proposal.ts';
import type { NextInput } from './session-state.ts';

/** What a leg raises against its base: the field, from what to what, and the chances of good of both, asked now. */
export function raisedReason(input: NextInput, leg: ProposedLeg, field: AskField): Reason {
  const base: Ask = leg.step?.base.question.ask ?? {};
  const then = input.filter.forecast(input.question(leg.skill, base));
  return {
    code: 'one-thing-raised',
    skill: leg.skill,
    field,
    from: base[field],
    to: leg.ask[field],
    chanceBefore: then.chance.good,
    chanceNow: leg.forecast.chance.good,
  };
}
