import { castSide, type LaidLeg } from '../picture/laid-leg.ts';
import { layOut } from '../picture/lay-out.ts';
import { isCleanSend } from './chains.ts';
import type { Errand, PlannedLeg, PlannedRep, Purpose, Reason, Side } from './next-answer.ts';
import type { Proposal, ProposedLeg } from './proposal.ts';
import type { NextInput } from './session-state.ts';

function plannedLeg(leg: ProposedLeg): PlannedLeg {
  return {
    skill: leg.skill,
    ask: leg.ask,
    chance: leg.forecast.chance,
    interval90: leg.forecast.interval90,
    stretch: leg.step?.stretch.mean ?? null,
  };
}

function sideOf(legs: readonly LaidLeg[]): Side {
  for (const leg of legs) {
    const side = castSide(leg.skill);
    if (side === 'left' || side === 'right') return side;
  }
  return 'none';
}

/** What is to be put out for the rep: every dummy and post of its layout that the rep before did not leave there. */
function errands(input: NextInput, legs: readonly LaidLeg[]): Errand[] {
  const before = input.reps.at(-1);
  const lying = before
    ? new Set(layOut(before.asked).things.map((thing) => JSON.stringify(thing)))
    : new Set<string>();
  return layOut(legs)
    .things.filter((thing) => thing.kind !== 'other')
    .filter((thing) => !lying.has(JSON.stringify(thing)) || thing.thing === 'asked')
    .map((thing) => ({
      do: thing.how === 'thrown' ? ('throw' as const) : ('place' as const),
      thing: thing.thing,
      metres: Math.round(Math.hypot(thing.eastM, thing.northM) * 10) / 10,
    }));
}

/** A proposal as a rep to be asked, with its layout, what to put out, its fall-back and its reasons. */
export function plannedRep(
  input: NextInput,
  proposal: Proposal,
  fallBack: Proposal,
  purpose: Purpose,
  reasons: readonly Reason[],
): PlannedRep {
  return {
    n: input.reps.length + 1,
    purpose,
    clean: isCleanSend(proposal.legs),
    side: sideOf(proposal.legs),
    legs: proposal.legs.map(plannedLeg),
    layout: layOut(proposal.legs),
    before: errands(input, proposal.legs),
    easier: { legs: fallBack.legs.map(plannedLeg) },
    reasons,
  };
}
