import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import { breakTaken } from './break-taken.ts';
import { cleanRuns } from './clean-runs.ts';
import { evenSides } from './even-sides.ts';
import { finishWell } from './finish-well.ts';
import { fitsTime } from './fits-time.ts';
import { knownFirst } from './known-first.ts';
import { oneThing } from './one-thing.ts';
import { checkFacts, type PlanFacts } from './plan-facts.ts';
import { safe } from './safe.ts';
import { varyStops } from './vary-stops.ts';
import { withinReach } from './within-reach.ts';

/**
 * Judges a plan, or an edit of one, by the ten rules of the trade, in the order of `RULES` (contract, "How the rules are
 * counted"; common practice, no source). It shares no code with the search for a plan. What the plan itself says of its
 * rules, its reasons and its seed make no difference. A rule whose reps are all locked by the handler could not
 * have been kept.
 * @throws RangeError where a figure of the facts is none (`checkFacts`)
 */
export function judgePlan(plan: Plan, facts: PlanFacts): readonly RuleVerdict[] {
  checkFacts(facts);
  return [
    knownFirst(plan, facts),
    oneThing(plan, facts),
    evenSides(plan, facts),
    cleanRuns(plan, facts),
    varyStops(plan, facts),
    breakTaken(plan, facts),
    finishWell(plan, facts),
    fitsTime(plan, facts),
    withinReach(plan),
    safe(plan, facts),
  ].map((verdict) => underLocks(verdict, facts.locked ?? []));
}

function underLocks(verdict: RuleVerdict, locked: readonly number[]): RuleVerdict {
  const reps = verdict.why?.reps ?? [];
  const isLocked = reps.length > 0 && reps.every((n) => locked.includes(n));
  return isLocked && verdict.rule !== 'safe' ? { ...verdict, couldHaveBeenKept: false } : verdict;
}
