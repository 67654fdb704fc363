import { finiteBetween } from '../quantity/index.ts';

/**
 * Wet-bulb temperature from air and humidity at sea level, degrees Celsius (Stull2011), stated error -1.0 to +0.65 C. `null` outside
 * -20 to 50 C, where it does not hold. Humidity outside 5 to 99 % is taken as the nearer of the two. Checked on his worked example.
 * @throws RangeError outside -60 to 60 C, 0 to 100 %
 */
export function wetBulbC(airC: number, humidityPct: number): number | null {
  finiteBetween('airC', airC, -60, 60);
  const r = Math.min(99, Math.max(5, finiteBetween('humidityPct', humidityPct, 0, 100)));
  if (airC < -20 || airC > 50) return null;
  return (
    airC * Math.atan(0.151977 * Math.sqrt(r + 8.313659)) +
    Math.atan(airC + r) -
    Math.atan(r - 1.676331) +
    0.00391838 * r ** 1.5 * Math.atan(0.023101 * r) -
    4.686035
  );
}
