import type { Ask, AskField } from '../../ability/index.ts';
import type { Reason } from './next-answer.ts';
import { type Proposal, type ProposedLeg, raisedGroups } from './proposal.ts';
import type { NextInput } from './session-state.ts';

/** The leg that is harder than its base, and the field it is harder in; `null` where the rep only holds. */
export function raisedLeg(rep: Proposal): { readonly leg: ProposedLeg; readonly field: AskField } | null {
  for (const leg of [rep.legs[rep.focus], ...rep.legs]) {
    const [group] = leg === undefined ? [] : raisedGroups(leg);
    const field = group?.includes('distanceM') ? 'distanceM' : group?.[0];
    if (leg?.step && field !== undefined && leg.step.stretch.mean > 0) return { leg, field };
  }
  return null;
}

/** What a leg raises against its base: the field, from what to what, and the chances of good of both, asked now. */
export function raisedReason(input: NextInput, leg: ProposedLeg, field: AskField): Reason {
  const base: Ask = leg.step?.base.question.ask ?? {};
  const then = input.filter.forecast(input.question(leg.skill, base));
  const chanceNow = leg.forecast.chance.good;
  // The base may be harder in other things: then its chance says nothing of this step.
  const isHarder = then.chance.good > chanceNow;
  return {
    code: 'one-thing-raised',
    skill: leg.skill,
    field,
    from: base[field],
    to: leg.ask[field],
    ...(isHarder ? { chanceBefore: then.chance.good } : {}),
    chanceNow,
  };
}
