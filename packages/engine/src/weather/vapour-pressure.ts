import { finiteBetween } from '../quantity/index.ts';

/**
 * Pressure of the water vapour in air, hPa: `RH / 100 * 6.105 exp(17.27 T / (237.7 + T))` (Steadman1994, as the Australian Bureau of
 * Meteorology prints it).
 * @throws RangeError outside -60 to 60 C, 0 to 100 %
 */
export function vapourPressureHPa(airC: number, humidityPct: number): number {
  finiteBetween('airC', airC, -60, 60);
  finiteBetween('humidityPct', humidityPct, 0, 100);
  return (humidityPct / 100) * 6.105 * Math.exp((17.27 * airC) / (237.7 + airC));
}
