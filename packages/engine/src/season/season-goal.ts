import type { Ask, LegContext, Skill } from '../ability/index.ts';
import type { GainShare } from './own-gain.ts';

/** One ask of a goal, as it would be asked today: what, the chance of good that is wanted, and the moment's context. */
export interface GoalAsk {
  readonly skill: Skill;
  readonly ask: Ask;
  /** Wanted chance of good, 0..1. */
  readonly wanted: number;
  readonly context: LegContext;
}

/** How the weeks to come are worked. */
export interface SeasonWork {
  /** Days from now of the sessions to come, ascending, as one future draws them. */
  readonly sessionDays: SessionDays;
  /** Share of the sessions in which a skill of the goal is worked, 0..1. */
  readonly share: (skill: Skill) => number;
  /** What a session is worth to this dog, against the priors' gain; one future draws one. Left out: the priors' gain. */
  readonly gains?: readonly GainShare[];
}

/** Draws the days of the sessions of `weeks` weeks, from now on (day 0). */
export type SessionDays = (random: { uniform(): number }, weeks: number) => readonly number[];

/**
 * Numbers of the forecast that no data has given: our judgement, 2026 (common practice, no source). 2,000 futures know a
 * probability to 0.011 (one standard error, less where they mirror each other); half a year is as far as a plan of work is worth anything.
 */
export const SEASON = {
  futures: 2000,
  horizonWeeks: 26,
  /** A week of the record is followed by the week after it, but for this chance of a jump to another one. */
  jumpChance: 1 / 8,
} as const;

/** @throws RangeError naming what is outside its range */
export function checkGoal(asks: readonly GoalAsk[], weeks: number, futures: number): void {
  if (asks.length === 0) throw new RangeError('asks: expected one or more, got none');
  for (const { wanted } of asks)
    if (!(wanted >= 0 && wanted <= 1)) throw new RangeError(`wanted: expected 0..1, got ${wanted}`);
  if (!Number.isSafeInteger(weeks) || weeks < 0)
    throw new RangeError(`weeks: expected a whole number >= 0, got ${weeks}`);
  if (!Number.isSafeInteger(futures) || futures < 2 || futures % 2 !== 0)
    throw new RangeError(`futures: expected an even number >= 2, got ${futures}`);
}
