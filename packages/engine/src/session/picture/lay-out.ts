import { alongM, type Layout, type PlanePoint, SEND, type Thing } from '../../ground/index.ts';
import { type ChainShape, chainShape, type LaidLeg } from './chain-shape.ts';

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
  const things: Thing[] = [];
  if (shape.asked) {
    things.push({ thing: 'asked', kind: 'dummy', ...shape.asked, how: shape.thrown ? 'thrown' : 'placed' });
  }
  if (shape.memory) {
    things.push({
      thing: 'memory',
      kind: shape.memoryIsPost ? 'post' : 'dummy',
      ...shape.memory,
      how: 'placed',
    });
  }
  for (let n = 0; n < shape.others - (shape.memory && !shape.memoryIsPost ? 1 : 0); n++) {
    things.push({ thing: `other-${n + 1}`, kind: 'dummy', ...otherPlace(shape, n), how: 'placed' });
  }
  return { handlerAt: handlerPlace(shape), sendFrom, things };
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
