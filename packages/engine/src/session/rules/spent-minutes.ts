import type { Plan, PlanBreak } from '../plan/plan.ts';
import type { PlanFacts } from './plan-facts.ts';

/** A pause shorter than this, minutes, is no break (our judgement, 2026). */
const LEAST_BREAK = 1;

/** The breaks of a plan that are breaks: between two of its reps, and a minute or more. */
export function standingBreaks(plan: Plan): PlanBreak[] {
  const inside = new Set(plan.reps.slice(0, -1).map(({ n }) => n));
  return plan.breaks.filter(({ afterRep, minutes }) => inside.has(afterRep) && minutes >= LEAST_BREAK);
}

/**
 * Median minutes of each rep, with what is laid and walked before it: by the facts' own function, else the plan's p50
 * without its breaks, shared out evenly. `null` where the plan states no minutes.
 */
export function minutesOfReps(plan: Plan, facts: PlanFacts): readonly number[] | null {
  const minutes =
    facts.repMinutes === undefined
      ? plan.reps.map(() => (plan.minutesExpected.p50 - breakMinutes(plan)) / plan.reps.length)
      : plan.reps.map(facts.repMinutes);
  return minutes.every((each) => each >= 0 && each < Infinity) ? minutes : null;
}

/** Minutes of all breaks of a plan. */
export function breakMinutes(plan: Plan): number {
  return plan.breaks.reduce((so, { minutes }) => so + minutes, 0);
}
