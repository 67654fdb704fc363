import { checkAsk, easyAsk } from '../../ability/index.ts';
import type { PlannedLeg, PlannedRep } from '../next/next-answer.ts';
import type { Plan } from '../plan/plan.ts';
import type { PlanFacts } from './plan-facts.ts';
import type { PlanFault } from './plan-fault.ts';
import { RULE_LIMITS } from './rule-limits.ts';
import { standingBreaks } from './spent-minutes.ts';
import { isStated, leastNotMissed, leastOfRep, reaches } from './stated-chance.ts';

/** A chance stated anew may differ by so much: half of one in a hundred, to which people are shown it. */
const SAME_CHANCE = 0.005;
/** A part of the way is noted in hundredths, metres in wholes or tenths: a stop at 5 m of 12 is 0.42. */
const SAME_WAY = 0.05;

/** What a plan states that cannot be so: numbers, asks, chances, sides, breaks and minutes. */
export function statedFaults(plan: Plan, facts: PlanFacts): PlanFault[] {
  const { p50, p90 } = plan.minutesExpected;
  return [
    ...(p50 >= 0 && p90 >= p50 && p90 < Infinity ? [] : [{ code: 'minutes-not-stated', rep: null } as const]),
    ...plan.breaks
      .filter((each) => !standingBreaks(plan).includes(each))
      .map(({ afterRep }) => ({ code: 'break-out-of-place', rep: afterRep }) as const),
    ...plan.reps.flatMap((rep, place) => repFaults(plan, facts, rep, place)),
  ];
}

function repFaults(plan: Plan, facts: PlanFacts, rep: PlannedRep, place: number): PlanFault[] {
  const faults: PlanFault[] = [];
  const add = (code: PlanFault['code'], more: Partial<PlanFault> = {}) => {
    faults.push({ code, rep: rep.n, ...more });
  };
  if (rep.n !== place + 1) add('numbers-out-of-order', { is: rep.n, should: place + 1 });
  if (rep.legs.length === 0) add('no-legs');
  for (const { skill, ask, chance } of [...rep.legs, ...rep.easier.legs]) {
    if (!isAsk(ask)) add('ask-out-of-range', { skill });
    if (!isStated(chance)) add('chance-not-stated', { skill });
  }
  const sides = (['left', 'right'] as const).filter((side) =>
    rep.legs.some(({ skill }) => skill === `cast-${side}`),
  );
  if (rep.side === 'none' ? sides.length > 0 : !sides.includes(rep.side)) add('side-differs');
  const offLine = isOffLine(rep.legs);
  if (offLine !== null) add('stop-off-its-line', { skill: 'stop', ...offLine });
  const least = Math.min(leastOfRep(rep), RULE_LIMITS.known);
  const easier = leastNotMissed(rep.easier.legs.map((leg) => leg.chance));
  if (!reaches(easier, least)) add('fall-back-not-easier', { is: easier, should: least });
  if (facts.chances !== undefined && rep.legs.length > 0) {
    const anew = facts.chances(plan, place, rep.legs);
    rep.legs.forEach(({ skill, chance }, n) => {
      const is = chance.missed;
      const should = anew[n]?.missed ?? Number.NaN;
      const isSame =
        Math.abs(is - should) <= SAME_CHANCE &&
        Math.abs(chance.good - (anew[n]?.good ?? Number.NaN)) <= SAME_CHANCE;
      if (isStated(chance) && !isSame) add('chance-differs', { skill, is, should });
    });
  }
  return faults;
}

function isAsk(ask: PlannedLeg['ask']): boolean {
  try {
    checkAsk(ask);
    return true;
  } catch (fault) {
    if (fault instanceof RangeError) return false;
    throw fault;
  }
}

/**
 * A stop on a line of its rep lies on it, at the part of it that the ask says; `null` where it does. A line that is asked just as far
 * as the stop ends there: the part of the way is that of the send the dog expects.
 */
function isOffLine(legs: readonly PlannedLeg[]): { readonly is: number; readonly should: number } | null {
  const line = legs.find(({ skill }) => skill === 'line')?.ask;
  const stop = legs.find(({ skill }) => skill === 'stop')?.ask;
  if (line?.distanceM === undefined || stop?.distanceM === undefined) return null;
  const is = stop.wayFraction ?? easyAsk('stop').wayFraction;
  const should = stop.distanceM / line.distanceM;
  const isEasyEnd = should <= easyAsk('stop').wayFraction && is <= easyAsk('stop').wayFraction;
  const endsAtStop = stop.distanceM === line.distanceM;
  return Math.abs(is - should) <= SAME_WAY || isEasyEnd || endsAtStop ? null : { is, should };
}
