import { isWithinReach, stopWay } from './candidates.ts';
import { longestStretch, STRETCH_MOST, WAY_SPAN, waySpan } from './claims.ts';
import type { StatedRep } from './draft.ts';
import { BREAK_MINUTES } from './duration-priors.ts';
import { rightsLessLefts, type Stock, sideOfSureEnd } from './fill.ts';
import type { Slot } from './slots.ts';

/** A session that was filled, with its minutes. */
export interface Attempt {
  readonly reps: readonly StatedRep[];
  readonly repMinutes: readonly number[];
  readonly minutes: { readonly p50: number; readonly p90: number };
}

/** Slots that mend what a filling broke: too long without a break, reps beyond reach, uneven sides, an end not sure that could be, stops too near. */
export function mendedSlots(stock: Stock, attempt: Attempt): Slot[] | null {
  const { reps, repMinutes } = attempt;
  if (!isRested(attempt)) return restedSlots(reps, repMinutes);
  const beyond = reps.find(({ slot, proposal }) => slot.fixed === undefined && !isWithinReach(proposal));
  // Beyond reach is owned up to only where nothing is within it.
  if (beyond !== undefined && reps.some(({ proposal }) => isWithinReach(proposal)))
    return without(reps, beyond);
  const works = reps.filter(({ slot }) => slot.role === 'work' && slot.fixed === undefined);
  const apart = rightsLessLefts(reps);
  if (Math.abs(apart) > 1) {
    const surplus = works.findLast(({ slot }) => slot.side === (apart > 0 ? 'right' : 'left'));
    return surplus === undefined ? null : without(reps, surplus);
  }
  const unsure = sideOfSureEnd(stock, reps);
  if (unsure !== null) {
    const turned = works.findLast(({ slot }) => slot.side === unsure) ?? reps[0];
    if (turned !== undefined && turned.slot.fixed === undefined && reps.length > 1)
      return without(reps, turned);
  }
  const span = waySpan(reps);
  if (span === null || span >= WAY_SPAN) return null;
  const surplus = works.findLast(({ legs }) => stopWay(legs) !== null);
  return surplus === undefined ? null : without(reps, surplus);
}

/** No stretch without a break is too long, by each rep's own minutes and by the whole's shared out evenly. */
export function isRested({ reps, repMinutes, minutes }: Attempt): boolean {
  const breaks = reps.filter(({ slot }) => slot.takesBreak).length;
  const even = (minutes.p50 - breaks * BREAK_MINUTES) / reps.length;
  const stretch = longestStretch(reps, repMinutes);
  const shared = longestStretch(
    reps,
    repMinutes.map(() => even),
  );
  const most = Math.max(stretch.minutes, shared.minutes);
  return stretch.reps <= STRETCH_MOST.reps && most <= STRETCH_MOST.minutes;
}

/** The same slots with their breaks where they part the minutes evenly; one break more where they did so already. */
function restedSlots(reps: readonly StatedRep[], repMinutes: readonly number[]): Slot[] | null {
  const now = reps.filter(({ slot }) => slot.takesBreak).length;
  for (const breaks of [now, now + 1]) {
    const after = evenBreaks(repMinutes, breaks);
    const slots = reps.map(({ slot }, n) => ({ ...slot, takesBreak: after.has(n) }));
    if (slots.some(({ takesBreak }, n) => takesBreak !== reps[n]?.slot.takesBreak)) return slots;
  }
  return null;
}

/** Places (from 0) of the reps that a break follows, so that the stretches between are as even in minutes as they can be. */
function evenBreaks(repMinutes: readonly number[], breaks: number): Set<number> {
  const total = repMinutes.reduce((so, minutes) => so + minutes, 0);
  const after = new Set<number>();
  let sum = 0;
  for (const [n, minutes] of repMinutes.slice(0, -1).entries()) {
    sum += minutes;
    const next = repMinutes[n + 1] ?? 0;
    const wanted = (total * (after.size + 1)) / (breaks + 1);
    if (after.size < breaks && sum + next / 2 >= wanted) after.add(n);
  }
  return after;
}

/** The slots that were filled, but for one; a break that followed it goes to the rep before. */
function without(reps: readonly StatedRep[], gone: StatedRep): Slot[] {
  const left = reps.filter((rep) => rep !== gone);
  const before = reps[reps.indexOf(gone) - 1];
  return left.map((rep) =>
    rep === before && gone.slot.takesBreak ? { ...rep.slot, takesBreak: true } : rep.slot,
  );
}
