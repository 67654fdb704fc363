import { RAD_PER_DEG, wholeCircleDeg } from '../quantity/index.ts';
import type { PlanePoint } from './layout.ts';

/** Bearing from one point of the plane to another, 0 to 360 degrees clockwise from north; 0 where they coincide. */
export function bearingDegOf(from: PlanePoint, to: PlanePoint): number {
  return wholeCircleDeg(Math.atan2(to.eastM - from.eastM, to.northM - from.northM) / RAD_PER_DEG);
}

/**
 * The angle at `at` between the ways to `a` and to `b`, 0 to 180 degrees, from `|u x v|` and `u . v` so that small and
 * flat angles keep their digits; 0 where one of them lies at `at`.
 */
export function gapDegAt(at: PlanePoint, a: PlanePoint, b: PlanePoint): number {
  const [ae, an] = [a.eastM - at.eastM, a.northM - at.northM];
  const [be, bn] = [b.eastM - at.eastM, b.northM - at.northM];
  return Math.atan2(Math.abs(ae * bn - an * be), ae * be + an * bn) / RAD_PER_DEG;
}
