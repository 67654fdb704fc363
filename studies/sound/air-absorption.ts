/** The air that a sound crosses. */
export interface Air {
  temperatureC: number;
  relativeHumidityPct: number;
}

/**
 * Pure-tone attenuation by air at one atmosphere, dB per metre: ISO 9613-1:1993, equations (3) to (5) and annex B [ISO9613-1]. Good to about
 * 10 % in -20 to 50 °C. The study's own, so that it shares nothing with the engine; checked in `air-absorption.test.ts` against Table 1.
 */
export function airAbsorptionDbPerM(frequencyHz: number, { temperatureC, relativeHumidityPct }: Air): number {
  const kelvin = temperatureC + 273.15;
  const warmth = kelvin / 293.15;
  const saturation = 10 ** (-6.8346 * (273.16 / kelvin) ** 1.261 + 4.6151);
  const vapourPct = relativeHumidityPct * saturation;
  const oxygenHz = 24 + (4.04e4 * vapourPct * (0.02 + vapourPct)) / (0.391 + vapourPct);
  const nitrogenHz = warmth ** -0.5 * (9 + 280 * vapourPct * Math.exp(-4.17 * (warmth ** (-1 / 3) - 1)));
  const square = frequencyHz ** 2;
  const classical = 1.84e-11 * Math.sqrt(warmth);
  const oxygen = (0.01275 * Math.exp(-2239.1 / kelvin)) / (oxygenHz + square / oxygenHz);
  const nitrogen = (0.1068 * Math.exp(-3352 / kelvin)) / (nitrogenHz + square / nitrogenHz);
  return 8.686 * square * (classical + warmth ** -2.5 * (oxygen + nitrogen));
}

/** Speed of sound in still air, m/s: 343.2 · √(T / 293.15 K) [ISO9613-1]. */
export const soundSpeedMPerS = (temperatureC: number) => 343.2 * Math.sqrt((temperatureC + 273.15) / 293.15);
