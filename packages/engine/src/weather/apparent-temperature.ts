import { finiteBetween } from '../quantity/index.ts';
import { vapourPressureHPa } from './vapour-pressure.ts';

/**
 * Apparent temperature in shade with wind, degrees Celsius: `T + 0.33 e - 0.70 v - 4.00` (Steadman1994), wind in m/s as
 * measured at 10 m. A human figure; here it says how far wind cools a cold day.
 * @throws RangeError outside -60 to 60 C, 0 to 100 %, 0 to 60 m/s
 */
export function apparentTemperatureC(airC: number, humidityPct: number, windMPerS: number): number {
  finiteBetween('windMPerS', windMPerS, 0, 60);
  return airC + 0.33 * vapourPressureHPa(airC, humidityPct) - 0.7 * windMPerS - 4;
}
