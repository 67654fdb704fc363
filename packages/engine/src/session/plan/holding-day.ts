import type { NextInput } from '../next/session-state.ts';

/** From so many days without work a dog comes back rusty (our judgement, 2026). */
const LAY_OFF_DAYS = 21;

/** Days since the dog last worked at anything; infinite where it never did. */
export function idleDays({ worked }: NextInput): number {
  return Math.min(...worked.map(({ daysSince }) => daysSince));
}

/** Whether a dog with a record comes back from a long rest: then nothing is raised on the first day. */
export function isAfterLayOff(known: NextInput): boolean {
  const idle = idleDays(known);
  return Number.isFinite(idle) && idle >= LAY_OFF_DAYS;
}

/** Whether nothing is to be raised today: the ground is new, and that is the one thing, or the dog comes back from a long rest. */
export function isHoldingDay(known: NextInput): boolean {
  return known.earlierSessionsOnGround === 0 || isAfterLayOff(known);
}
