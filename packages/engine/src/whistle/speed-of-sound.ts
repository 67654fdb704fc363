import { finiteBetween } from '../quantity/index.ts';

/**
 * Speed of sound in air, `c = 343.2 sqrt(T / 293.15)` m/s with T in kelvin (ISO9613-1, annex A). Humid air is up to 2.5 m/s
 * faster at 30 C (Cramer1993), under 1 % of the delay, and left out; so is wind, which adds or takes its own speed along the way.
 * @throws RangeError below -60 C or above 60 C
 */
export function speedOfSoundMPerS(airC: number): number {
  return 343.2 * Math.sqrt((finiteBetween('airC', airC, -60, 60) + 273.15) / 293.15);
}
