import type { Ask, Skill } from '@sedgeline/engine/ability';
import {
  errandsS,
  type LaidLeg,
  layOut,
  learnedPace,
  medianS,
  type Plan,
  type PlanFacts,
  type PlanInput,
  type PlanKit,
  type PlannedRep,
  timedRep,
} from '@sedgeline/engine/session';

const SENDS: readonly Skill[] = ['line', 'mark', 'hunt'];

/**
 * What the judge of plans needs, put together from the record alone: nothing of the search is used. Chances are stated anew
 * for the moment of each rep, by the contract: reps since the break, stops running, whether the skill was worked today.
 */
export function planFacts(
  { known, request, lateOrders, repTimes }: PlanInput,
  locked: readonly number[] = [],
): PlanFacts {
  const ask = (skill: Skill, one: Ask) => known.question(skill, one);
  const pace = learnedPace(repTimes);
  return {
    ageMonths: known.ageMonths,
    locked,
    repMinutes: ({ legs, before }) => medianS(timedRep(legs, errandsS(before), pace), pace) / 60,
    weather: request.weather,
    kit: request.kit,
    successes: new Map(
      [...known.successes].map(([skill, list]) => [skill, list.map((one) => one.question.ask)]),
    ),
    known: [...known.successes.values()]
      .flat()
      .map(({ asked }) => asked)
      .filter((legs) => isLaidWith(request.kit, legs)),
    cleanShareWanted: known.cleanShareWanted,
    lateOrders,
    stretch: (skill, now, then) => known.filter.stretch(ask(skill, now), ask(skill, then)).mean,
    chances: (plan, place, legs) =>
      legs.map((leg) => {
        const question = ask(leg.skill, leg.ask);
        const context = { ...question.context, ...contextAt(plan, place, leg.skill, question.context) };
        return known.filter.forecast({ ...question, context }).chance;
      }),
  };
}

/** Whether there is kit for a chain: what the kit can't lay could not have been begun or ended with. */
function isLaidWith(kit: PlanKit | undefined, legs: readonly LaidLeg[]): boolean {
  const { things } = layOut(legs);
  const count = (kind: 'post' | 'dummy') => things.filter((thing) => thing.kind === kind).length;
  return kit === undefined || (count('post') <= kit.posts && count('dummy') <= kit.dummies);
}

function contextAt(
  plan: Plan,
  place: number,
  skill: Skill,
  before: { readonly stopsRunning: number; readonly daysSinceWorked: number },
) {
  const earlier = plan.reps.slice(0, place);
  const has = (rep: PlannedRep, ...skills: readonly Skill[]) =>
    rep.legs.some((leg) => skills.includes(leg.skill));
  const lastBreak = Math.max(0, ...plan.breaks.map(({ afterRep }) => afterRep).filter((n) => n <= place));
  let stopsRunning = before.stopsRunning;
  for (const rep of earlier) {
    if (has(rep, 'stop')) stopsRunning += 1;
    else if (has(rep, ...SENDS)) stopsRunning = 0;
  }
  return {
    repsSinceBreak: place - lastBreak,
    stopsRunning,
    daysSinceWorked: earlier.some((rep) => has(rep, skill)) ? 0 : before.daysSinceWorked,
  };
}
