import type { PlanePoint } from './layout.ts';

/** The origin of a rep's own layout: where the dog is sent from. */
export const SEND: PlanePoint = { eastM: 0, northM: 0 };

/** The point `distanceM` from `from` on a bearing in radians clockwise from north. */
export function alongM(from: PlanePoint, bearingRad: number, distanceM: number): PlanePoint {
  return {
    eastM: from.eastM + distanceM * Math.sin(bearingRad),
    northM: from.northM + distanceM * Math.cos(bearingRad),
  };
}

/** Straight distance between two points of the plane. */
export function distanceBetweenM(a: PlanePoint, b: PlanePoint): number {
  return Math.hypot(a.eastM - b.eastM, a.northM - b.northM);
}

/**
 * The bearing a cast sends the dog on, radians clockwise from north, when home lies due south. `turnDeg` counts from
 * the way home: 90 is square to the side, 180 straight on away from the handler. Left is the handler's left (west
 * as the dog faces him from the north); a back cast of less than 180 bends to the right.
 */
export function castBearingRad(side: 'left' | 'right' | 'back', turnDeg: number): number {
  if (!(turnDeg >= 0 && turnDeg <= 180)) throw new RangeError(`turnDeg: expected 0..180, got ${turnDeg}`);
  const turnRad = (turnDeg * Math.PI) / 180;
  return side === 'left' ? Math.PI + turnRad : Math.PI - turnRad;
}
