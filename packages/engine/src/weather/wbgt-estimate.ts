import { finiteBetween } from '../quantity/index.ts';
import { vapourPressureHPa } from './vapour-pressure.ts';
import { wetBulbC } from './wet-bulb.ts';

/** The sun that the bureau's estimate has in it: "moderately strong" (our judgement, 2026, of its share of full sun). */
const SUN_TAKEN = 0.7;

/**
 * Wet-bulb globe temperature without a globe, degrees Celsius: `0.567 T + 0.393 e + 3.94` (ACSM1984, as the Australian Bureau of Meteorology
 * prints it), which takes moderately strong sun and a light wind. Where the sun is told, it goes straight from shade,
 * `0.7 Tw + 0.3 T` (ISO7243, globe and natural wet bulb taken as those of still shade), through that figure at 0.7 of full sun (our
 * judgement). Too high in wind and at night.
 * @throws RangeError outside -60 to 60 C, 0 to 100 %, sun 0 to 1
 */
export function wbgtEstimateC(airC: number, humidityPct: number, sun?: number): number {
  const inSunC = 0.567 * airC + 0.393 * vapourPressureHPa(airC, humidityPct) + 3.94;
  if (sun === undefined) return inSunC;
  finiteBetween('sun', sun, 0, 1);
  const shadeC = 0.7 * (wetBulbC(airC, humidityPct) ?? airC) + 0.3 * airC;
  return shadeC + (sun / SUN_TAKEN) * (inSunC - shadeC);
}
