/** Radians in one degree. */
export const RAD_PER_DEG = Math.PI / 180;

/** The same bearing in 0 (included) to 360 (left out) degrees. */
export function wholeCircleDeg(bearingDeg: number): number {
  const turned = bearingDeg % 360;
  const positive = turned < 0 ? turned + 360 : turned;
  return positive >= 360 ? 0 : positive + 0;
}

/** The angle between two bearings, 0 to 180 degrees, whichever way round is shorter. */
export function angleApartDeg(aDeg: number, bDeg: number): number {
  const apart = Math.abs(wholeCircleDeg(aDeg) - wholeCircleDeg(bDeg));
  return Math.min(apart, 360 - apart);
}
