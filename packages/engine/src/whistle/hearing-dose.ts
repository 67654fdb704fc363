import { finiteBetween } from '../quantity/index.ts';

/**
 * Limits of noise at work for people, A-weighted over a day of 8 hours: the recommended limit with 3 dB exchange
 * (NIOSH1998), and the European action values and limit (EU2003-10). There are none for dogs.
 */
export const NOISE_LIMITS = { nioshDb: 85, lowerActionDb: 80, upperActionDb: 85, limitDb: 87 } as const;
const WORKING_DAY_S = 8 * 3600;

/**
 * How long a person may hear a level in a day: `8 h / 2^((L - limit) / 3)` seconds, the equal-energy rule of NIOSH1998 and, with their
 * own levels, of EU2003-10. A whistle's tone counts nearly whole under A-weighting (within 1.5 dB from 1 to 6 kHz).
 * @throws RangeError for a level outside 0 to 150 dB
 */
export function allowedPerDayS(levelDb: number, limitDb: number = NOISE_LIMITS.nioshDb): number {
  finiteBetween('levelDb', levelDb, 0, 150);
  return Math.min(24 * 3600, WORKING_DAY_S / 2 ** ((levelDb - limitDb) / 3));
}

/** Blasts of `blastS` seconds that use up the day's dose at a level, rounded down. */
export function blastsPerDay(levelDb: number, blastS = 0.5): number {
  finiteBetween('blastS', blastS, 0.01, 60);
  return Math.floor(allowedPerDayS(levelDb) / blastS);
}
