import { sessionMinutes } from '../next/next-rep.ts';
import type { PlanWeather } from './plan.ts';

/**
 * What bounds a plan before anything is chosen: contract, "A plan", for age and heat (cautious figures, not safe limits: the
 * vet's word goes first); the rest is our judgement, 2026, common practice, no source.
 */
const LONGEST = { minutes: 25, reps: 20 } as const;
const HEAT = { hotC: 30, closeC: 27, closeHumidityPct: 70, reps: 8, minutes: 10 } as const;
/** From here on no plan is made at all: our judgement, 2026. */
const TOO_HOT = { airC: 33, closeC: 30, closeHumidityPct: 70 } as const;
export const YOUNG_MONTHS = 12;
const YOUNG = { months: YOUNG_MONTHS, lineM: 80, obstacle: 2 } as const;

/** The contract's limits for puppies and heat, for what a plan says of itself. */
export const MOST_IN = {
  puppyMonths: 6,
  puppyMinutes: 12,
  heatReps: HEAT.reps,
  heatMinutes: HEAT.minutes,
} as const;

/** The heat of the day as it bounds a plan; not known is not hot. */
export type Heat = 'fine' | 'short' | 'none';

export function heatOf(weather: PlanWeather | undefined): Heat {
  const airC = weather?.airC ?? Number.NEGATIVE_INFINITY;
  const humidityPct = weather?.humidityPct ?? 0;
  const reaches = (hotC: number, closeC: number, closePct: number) =>
    airC >= hotC || (airC >= closeC && humidityPct >= closePct);
  if (reaches(TOO_HOT.airC, TOO_HOT.closeC, TOO_HOT.closeHumidityPct)) return 'none';
  return reaches(HEAT.hotC, HEAT.closeC, HEAT.closeHumidityPct) ? 'short' : 'fine';
}

/** Most minutes and reps of a session: what was asked for, the dog's age, the heat, and that short sessions teach best. */
export function mostOf(
  minutes: number,
  ageMonths: number | null,
  heat: Heat,
): { readonly minutes: number; readonly reps: number } {
  const isYoung = ageMonths !== null && ageMonths < YOUNG.months;
  const most = Math.min(minutes, LONGEST.minutes, isYoung ? sessionMinutes(ageMonths) : LONGEST.minutes);
  if (heat === 'fine') return { minutes: most, reps: LONGEST.reps };
  return heat === 'none'
    ? { minutes: 0, reps: 0 }
    : { minutes: Math.min(most, HEAT.minutes), reps: HEAT.reps };
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
  if (ageMonths === null || ageMonths >= YOUNG.months) return true;
  return legs.every(
    ({ ask }) =>
      (ask.obstacle ?? 0) < YOUNG.obstacle &&
      (ask.distanceM ?? 0) <= YOUNG.lineM &&
      (ask.castM ?? 0) <= YOUNG.lineM,
  );
}
