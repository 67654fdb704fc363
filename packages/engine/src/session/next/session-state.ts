import type { AbilityFilter, Ask, Cause, Grade, LegQuestion, Skill } from '../../ability/index.ts';
import type { Random } from '../../numeric/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import type { AtHand } from './at-hand.ts';
import type { Purpose } from './next-answer.ts';
import type { Success } from './success.ts';

/** A leg of this session as it was graded. */
export interface WorkedLeg extends LaidLeg {
  readonly grade: Grade;
  readonly cause: Cause | null;
}

/** A rep of this session that stands. */
export interface WorkedRep {
  readonly legs: readonly WorkedLeg[];
  /** The whole chain as it was asked, where known; legs that were not reached included. */
  readonly asked: readonly LaidLeg[];
  readonly purpose: Purpose | null;
  /** The skill the rep was about; `null` for a rep without legs. */
  readonly about: Skill | null;
  /** The number in the session's plan that it stands for; `null` for a rep beside it. */
  readonly planRep: number | null;
}

/** A rep of the plan that a session follows. */
export interface PlanStep {
  readonly n: number;
  readonly purpose: Purpose;
  readonly legs: readonly LaidLeg[];
  /** Minutes of the break after it; 0 for none. */
  readonly breakMinutes: number;
}

/** The plan that a session follows. */
export interface PlanInHand {
  readonly minutes: number;
  readonly steps: readonly PlanStep[];
}

/** All that the choice of the next rep depends on: the record up to now, the dog, the day, and chance as an argument. */
export interface NextInput {
  readonly filter: AbilityFilter;
  /** The question a leg would be, asked now. */
  readonly question: (skill: Skill, ask: Ask) => LegQuestion;
  /** Successes at each skill, oldest first. */
  readonly successes: ReadonlyMap<Skill, readonly Success[]>;
  /** Skills worked before, with legs and days since. */
  readonly worked: readonly { readonly skill: Skill; readonly legs: number; readonly daysSince: number }[];
  readonly goals: readonly { readonly skill: Skill; readonly ask: Ask; readonly chance: number }[];
  readonly ageMonths: number | null;
  readonly earlierSessionsOnGround: number | null;
  readonly reps: readonly WorkedRep[];
  readonly focus: Skill | null;
  readonly minutes: number;
  readonly minutesSinceBreak: number;
  readonly repsSinceBreak: number;
  readonly breaks: number;
  /** Share of sends to be run straight through, by this dog's own record (`wantedCleanShare`). */
  readonly cleanShareWanted: number;
  readonly random: Random;
  /** What the ground and its company have to offer; `null` where nothing is known of them. */
  readonly atHand: AtHand | null;
  /** `null` for a session without a plan. */
  readonly plan: PlanInHand | null;
}

/** A leg missed through the handler or the set-up: not held against the dog. */
export function isExcused(leg: WorkedLeg): boolean {
  return leg.grade === 'missed' && (leg.cause === 'handler' || leg.cause === 'setup');
}

/** A leg missed by the dog, as far as the record says. */
export function isMiss(leg: WorkedLeg): boolean {
  return leg.grade === 'missed' && !isExcused(leg);
}

/**
 * Skills whose line of work ended this session: two misses of the dog's running. An excused miss neither counts nor
 * breaks the run.
 */
export function endedSkills(reps: readonly WorkedRep[]): Set<Skill> {
  const running = new Map<Skill, number>();
  const ended = new Set<Skill>();
  for (const rep of reps) {
    for (const leg of rep.legs) {
      if (isExcused(leg)) continue;
      const misses = isMiss(leg) ? (running.get(leg.skill) ?? 0) + 1 : 0;
      running.set(leg.skill, misses);
      if (misses >= 2) ended.add(leg.skill);
    }
  }
  return ended;
}

/** No leg of the rep was missed. */
export function wentWell(rep: WorkedRep): boolean {
  return rep.legs.length > 0 && rep.legs.every((leg) => leg.grade !== 'missed');
}
