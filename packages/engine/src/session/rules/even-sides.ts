import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';
import { RULE_LIMITS } from './rule-limits.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'even-sides';

/**
 * Reps with a left cast and reps with a right cast differ by one at most; a rep with both counts on both sides. It could
 * have been kept unless the request names one side alone.
 */
export function evenSides(plan: Plan, facts: PlanFacts): RuleVerdict {
  const withCast = (side: 'left' | 'right') =>
    plan.reps.filter((rep) => rep.legs.some((leg) => leg.skill === `cast-${side}`)).map(({ n }) => n);
  const left = withCast('left');
  const right = withCast('right');
  const apart = Math.abs(left.length - right.length);
  if (apart <= RULE_LIMITS.sidesApart) return kept(RULE);
  const [more, fewer] = left.length > right.length ? [left, right] : [right, left];
  const turned = more.filter((n) => !fewer.includes(n)).slice(-Math.floor(apart / 2));
  const { skills } = facts;
  const could = skills === undefined || skills.includes('cast-left') === skills.includes('cast-right');
  return broken(
    RULE,
    { code: 'sides-uneven', reps: more, left: left.length, right: right.length, is: apart, limit: 1 },
    { code: 'turn-to-the-other-side', reps: turned, side: more === left ? 'right' : 'left' },
    could,
  );
}
