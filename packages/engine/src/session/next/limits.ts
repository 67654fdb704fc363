import type { NextInput } from './session-state.ts';

/** Work without a break, and a break, in reps and minutes (common practice, no source; contract, "Details"). */
const BREAK_AFTER = { reps: 10, minutes: 11 } as const;
export const BREAK_MINUTES = 3;
/** Minutes kept for finishing well. */
export const FINISH_MINUTES = 2;

/** Whether there was work enough since the last break. */
export function isBreakDue({ repsSinceBreak, minutesSinceBreak }: NextInput): boolean {
  return repsSinceBreak >= BREAK_AFTER.reps || minutesSinceBreak >= BREAK_AFTER.minutes;
}
