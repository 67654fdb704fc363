import type { Thing } from '../../ground/index.ts';
import type { PlannedRep } from '../next/next-answer.ts';
import type { Plan } from '../plan/plan.ts';
import type { PlanFault } from './plan-fault.ts';
import { apartM, lyingAt, SAME_PLACE_M, sendPoint, takesUp, wayDistances } from './way-distances.ts';

type Lying = ReadonlyMap<string, Thing>;

/** What a handler puts out, and does not grow there; hazards and the like stay out of the count. */
const isKit = ({ kind }: Thing): boolean => kind === 'dummy' || kind === 'post';

/**
 * Walks a plan from rep to rep: what lies out at each is what the rep before left, less what it took up, with what `before`
 * lifts and puts out. Things that stay keep their distances from each other, on the same hand; the send point moves only
 * with a walk.
 */
export function carriedFaults(plan: Plan): PlanFault[] {
  const faults: PlanFault[] = [];
  let before: PlannedRep | null = null;
  for (const rep of plan.reps) {
    const left = before === null ? new Map<string, Thing>() : leftBy(before, rep);
    faults.push(...errandFaults(rep, left), ...(before === null ? [] : movedFaults(rep, left, before)));
    before = rep;
  }
  return faults;
}

/** What a rep that went as asked leaves; which of several dummies it took up shows in what comes next. */
function leftBy(rep: PlannedRep, next: PlannedRep): Lying {
  const left = new Map(rep.layout.things.filter(isKit).map((thing) => [thing.thing, thing]));
  if (!takesUp(rep.legs)) return left;
  const way = wayDistances(rep.legs)[0];
  const dummies = rep.layout.things.filter(({ kind }) => kind === 'dummy');
  const there = way ? lyingAt(rep.layout, way, ['dummy']) : [];
  const could = (there.length > 0 ? there : dummies).map(({ thing }) => thing);
  const isSaid = (name: string) =>
    next.before.some((errand) => errand.thing === name && errand.do !== 'lift');
  const isThere = (name: string) =>
    next.layout.things.some(({ thing }) => thing === name) ||
    next.before.some((errand) => errand.thing === name && errand.do === 'lift');
  const taken = could.find(isSaid) ?? could.find((name) => !isThere(name)) ?? could[0];
  if (taken !== undefined) left.delete(taken);
  return left;
}

function errandFaults({ n, before, layout }: PlannedRep, left: Lying): PlanFault[] {
  const faults: PlanFault[] = [];
  const lying = new Set(left.keys());
  for (const { do: what, thing } of before) {
    if (what === 'walk') continue;
    if (thing === undefined) faults.push({ code: 'errand-without-thing', rep: n });
    else if (what === 'lift') {
      if (!lying.delete(thing)) faults.push({ code: 'lifts-what-is-not-there', rep: n, thing });
    } else {
      if (lying.has(thing)) faults.push({ code: 'put-out-twice', rep: n, thing });
      lying.add(thing);
    }
  }
  const shown = new Set(layout.things.filter(isKit).map(({ thing }) => thing));
  for (const thing of shown) if (!lying.has(thing)) faults.push({ code: 'lies-out-unlaid', rep: n, thing });
  for (const thing of lying)
    if (!shown.has(thing)) faults.push({ code: 'left-out-of-the-layout', rep: n, thing });
  return faults;
}

function movedFaults(rep: PlannedRep, left: Lying, before: PlannedRep): PlanFault[] {
  const handled = new Set(rep.before.map(({ thing }) => thing));
  const kept = rep.layout.things.flatMap((now) => {
    const was = left.get(now.thing);
    return was === undefined || handled.has(now.thing) ? [] : [{ now, was }];
  });
  const hasWalk = rep.before.some((errand) => errand.do === 'walk');
  const anchors = hasWalk
    ? kept
    : [...kept, { now: { thing: '', ...sendPoint(rep.layout) }, was: sendPoint(before.layout) }];
  for (const [at, one] of anchors.entries()) {
    for (const [more, two] of anchors.slice(0, at).entries()) {
      if (Math.abs(apartM(one.now, two.now) - apartM(one.was, two.was)) > SAME_PLACE_M) {
        return [one.now.thing === '' ? { code: 'walk-unsaid', rep: rep.n } : moved(rep.n, one.now.thing)];
      }
      const third = anchors.slice(0, more).find((three) => isMirrored(one, two, three));
      if (third) return [moved(rep.n, one.now.thing || two.now.thing)];
    }
  }
  return [];
}

const moved = (rep: number, thing: string): PlanFault => ({ code: 'moved-unsaid', rep, thing });

interface Anchor {
  readonly now: { readonly eastM: number; readonly northM: number };
  readonly was: { readonly eastM: number; readonly northM: number };
}

/** Three places that lie round the other way: no walk turns the ground over. Nearly straight rows have no hand. */
function isMirrored(one: Anchor, two: Anchor, three: Anchor): boolean {
  const hand = (when: 'now' | 'was') => {
    const [a, b, c] = [one[when], two[when], three[when]];
    return (b.eastM - a.eastM) * (c.northM - a.northM) - (b.northM - a.northM) * (c.eastM - a.eastM);
  };
  const longestM = Math.max(apartM(one.was, two.was), apartM(two.was, three.was), apartM(one.was, three.was));
  const clear = longestM * 2 * SAME_PLACE_M;
  return Math.abs(hand('now')) > clear && Math.abs(hand('was')) > clear && hand('now') * hand('was') < 0;
}
