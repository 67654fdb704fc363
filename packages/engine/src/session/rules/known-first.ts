import type { LaidLeg } from '../picture/laid-leg.ts';
import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';
import { namedIn, raisedIn, successesBefore } from './raised.ts';
import { RULE_LIMITS } from './rule-limits.ts';
import { careOf } from './safe.ts';
import { isRepStated, leastNotMissed, leastOfRep, reaches } from './stated-chance.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'known-first';

/**
 * Rep 1 is within what went well lately: every leg has gone well before and is no harder now in any field, and is not
 * missed with 0.85 or more. Could have been kept: `true` where a chain that went well lately would do, `false` where
 * nothing ever went well.
 */
export function knownFirst(plan: Plan, facts: PlanFacts): RuleVerdict {
  const first = plan.reps[0];
  if (!first) return broken(RULE, { code: 'no-reps', reps: [] }, null);
  const at = { reps: [first.n] };
  const begin = { code: 'begin-with-known', ...at } as const;
  const could = isKnownToBeHad(plan, facts);
  const raised = raisedIn(first.legs, successesBefore(facts, plan, 0), facts);
  if (raised.hasNew) return broken(RULE, { code: 'nothing-known-yet', ...at }, begin, could);
  if (raised.fields.length > 0) {
    const to = namedIn(first.legs, raised.fields);
    return broken(RULE, { code: 'first-raises', ...at, fields: raised.fields, to }, begin, could);
  }
  if (!isRepStated(first)) {
    return broken(RULE, { code: 'chance-not-stated', ...at }, { code: 'state-it-anew', ...at }, could);
  }
  const is = leastOfRep(first);
  if (reaches(is, RULE_LIMITS.known)) return kept(RULE);
  return broken(RULE, { code: 'first-not-sure', ...at, is, limit: RULE_LIMITS.known }, begin, could);
}

function isKnownToBeHad(plan: Plan, facts: PlanFacts): boolean | undefined {
  if ([...facts.successes.values()].every((asks) => asks.length === 0)) return false;
  const before = successesBefore(facts, plan, 0);
  const isKnown = (legs: readonly LaidLeg[]) => {
    const { hasNew, fields } = raisedIn(legs, before, facts);
    return !hasNew && fields.length === 0 && isSureAt(plan, 0, legs, facts);
  };
  return facts.known?.some(isKnown) === true ? true : undefined;
}

/**
 * A chain that the record states as known in the place (from 0) of a rep, is of the skills asked for and is safe for the
 * dog's age; `false` without a function to state it.
 */
export function isSureAt(plan: Plan, place: number, legs: readonly LaidLeg[], facts: PlanFacts): boolean {
  const isAskedFor = facts.skills === undefined || legs.some(({ skill }) => facts.skills?.includes(skill));
  if (!isAskedFor || careOf(legs, facts.ageMonths) !== null || facts.chances === undefined) return false;
  return reaches(leastNotMissed(facts.chances(plan, place, legs)), RULE_LIMITS.known);
}
