import type { Skill } from '../../ability/index.ts';
import { isHot } from '../../weather/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import type { Plan } from '../plan/plan.ts';
import type { RuleMendCode, RuleVerdict, RuleWhyCode } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';
import { ROUNDING, RULE_LIMITS } from './rule-limits.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'safe';

/**
 * Under 12 months no obstacle of 2 and more and no way over 80 m, fall-backs among them; under 6 months 12 minutes at
 * most; in heat at most 8 reps and 10 minutes. A line is any way that the dog runs: the contract's "no line over 80 m" is
 * read for marks, hunts, stops, casts, recalls and deliveries alike. Cautious figures, not safe limits: the vet's word
 * goes first. It can always be kept: by less, or by nothing.
 */
export function safe(plan: Plan, facts: PlanFacts): RuleVerdict {
  const cares = plan.reps.map(({ n, legs, easier }) => ({
    n,
    care: careOf([...legs, ...easier.legs], facts.ageMonths),
  }));
  const first = cares.find(({ care }) => care !== null)?.care;
  if (first) {
    const { code, is, limit, mend, to } = first;
    const reps = cares.filter(({ care }) => care?.code === code).map(({ n }) => n);
    return broken(RULE, { code, reps, is, limit }, { code: mend, reps, to }, true);
  }
  return tooLongForAge(plan, facts) ?? tooMuchForHeat(plan, facts) ?? kept(RULE);
}

interface Care {
  readonly code: RuleWhyCode;
  readonly is: number;
  readonly limit: number;
  readonly mend: RuleMendCode;
  readonly to: number;
}

/** These skills say no way that the dog runs. */
const STILL: ReadonlySet<Skill> = new Set(['steady', 'heel', 'leave', 'pickup']);

/** What of a chain is too much for a dog so young, `null` where nothing is or the age is not known. */
export function careOf(legs: readonly LaidLeg[], ageMonths: number | null): Care | null {
  if (ageMonths === null || ageMonths >= RULE_LIMITS.grownMonths) return null;
  const { youngObstacle, youngLineM } = RULE_LIMITS;
  const obstacle = Math.max(0, ...legs.map(({ ask }) => ask.obstacle ?? 0));
  if (obstacle >= youngObstacle) {
    const to = youngObstacle - 1;
    return {
      code: 'obstacle-too-hard-for-age',
      is: obstacle,
      limit: youngObstacle,
      mend: 'lower-the-obstacle',
      to,
    };
  }
  const farM = Math.max(0, ...legs.map(({ skill, ask }) => (STILL.has(skill) ? 0 : (ask.distanceM ?? 0))));
  if (farM > youngLineM) {
    return {
      code: 'line-too-long-for-age',
      is: farM,
      limit: youngLineM,
      mend: 'shorten-the-line',
      to: youngLineM,
    };
  }
  return null;
}

function tooLongForAge(plan: Plan, { ageMonths }: PlanFacts): RuleVerdict | null {
  if (ageMonths === null || ageMonths >= RULE_LIMITS.puppyMonths) return null;
  return overMinutes(plan, RULE_LIMITS.puppyMinutes, 'too-long-for-age');
}

function tooMuchForHeat(plan: Plan, facts: PlanFacts): RuleVerdict | null {
  if (!isHot(facts.weather ?? {})) return null;
  const code = 'too-much-for-the-heat';
  const most = RULE_LIMITS.hotReps;
  if (plan.reps.length <= most) return overMinutes(plan, RULE_LIMITS.hotMinutes, code);
  const reps = plan.reps.slice(most).map(({ n }) => n);
  const why = { code, reps, count: plan.reps.length, is: plan.reps.length, limit: most } as const;
  return broken(
    RULE,
    why,
    { code: 'drop-reps', reps: plan.reps.slice(1, -1).map(({ n }) => n), to: most },
    true,
  );
}

function overMinutes(
  plan: Plan,
  limit: number,
  code: 'too-long-for-age' | 'too-much-for-the-heat',
): RuleVerdict | null {
  const { p50 } = plan.minutesExpected;
  if (p50 >= 0 && p50 <= limit + ROUNDING) return null;
  if (!(p50 >= 0 && p50 < Infinity)) {
    return broken(RULE, { code: 'time-not-stated', reps: [] }, { code: 'state-it-anew', reps: [] });
  }
  const to = Math.floor((plan.reps.length * limit) / p50);
  const reps = plan.reps.slice(1, -1).map(({ n }) => n);
  return broken(
    RULE,
    { code, reps: [], minutes: p50, is: p50, limit },
    { code: 'drop-reps', reps, to },
    true,
  );
}
