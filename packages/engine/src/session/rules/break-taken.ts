import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';
import { ROUNDING, RULE_LIMITS } from './rule-limits.ts';
import { minutesOfReps, standingBreaks } from './spent-minutes.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'break';
/** A break as it is usually taken, minutes (common practice, no source). */
const USUAL_BREAK = 3;

/**
 * No more than 12 reps or 12 minutes without a break. Minutes are medians (`minutesOfReps`). It can always be kept, by a
 * break or by fewer reps, unless one rep alone is longer.
 */
export function breakTaken(plan: Plan, facts: PlanFacts): RuleVerdict {
  const minutes = minutesOfReps(plan, facts);
  if (minutes === null) {
    return broken(RULE, { code: 'time-not-stated', reps: [] }, { code: 'state-it-anew', reps: [] }, true);
  }
  const breaks = new Set(standingBreaks(plan).map(({ afterRep }) => afterRep));
  let since: number[] = [];
  let sinceMinutes = 0;
  for (const [place, { n }] of plan.reps.entries()) {
    since.push(n);
    sinceMinutes += minutes[place] ?? 0;
    const isTooLong =
      since.length > RULE_LIMITS.stretchReps || sinceMinutes > RULE_LIMITS.stretchMinutes + ROUNDING;
    if (isTooLong) {
      const why = {
        code: 'too-long-without-break',
        reps: [n],
        count: since.length,
        minutes: sinceMinutes,
      } as const;
      const after = since[Math.ceil(since.length / 2) - 1] ?? n;
      return since.length === 1
        ? broken(RULE, why, { code: 'drop-reps', reps: [n], to: plan.reps.length - 1 })
        : broken(RULE, why, { code: 'put-in-a-break', reps: [after], to: USUAL_BREAK }, true);
    }
    if (breaks.has(n)) {
      since = [];
      sinceMinutes = 0;
    }
  }
  return kept(RULE);
}
