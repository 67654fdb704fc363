import { type Proposal, proposed } from '../next/proposal.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { isHeld, isKnown, isOneThing, isSure, isWithinReach, sendKind, sideOfLegs } from './candidates.ts';
import { type LaidRep, layAfter } from './laying.ts';
import { isPlanned, type PlanMoment, type PlanRecord } from './plan-moment.ts';
import type { Slot } from './slots.ts';

/** A rep of a plan in the making: its slot, and the chain that fills it. */
export interface DraftRep {
  readonly slot: Slot;
  readonly legs: readonly LaidLeg[];
  readonly focus: number;
  readonly moved: Proposal['moved'];
  /** Nothing better could be had: out of reach, not sure or not known, and owned up to. */
  readonly isLoose?: boolean;
}

/** The same rep stated in its place: its chances there, and what it takes to lay it out after the rep before. */
export interface StatedRep extends DraftRep {
  readonly moment: PlanMoment;
  readonly proposal: Proposal;
  readonly laid: LaidRep;
}

/** What comes after a rep: the moment and what lies out. */
export interface Standing {
  readonly moment: PlanMoment;
  readonly lying: LaidRep['leaves'];
}

/** States a rep where a plan stands. */
export function stateRep(record: PlanRecord, at: Standing, rep: DraftRep): StatedRep {
  const proposal = proposed(record.inputAt(at.moment), rep.legs, rep.focus, rep.moved);
  let laid: LaidRep | null = null;
  return {
    ...rep,
    moment: at.moment,
    proposal,
    get laid() {
      laid ??= layAfter(at.lying, rep.legs);
      return laid;
    },
  };
}

/** Where a plan stands after a rep. */
export function standingAfter(record: PlanRecord, { moment, legs, laid, slot }: StatedRep): Standing {
  return { moment: record.after(moment, legs, slot.takesBreak), lying: laid.leaves };
}

/** Whether a rep may stand in its slot, stated there. A loose one need not be sure, known or within reach. */
export function mayStand({ slot, proposal, moment, isLoose = false }: StatedRep): boolean {
  if (slot.fixed !== undefined) return true;
  if (!isOneThing(proposal)) return false;
  if (slot.role === 'check') return isLoose ? isHeld(proposal) : isKnown(proposal);
  if (slot.role === 'finish') return isHeld(proposal) && (isLoose || isSure(proposal));
  if ((slot.holds || isOnPlanAlone(proposal, moment)) && !isHeld(proposal)) return false;
  if (!isLoose && !isWithinReach(proposal)) return false;
  if (slot.send === 'clean') return sendKind(proposal.legs) === 'clean' && sideOfLegs(proposal.legs) === null;
  return sendKind(proposal.legs) === slot.send && sideOfLegs(proposal.legs) === slot.side;
}

/** Whether a leg's only successes are the plan's own reps to come: nothing is raised on what has yet to go well once. */
function isOnPlanAlone({ legs }: Proposal, { successes }: PlanMoment): boolean {
  return legs.some(({ skill }) => {
    const done = successes.get(skill) ?? [];
    return done.length > 0 && done.every(isPlanned);
  });
}

/** States every rep in its place; `null` where one may not stand there. */
export function stateAll(record: PlanRecord, reps: readonly DraftRep[]): StatedRep[] | null {
  let at: Standing = { moment: record.start, lying: [] };
  const stated: StatedRep[] = [];
  for (const rep of reps) {
    const here = stateRep(record, at, rep);
    if (!mayStand(here)) return null;
    stated.push(here);
    at = standingAfter(record, here);
  }
  return stated;
}
