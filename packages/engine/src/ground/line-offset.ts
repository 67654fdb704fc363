import type { PlanePoint } from './layout.ts';
import { distanceBetweenM } from './plane.ts';

/** Where a point lies as seen along a line. */
export interface LineOffset {
  /** From the line's start, along it; below 0 behind the start. */
  readonly alongM: number;
  /** From the line, positive to the right of it. */
  readonly acrossM: number;
}

/**
 * Along-track and cross-track of a point, from the line that starts at `from` and runs through `to` without end:
 * dot and cross product with the line's unit vector.
 * @throws RangeError where `from` and `to` are one point: there is no line
 */
export function lineOffset(from: PlanePoint, to: PlanePoint, point: PlanePoint): LineOffset {
  const lengthM = distanceBetweenM(from, to);
  if (!(lengthM > 0))
    throw new RangeError(`to: expected another point than from, got a line of ${lengthM} m`);
  const unitEast = (to.eastM - from.eastM) / lengthM;
  const unitNorth = (to.northM - from.northM) / lengthM;
  const eastM = point.eastM - from.eastM;
  const northM = point.northM - from.northM;
  return {
    alongM: eastM * unitEast + northM * unitNorth,
    acrossM: eastM * unitNorth - northM * unitEast,
  };
}

/** The least distance from a point to the stretch between two others, its ends included. */
export function clearanceToM(from: PlanePoint, to: PlanePoint, point: PlanePoint): number {
  const lengthM = distanceBetweenM(from, to);
  if (!(lengthM > 0)) return distanceBetweenM(from, point);
  const { alongM, acrossM } = lineOffset(from, to, point);
  if (alongM <= 0) return distanceBetweenM(from, point);
  return alongM >= lengthM ? distanceBetweenM(to, point) : Math.abs(acrossM);
}
