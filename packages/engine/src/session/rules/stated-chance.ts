import type { GradeChances } from '../../ability/index.ts';
import type { PlannedRep } from '../next/next-answer.ts';
import { ROUNDING } from './rule-limits.ts';

/** Chances are figures of a document that may be rounded to three decimals, each by at most 0.0005. */
const SUM_SLACK = 0.002;

/** True for three chances between 0 and 1 that add up to 1. */
export function isStated(chance: GradeChances): boolean {
  const parts = [chance.missed, chance.fair, chance.good];
  const total = parts.reduce((so, part) => so + part, 0);
  return parts.every((part) => part >= 0 && part <= 1) && Math.abs(total - 1) <= SUM_SLACK;
}

/** True when every leg of a rep has its chances stated; a rep without legs has none. */
export function isRepStated(rep: PlannedRep): boolean {
  return rep.legs.length > 0 && rep.legs.every((leg) => isStated(leg.chance));
}

/** The least chance of not missed among some legs' chances; 0 with none, or where one is no chance. */
export function leastNotMissed(chances: readonly GradeChances[]): number {
  if (chances.length === 0 || !chances.every(isStated)) return 0;
  return Math.min(...chances.map((chance) => 1 - chance.missed));
}

/** The least chance of not missed of a rep's legs, as the plan states it. */
export const leastOfRep = (rep: PlannedRep): number => leastNotMissed(rep.legs.map((leg) => leg.chance));

/** `chance` is `limit` or more, but for rounding. */
export const reaches = (chance: number, limit: number): boolean => chance >= limit - ROUNDING;
