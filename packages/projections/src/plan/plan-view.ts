import { drawnRep, type Plan, PlanRecord, type PlanRequest } from '@sedgeline/engine/session';
import type { KennelOfFacts } from '../kennel-of-facts.ts';
import type { PlanCard, PlanView } from '../views/plan-view.ts';
import { stopConditionsOfDog } from '../whistle/stop-conditions-of-dog.ts';
import { planInput } from './plan-input.ts';
import { planStrip } from './plan-strip.ts';

/**
 * A plan as its screen shows it, each rep drawn and its whole chance stated in its place. `atMs` is the moment it was planned for.
 * @throws RangeError for a dog that no fact names
 */
export function planView(kennel: KennelOfFacts, request: PlanRequest, plan: Plan, atMs: number): PlanView {
  const { record } = kennel;
  const dog = record.dogs.get(request.dog);
  if (dog === undefined) throw new RangeError(`dog: expected one of the record's, got ${request.dog}`);
  const { known } = planInput(record, kennel.timeline(), request, atMs, plan.seed);
  const { airC, windMPerS, windFromDeg } = request.weather ?? {};
  const conditions = {
    windMPerS,
    windFromDeg,
    stop: stopConditionsOfDog(record, dog.dog, { handler: null, airC: airC ?? null }),
  };
  const places = new PlanRecord(known);
  let moment = places.start;
  const cards = plan.reps.map((rep): PlanCard => {
    const { question } = places.inputAt(moment);
    const chain = known.filter.chain(rep.legs.map(({ skill, ask }) => question(skill, ask)));
    const takesBreak = plan.breaks.some(({ afterRep }) => afterRep === rep.n);
    moment = places.after(moment, rep.legs, takesBreak);
    return {
      rep,
      picture: drawnRep(rep.legs, conditions),
      noneMissed: chain.noneMissed,
      interval90: chain.interval90,
    };
  });
  return {
    dog: dog.dog,
    dogName: dog.name,
    groundName: request.ground === undefined ? null : (record.grounds.get(request.ground)?.name ?? null),
    atMs,
    request,
    plan,
    cards,
    strip: planStrip(plan, known.cleanShareWanted),
  };
}

/** The ground of the dog's last session, where it had one that is still offered. */
export function lastGround({ record }: KennelOfFacts, dog: string): string | null {
  const last = record.sessions.findLast((session) => session.dog === dog)?.ground ?? null;
  return last !== null && record.grounds.get(last)?.isPutAway === true ? null : last;
}
