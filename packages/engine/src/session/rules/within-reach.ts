import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import { RULE_LIMITS } from './rule-limits.ts';
import { isRepStated, leastNotMissed, leastOfRep, reaches } from './stated-chance.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'within-reach';

/**
 * Each leg is not missed with 0.65 or more. It could have been kept where every rep out of reach has a fall-back within
 * reach, or other reps are left when it is dropped; `undefined` where nothing of the plan is within reach.
 */
export function withinReach(plan: Plan): RuleVerdict {
  const unstated = plan.reps.filter((rep) => !isRepStated(rep)).map(({ n }) => n);
  if (unstated.length > 0) {
    const mend = { code: 'state-it-anew', reps: unstated } as const;
    return broken(RULE, { code: 'chance-not-stated', reps: unstated }, mend);
  }
  const limit = RULE_LIMITS.withinReach;
  const out = plan.reps.filter((rep) => !reaches(leastOfRep(rep), limit));
  if (out.length === 0) return kept(RULE);
  const reps = out.map(({ n }) => n);
  const isEasierHad = out.every(({ easier }) =>
    reaches(leastNotMissed(easier.legs.map((leg) => leg.chance)), limit),
  );
  const isRestLeft = out.length < plan.reps.length;
  return broken(
    RULE,
    { code: 'out-of-reach', reps, is: Math.min(...out.map(leastOfRep)), limit },
    isEasierHad
      ? { code: 'take-the-easier', reps }
      : { code: 'drop-reps', reps, to: plan.reps.length - out.length },
    isEasierHad || isRestLeft ? true : undefined,
  );
}
