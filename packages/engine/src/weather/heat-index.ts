import { finiteBetween } from '../quantity/index.ts';

const fahrenheit = (airC: number): number => 1.8 * airC + 32;
const celsius = (airF: number): number => (airF - 32) / 1.8;

/** Below this the index says nothing and is the air itself (our judgement, 2026): 40 F. */
const LEAST_F = 40;
/** From this value of the simple formula on the regression is used. */
const REGRESSION_FROM_F = 80;

/** The regression, degrees Fahrenheit (Rothfusz1990), fitted to Steadman's tables within 1.3 F. */
export function heatIndexRegressionF(airF: number, humidityPct: number): number {
  const [t, r] = [airF, humidityPct];
  return (
    -42.379 +
    2.04901523 * t +
    10.14333127 * r -
    0.22475541 * t * r -
    0.00683783 * t * t -
    0.05481717 * r * r +
    0.00122874 * t * t * r +
    0.00085282 * t * r * r -
    0.00000199 * t * t * r * r
  );
}

/** What the weather service adds to the regression in dry and in very humid air, degrees Fahrenheit. */
function adjustmentF(airF: number, humidityPct: number): number {
  if (humidityPct < 13 && airF >= 80 && airF <= 112)
    return -((13 - humidityPct) / 4) * Math.sqrt((17 - Math.abs(airF - 95)) / 17);
  if (humidityPct > 85 && airF >= 80 && airF <= 87) return ((humidityPct - 85) / 10) * ((87 - airF) / 5);
  return 0;
}

/**
 * Heat index, degrees Celsius: how warm shade with a light wind feels to a person (Rothfusz1990; the weather service's algorithm). First the simple
 * formula `(T + 61 + 1.2 (T - 68) + 0.094 RH) / 2` in Fahrenheit; where that reaches 80 F, the regression with its
 * adjustments. A human index: no threshold of it is validated for dogs. Checked on the printed table and 20 cases.
 * @throws RangeError outside -60 to 60 C, 0 to 100 %
 */
export function heatIndexC(airC: number, humidityPct: number): number {
  const airF = fahrenheit(finiteBetween('airC', airC, -60, 60));
  finiteBetween('humidityPct', humidityPct, 0, 100);
  if (airF <= LEAST_F) return airC;
  const simpleF = 0.5 * (airF + 61 + (airF - 68) * 1.2 + humidityPct * 0.094);
  if (simpleF < REGRESSION_FROM_F) return celsius(simpleF);
  return celsius(heatIndexRegressionF(airF, humidityPct) + adjustmentF(airF, humidityPct));
}
