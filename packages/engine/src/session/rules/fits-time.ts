import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';
import { ROUNDING, RULE_LIMITS } from './rule-limits.ts';
import { minutesOfReps } from './spent-minutes.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'fits-the-time';

/**
 * p50 is within the minutes asked for, and no rep is under 25 s; nor is p50 less than the reps and breaks take together at
 * that. It can be kept with fewer reps, so `couldHaveBeenKept` is `false` only where one rep of 25 s is too long.
 */
export function fitsTime(plan: Plan, facts: PlanFacts): RuleVerdict {
  const { p50 } = plan.minutesExpected;
  const all = plan.reps.map(({ n }) => n);
  const could = plan.minutes * 60 >= RULE_LIMITS.leastRepS;
  const minutes = minutesOfReps(plan, facts);
  if (!(p50 >= 0 && p50 < Infinity && plan.minutes >= 0) || minutes === null) {
    return broken(RULE, { code: 'time-not-stated', reps: [] }, { code: 'state-it-anew', reps: [] });
  }
  const shortest = Math.min(...minutes) * 60;
  const short = all.filter((_n, place) => (minutes[place] ?? 0) * 60 < RULE_LIMITS.leastRepS - ROUNDING * 60);
  if (short.length > 0) {
    const why = { code: 'reps-too-short', reps: short, is: shortest, limit: RULE_LIMITS.leastRepS } as const;
    return broken(RULE, why, { code: 'leave-reps-more-time', reps: short, to: RULE_LIMITS.leastRepS }, could);
  }
  if (p50 <= plan.minutes + ROUNDING) return kept(RULE);
  const fitting = Math.floor((plan.reps.length * plan.minutes) / p50);
  return broken(
    RULE,
    { code: 'over-the-time', reps: [], is: p50, limit: plan.minutes },
    { code: 'drop-reps', reps: all.slice(1, -1), to: fitting },
    could,
  );
}
