import { expect, it } from 'vitest';
import { airAbsorptionDbPerM, soundSpeedMPerS } from './air-absorption.ts';

/**
 * ISO 9613-1:1993 Table 1 as transcribed in public test suites: temperature, humidity, exact midband frequency, dB/km. Half of the last
 * printed digit, which is where the table rounds.
 */
it.each([
  [-20, 10, 1995.2623, 2.1, 0.005],
  [-20, 10, 3981.0717, 3.86, 0.005],
  [-20, 10, 7943.2823, 10.9, 0.05],
  [-20, 70, 3981.0717, 20.2, 0.05],
  [-20, 70, 7943.2823, 27.8, 0.05],
  [10, 50, 3981.0717, 46.7, 0.05],
  [15, 70, 3981.0717, 26.4, 0.05],
  [20, 50, 1995.2623, 9.86, 0.005],
  [25, 80, 6309.5734, 40.8, 0.05],
  [25, 80, 7943.2823, 59.8, 0.05],
])(
  'at %d °C and %d %% air takes from %d Hz %d dB/km',
  (temperatureC, relativeHumidityPct, hz, dbPerKm, half) => {
    const found = 1000 * airAbsorptionDbPerM(hz, { temperatureC, relativeHumidityPct });
    expect(Math.abs(found - dbPerKm)).toBeLessThanOrEqual(half);
  },
);

it('sound goes at 343.2 m/s at 20 °C', () => {
  expect(soundSpeedMPerS(20)).toBeCloseTo(343.2, 9);
});
