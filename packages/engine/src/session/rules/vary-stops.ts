import { easyAsk } from '../../ability/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';
import { ROUNDING, RULE_LIMITS } from './rule-limits.ts';
import { leastNotMissed, reaches } from './stated-chance.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'vary-where-the-stop-comes';
/** A stop is drawn no later than this part of its line (our judgement, 2026). */
const LATEST = 0.9;

interface Stop {
  readonly place: number;
  readonly n: number;
  readonly way: number;
}

/**
 * With three stops or more, their `wayFraction` spans 0.25. It could have been kept where an earlier stop would do it,
 * which is never harder; where only a later one would, the chances stated anew tell, and `undefined` without them.
 */
export function varyStops(plan: Plan, facts: PlanFacts): RuleVerdict {
  const easy = easyAsk('stop').wayFraction;
  const stops: Stop[] = plan.reps.flatMap(({ legs, n }, place) =>
    legs.filter((leg) => leg.skill === 'stop').map((leg) => ({ place, n, way: leg.ask.wayFraction ?? easy })),
  );
  if (stops.length < RULE_LIMITS.stopsToVary) return kept(RULE);
  const ways = stops.map(({ way }) => way);
  const [least, most] = [Math.min(...ways), Math.max(...ways)];
  const span = most - least;
  if (span >= RULE_LIMITS.waySpan - ROUNDING) return kept(RULE);
  const reps = stops.map(({ n }) => n);
  const code = 'stops-in-one-place';
  if (!Number.isFinite(span)) return broken(RULE, { code, reps }, { code: 'state-it-anew', reps });
  const earlier = most - RULE_LIMITS.waySpan;
  const isEarlierEnough = earlier >= easy - ROUNDING;
  const to = isEarlierEnough ? earlier : least + RULE_LIMITS.waySpan;
  const moved = isEarlierEnough
    ? stops.find(({ way }) => way === least)
    : stops.findLast(({ way }) => way === most);
  const could = isEarlierEnough ? true : isLaterWithinReach(plan, facts, stops, to);
  return broken(
    RULE,
    { code, reps, is: span, limit: RULE_LIMITS.waySpan },
    { code: 'stop-elsewhere', reps: moved ? [moved.n] : [], to },
    could,
  );
}

/** Some stop of the plan, moved along its own line to this part of the way, has every leg within reach. */
function isLaterWithinReach(
  plan: Plan,
  facts: PlanFacts,
  stops: readonly Stop[],
  to: number,
): boolean | undefined {
  const state = facts.chances;
  if (state === undefined || !(to <= LATEST)) return to <= LATEST ? undefined : false;
  return stops.some(({ place }) => {
    const legs = plan.reps[place]?.legs ?? [];
    return reaches(leastNotMissed(state(plan, place, movedAlong(legs, to))), RULE_LIMITS.withinReach);
  });
}

function movedAlong(legs: readonly LaidLeg[], to: number): LaidLeg[] {
  return legs.map(({ skill, ask }) => {
    const hangsOnStop = skill === 'stop' || skill.startsWith('cast-');
    if (!hangsOnStop || ask.distanceM === undefined) return { skill, ask };
    const lineM = ask.distanceM / Math.max(ask.wayFraction ?? 0.1, 0.1);
    return { skill, ask: { ...ask, wayFraction: to, distanceM: lineM * to } };
  });
}
