import { CARE_LIMITS, type Heat } from '../../weather/index.ts';
import { sessionMinutes } from '../next/next-rep.ts';

/**
 * What bounds a plan before anything is chosen: age and heat by the limits of care (contract, "A plan"); the rest is our judgement,
 * 2026, common practice, no source.
 */
const LONGEST = { minutes: 25, reps: 20 } as const;
/** A puppy is asked little, and often; and so is a dog of which nothing is known. */
const FEW_REPS = 8;
export const YOUNG_MONTHS = CARE_LIMITS.grownMonths;

/** The contract's limits for puppies and heat, for what a plan says of itself. */
export const MOST_IN = {
  puppyMonths: CARE_LIMITS.puppyMonths,
  puppyMinutes: CARE_LIMITS.puppyMinutes,
  heatReps: CARE_LIMITS.hotReps,
  heatMinutes: CARE_LIMITS.hotMinutes,
} as const;

/** Most minutes and reps of a session: what was asked for, the dog's age and record, the heat, and that short sessions teach best. */
export function mostOf(
  minutes: number,
  ageMonths: number | null,
  heat: Heat,
  isNew: boolean,
): { readonly minutes: number; readonly reps: number } {
  const isYoung = ageMonths !== null && ageMonths < YOUNG_MONTHS;
  const most = Math.min(minutes, LONGEST.minutes, isYoung ? sessionMinutes(ageMonths) : LONGEST.minutes);
  const isPuppy = ageMonths !== null && ageMonths < MOST_IN.puppyMonths;
  const reps = isPuppy || isNew ? FEW_REPS : LONGEST.reps;
  if (heat === 'fine') return { minutes: most, reps };
  return heat === 'none'
    ? { minutes: 0, reps: 0 }
    : { minutes: Math.min(most, MOST_IN.heatMinutes), reps: Math.min(reps, MOST_IN.heatReps) };
}

interface LegWay {
  readonly ask: {
    readonly distanceM?: number | undefined;
    readonly castM?: number | undefined;
    readonly obstacle?: number | undefined;
  };
}

/** Whether a chain may be asked of a dog of this age: under a year no obstacle of 2 and more and no way over 80 m. */
export function suitsAge(legs: readonly LegWay[], ageMonths: number | null): boolean {
  if (ageMonths === null || ageMonths >= YOUNG_MONTHS) return true;
  return legs.every(
    ({ ask }) =>
      (ask.obstacle ?? 0) < CARE_LIMITS.youngObstacle &&
      (ask.distanceM ?? 0) <= CARE_LIMITS.youngLineM &&
      (ask.castM ?? 0) <= CARE_LIMITS.youngLineM,
  );
}
