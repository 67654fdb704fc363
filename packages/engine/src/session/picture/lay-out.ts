import { alongM, type Goal, type Layout, type PlanePoint, SEND, type Thing } from '../../ground/index.ts';
import { type ChainShape, chainShape } from './chain-shape.ts';
import type { LaidLeg } from './laid-leg.ts';
import type { WayEnd } from './way-ends.ts';

/** How far apart the handler stands when "apart", and how far out when "between": our judgement, 2026. */
const APART_M = 8;
const BETWEEN_SHARE = 0.3;

/**
 * The layout that a chain of legs calls for: send point at the origin, out is north, the asked dummy where the last
 * way ends, the dummies that are not asked for at the ask's gap, the handler at the ask's place. Metres.
 * Depends on the legs alone, so the same rep is always drawn the same way.
 */
export function layOut(legs: readonly LaidLeg[]): Layout {
  const shape = chainShape(legs);
  const sendFrom: PlanePoint = shape.sit && shape.castFromSit ? alongM(SEND, 0, shape.outM) : SEND;
  const things: Thing[] = [...thingsAt(shape.asked, ASKED), ...thingsAt(shape.passed, PASSED)];
  for (let n = 0; n < shape.others - (shape.passed?.hasDummy ? 1 : 0); n++) {
    things.push({ thing: `other-${n + 1}`, kind: 'dummy', ...otherPlace(shape, n), how: 'placed' });
  }
  return { handlerAt: handlerPlace(shape), sendFrom, things };
}

interface EndNames {
  readonly dummy: string;
  readonly post: string;
}

/** Names of the things at the end of the last way, and of a way out that the dog is cast away from. */
const ASKED: EndNames = { dummy: 'asked', post: 'asked-post' };
const PASSED: EndNames = { dummy: 'memory', post: 'post' };

/** Game is not of the handler's laying: it is drawn as what it is, and nobody is sent to put it out. */
function thingsAt(end: WayEnd | null, names: EndNames): Thing[] {
  if (!end) return [];
  const { at, goal, hasDummy, thrown } = end;
  const lies: Thing = { thing: names.dummy, kind: 'dummy', ...at, how: thrown ? 'thrown' : 'placed' };
  const post: Thing = { thing: names.post, kind: 'post', ...at, how: 'placed' };
  if (goal === 'game') return [{ thing: names.dummy, kind: 'other', ...at }];
  return [...(goal === 'post' ? [post] : []), ...(hasDummy ? [lies] : [])];
}

/** Whether a thing of a layout is what its rep is about. */
export const isAsked = ({ thing }: Thing): boolean => thing === ASKED.dummy || thing === ASKED.post;

/** What the leg that sends the dog to a thing calls it, `null` where none says so. A dummy at a post is no post. */
export function goalOfThing({ thing, kind }: Thing, shape: ChainShape): Goal | null {
  const names = (end: EndNames) => thing === end.dummy || thing === end.post;
  const goal = names(ASKED) ? shape.asked?.goal : names(PASSED) ? shape.passed?.goal : null;
  return goal === 'post' && kind !== 'post' ? null : (goal ?? null);
}

/** Dummies not asked for: by turns right and left of the line at the ask's gap, a little farther round each time. */
function otherPlace(shape: ChainShape, n: number): PlanePoint {
  const gapRad = ((shape.gapDeg + 15 * Math.floor(n / 2)) * Math.PI) / 180;
  const awayFromCast = shape.castSide === 'right' ? -1 : 1;
  const side = n % 2 === 0 ? awayFromCast : -awayFromCast;
  return alongM(SEND, side * gapRad, Math.max(6, shape.outM * 0.85));
}

function handlerPlace(shape: ChainShape): PlanePoint {
  if (shape.castFromSit || shape.comesHome) return SEND;
  if (shape.handlerPlace === 'apart')
    return { eastM: shape.castSide === 'right' ? -APART_M : APART_M, northM: 0 };
  if (shape.handlerPlace === 'between' && shape.outM > 5) {
    return { eastM: 1, northM: Math.min(10, shape.outM * BETWEEN_SHARE) };
  }
  return SEND;
}
