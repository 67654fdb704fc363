import { type GeoPoint, groundLine, localPlane, type PlanePoint } from '@sedgeline/engine/ground';

/** Where walking began: a place of the earth and what it is on the drawing. */
export interface WalkOrigin {
  readonly geo: GeoPoint;
  readonly at: PlanePoint;
}

/** Farther than this from where walking began is no field any more. */
const FARTHEST_M = 2000;

/** The place on the drawing where the device stands; `null` where that is farther off than a field reaches. */
export function walkedPlace(origin: WalkOrigin, here: GeoPoint): PlanePoint | null {
  const apartDeg = Math.abs(origin.geo.latDeg - here.latDeg);
  // A tenth of a degree of latitude is 11 km; distances as far as that need no reckoning.
  if (apartDeg > 0.1 || !isNear(origin.geo, here)) return null;
  const { eastM, northM } = localPlane(origin.geo).toPlane(here);
  return { eastM: origin.at.eastM + eastM, northM: origin.at.northM + northM };
}

function isNear(from: GeoPoint, to: GeoPoint): boolean {
  try {
    return groundLine(from, to).distanceM <= FARTHEST_M;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}
