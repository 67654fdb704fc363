import type { Ask } from '../../ability/index.ts';
import type { Layout, PlanePoint, Thing } from '../../ground/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';

/** Lengths of a layout and of an ask are the same within a pace: asks are whole metres. */
export const SAME_PLACE_M = 1;

/** Straight distance, metres. */
export const apartM = (a: PlanePoint, b: PlanePoint): number =>
  Math.hypot(a.eastM - b.eastM, a.northM - b.northM);

/** Where the dog is sent from. */
export const sendPoint = (layout: Layout): PlanePoint => layout.sendFrom ?? layout.handlerAt;

/** The end of one way of a chain: how far it lies from the send point, and whether its leg says that something lies there. */
export interface WayDistance {
  readonly leg: LaidLeg;
  readonly farM: number;
  readonly isTold: boolean;
}

const TAKEN_UP = new Set(['pickup', 'delivery', 'hunt', 'mark']);

/** Whether a chain takes a dummy up. */
export const takesUp = (legs: readonly LaidLeg[]): boolean => legs.some(({ skill }) => TAKEN_UP.has(skill));

const draws = ({ temptation = 'none', blind = false }: Ask): boolean =>
  temptation !== 'game' && (temptation !== 'none' || blind);

/**
 * The ends of a chain's ways, by the asks alone, the last first: the cast's, then the send's. A cast of c metres, turned t from
 * the way home, at a stop s metres out ends at sqrt(s^2 + c^2 - 2 s c cos t) from the send point (law of cosines); a cast from
 * a sit begins at the send point. No bearing is needed, so any plane will do.
 */
export function wayDistances(legs: readonly LaidLeg[]): WayDistance[] {
  const send = legs.find(({ skill }) => skill === 'line' || skill === 'mark' || skill === 'hunt');
  const stop = legs.find(({ skill }) => skill === 'stop');
  const cast = legs.find(({ skill }) => skill.startsWith('cast-'));
  const ways: WayDistance[] = [];
  if (cast) {
    const fromM = stop ? (stop.ask.distanceM ?? 5) : send ? (send.ask.distanceM ?? 5) : 0;
    const castM = cast.ask.castM ?? 5;
    const turnRad = ((cast.ask.turnDeg ?? (cast.skill === 'cast-back' ? 180 : 90)) * Math.PI) / 180;
    const square = fromM * fromM + castM * castM - 2 * fromM * castM * Math.cos(turnRad);
    ways.push({ leg: cast, farM: Math.sqrt(Math.max(0, square)), isTold: takesUp(legs) || draws(cast.ask) });
  }
  const out = send ?? stop;
  if (out) {
    const stopM = (stop?.ask.distanceM ?? 5) / Math.max(0.1, stop?.ask.wayFraction ?? 1);
    const farM = send ? (send.ask.distanceM ?? 5) : stopM;
    // A cast back off a line may go on to the line's own dummy.
    const isPassed = cast !== undefined;
    const isTold = isPassed
      ? cast.skill !== 'cast-back' && draws(out.ask)
      : takesUp(legs) || (send !== undefined && draws(send.ask));
    ways.push({ leg: out, farM, isTold });
  }
  return ways;
}

/** The things of a layout, of some kinds, that lie at the end of a way. */
export function lyingAt(layout: Layout, { farM }: WayDistance, kinds: readonly Thing['kind'][]): Thing[] {
  return layout.things.filter(
    (thing) =>
      kinds.includes(thing.kind) && Math.abs(apartM(sendPoint(layout), thing) - farM) <= SAME_PLACE_M,
  );
}
