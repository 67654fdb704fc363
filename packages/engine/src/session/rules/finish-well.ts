import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import { isSureAt } from './known-first.ts';
import type { PlanFacts } from './plan-facts.ts';
import { RULE_LIMITS } from './rule-limits.ts';
import { isRepStated, leastOfRep, reaches } from './stated-chance.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'finish-well';

/**
 * The last rep is a `finish`, and each leg of it is not missed with 0.85 or more. Could have been kept: `true` where a chain
 * that went well lately, or another rep of the plan, would do in its place.
 */
export function finishWell(plan: Plan, facts: PlanFacts): RuleVerdict {
  const last = plan.reps.at(-1);
  if (!last) return broken(RULE, { code: 'no-reps', reps: [] }, null);
  const at = { reps: [last.n] };
  const end = { code: 'end-with-known', ...at } as const;
  if (!isRepStated(last)) {
    return broken(RULE, { code: 'chance-not-stated', ...at }, { code: 'state-it-anew', ...at });
  }
  const is = leastOfRep(last);
  const isSure = reaches(is, RULE_LIMITS.known);
  if (isSure && last.purpose === 'finish') return kept(RULE);
  const place = plan.reps.length - 1;
  const others = [...(facts.known ?? []), ...plan.reps.slice(0, -1).map(({ legs }) => legs)];
  const could = isSure || others.some((legs) => isSureAt(plan, place, legs, facts)) ? true : undefined;
  if (last.purpose !== 'finish') return broken(RULE, { code: 'last-is-no-finish', ...at }, end, could);
  return broken(RULE, { code: 'finish-not-sure', ...at, is, limit: RULE_LIMITS.known }, end, could);
}
