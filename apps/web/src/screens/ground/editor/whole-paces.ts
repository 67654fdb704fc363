import { alongM, bearingDegOf, distanceBetweenM, PACE_M, type PlanePoint } from '@sedgeline/engine/ground';

/** The place nearest by that is whole paces and whole degrees from where one starts to pace; one pace at least. */
export function toWholePaces(from: PlanePoint, to: PlanePoint, paceM: number = PACE_M): PlanePoint {
  const paces = Math.max(1, Math.round(distanceBetweenM(from, to) / paceM));
  return alongM(from, (Math.round(bearingDegOf(from, to)) * Math.PI) / 180, paces * paceM);
}
