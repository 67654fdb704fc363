import { isServingGoal, KNOWN_CHANCE } from '../next/choose.ts';
import { chainKey } from '../next/proposal.ts';
import type { NextInput } from '../next/session-state.ts';
import { stopWay } from './candidates.ts';
import type { StatedRep } from './draft.ts';
import { farFromWanted } from './line-pool.ts';

/**
 * What a rep is worth in its place, in logits of distance from the wanted chance; (J): our judgement, 2026. Going on from
 * what went well and goals weigh as in the choice of the next rep; the rest is a plan's own: not the same again, the stop where it
 * was drawn, and little walking.
 */
const WORTH = {
  raising: 0.25,
  goal: 0.4,
  again: 0.35,
  perWayOff: 5,
  perLayingMinute: 0.3,
  sure: 0.9,
  runOfBuilds: 0.6,
} as const;
/** After so many builds running, something is held. */
const BUILDS_RUNNING = 2;

export const isBuild = ({ proposal, slot }: Pick<StatedRep, 'proposal' | 'slot'>): boolean =>
  slot.role === 'work' && proposal.raised.length > 0 && proposal.stretch > 0;

/** The worth of a rep after the earlier ones of its plan; `hurry` times as much against walking. */
export function worthOf(
  input: NextInput,
  rep: StatedRep,
  earlier: readonly StatedRep[],
  hurry: number,
): number {
  const { proposal, slot, laid } = rep;
  const walking = hurry * WORTH.perLayingMinute * (laid.laysS / 60);
  const here = chainKey(rep.legs);
  const again = WORTH.again * earlier.filter((one) => chainKey(one.legs) === here).length;
  if (slot.role !== 'work') {
    const wanted = proposal.least >= KNOWN_CHANCE ? WORTH.sure : 1 - 1e-6;
    return -farFromWanted({ notMissed: proposal.least }, wanted) - walking - again / 2;
  }
  const wayOff = slot.way === null ? 0 : Math.abs((stopWay(proposal.legs) ?? slot.way) - slot.way);
  const raises = isBuild(rep);
  const running = earlier.slice(-BUILDS_RUNNING);
  const isTooMuch = raises && running.length === BUILDS_RUNNING && running.every(isBuild);
  return (
    -farFromWanted(proposal) +
    (raises ? WORTH.raising : 0) +
    (raises && isServingGoal(input, proposal) ? WORTH.goal : 0) -
    (isTooMuch ? WORTH.runOfBuilds : 0) -
    WORTH.perWayOff * wayOff -
    again -
    walking
  );
}
