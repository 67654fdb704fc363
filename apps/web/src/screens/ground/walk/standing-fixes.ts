import { groundLine, surveyedPlace } from '@sedgeline/engine/ground';
import type { PlaceFix } from '../../../devices/watch-place.ts';

/** From here on a receiver that says how fast it goes is not standing: half a walk (our judgement, 2026). */
const WALKING_M_PER_S = 0.6;
/** A standing receiver's readings wander less than this, and less than this share of what they state (our judgement, 2026). */
const WANDERS_M = 3;
const WANDERS_SHARE = 0.75;
/** A reading that may be off by more is no place on a field; readings of ten minutes are enough. */
export const ROUGHEST_M = 200;
const MOST_FIXES = 600;

/** The readings taken while standing still: with the new one, or that alone where the device has moved. */
export function standingFixes(before: readonly PlaceFix[], fix: PlaceFix): readonly PlaceFix[] {
  if (!isUsable(fix)) return before;
  const mean = surveyedPlace(before);
  if (mean === null || (fix.speedMPerS ?? 0) > WALKING_M_PER_S) return [fix];
  if (Math.abs(mean.latDeg - fix.latDeg) > 0.1) return [fix];
  const { distanceM } = groundLine(mean, fix);
  if (distanceM > Math.max(WANDERS_M, WANDERS_SHARE * fix.accuracyM)) return [fix];
  return [...before, fix].slice(-MOST_FIXES);
}

function isUsable({ latDeg, lonDeg, accuracyM, atMs }: PlaceFix): boolean {
  return (
    Math.abs(latDeg) <= 90 &&
    Math.abs(lonDeg) <= 180 &&
    accuracyM > 0 &&
    accuracyM <= ROUGHEST_M &&
    Number.isFinite(atMs)
  );
}
