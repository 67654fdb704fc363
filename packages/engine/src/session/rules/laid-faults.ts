import type { Thing } from '../../ground/index.ts';
import type { PlannedRep } from '../next/next-answer.ts';
import type { PlanKit } from '../plan/plan.ts';
import type { PlanFault } from './plan-fault.ts';
import { lyingAt, sendPoint, takesUp, wayDistances } from './way-distances.ts';

/** Gaps are compared up to here: wider ones count alike (the demand table), and within so much, a sixth of an ordinary step. */
const WIDE_DEG = 60;
const SAME_GAP_DEG = 5;

/** Where a rep's layout is not what its legs ask for: the ends of its ways, the other dummies, their gap, the kit. */
export function laidFaults(rep: PlannedRep, kit: PlanKit | undefined): PlanFault[] {
  const { layout, legs, n } = rep;
  const ways = wayDistances(legs);
  const dummies = layout.things.filter(({ kind }) => kind === 'dummy');
  const posts = layout.things.filter(({ kind }) => kind === 'post');
  const tooMany: PlanFault[] = [
    ...over(n, dummies, kit?.dummies ?? Infinity),
    ...over(n, posts, kit?.posts ?? Infinity),
  ];
  const missing = ways
    .filter((way) => way.isTold && lyingAt(layout, way, ['dummy', 'post']).length === 0)
    .map(
      ({ leg, farM }): PlanFault => ({ code: 'nothing-lies-there', rep: n, skill: leg.skill, should: farM }),
    );
  return [...missing, ...othersFault(rep, dummies), ...gapFault(rep, dummies), ...tooMany];
}

function over(rep: number, things: readonly Thing[], most: number): PlanFault[] {
  return things.length > most ? [{ code: 'more-than-the-kit', rep, is: things.length, should: most }] : [];
}

/** `otherDummies` is what lies out but for what is asked for; a dummy that the line passes may count as one or not. */
function othersFault({ layout, legs, n }: PlannedRep, dummies: readonly Thing[]): PlanFault[] {
  const is = Math.max(0, ...legs.map(({ ask }) => ask.otherDummies ?? 0));
  const ends = wayDistances(legs).filter((way) => lyingAt(layout, way, ['dummy']).length > 0).length;
  const isTempted = legs.some(({ ask }) => !['none', 'post', 'game'].includes(ask.temptation ?? 'none'));
  const least = isTempted || takesUp(legs) ? Math.min(1, dummies.length) : 0;
  const most = Math.min(dummies.length, Math.max(ends, least));
  const should = dummies.length - Math.min(1, most);
  return is >= dummies.length - most && is <= should ? [] : [{ code: 'others-differ', rep: n, is, should }];
}

/** On a send to one thing, the nearest other dummy lies as far off the line, in degrees, as the asks say. */
function gapFault({ layout, legs, n }: PlannedRep, dummies: readonly Thing[]): PlanFault[] {
  const [way, ...more] = wayDistances(legs);
  const end =
    way && more.length === 0 && way.leg.skill !== 'stop' ? lyingAt(layout, way, ['dummy', 'post']) : [];
  const [goal, another] = end.filter(({ kind }) => kind === 'dummy' || end.length === 1);
  if (!way || way.leg.skill.startsWith('cast-') || !goal || another) return [];
  const from = sendPoint(layout);
  const bearingDeg = (thing: Thing) =>
    (Math.atan2(thing.eastM - from.eastM, thing.northM - from.northM) * 180) / Math.PI;
  const offDeg = (thing: Thing) => {
    const turn = Math.abs(bearingDeg(thing) - bearingDeg(goal)) % 360;
    return Math.min(turn, 360 - turn);
  };
  const should = Math.min(180, ...dummies.filter((thing) => thing !== goal).map(offDeg));
  const is = Math.min(...legs.map(({ ask }) => ask.gapDeg ?? 180));
  const differs = Math.abs(Math.min(is, WIDE_DEG) - Math.min(should, WIDE_DEG)) > SAME_GAP_DEG;
  return differs ? [{ code: 'gap-differs', rep: n, is, should }] : [];
}
