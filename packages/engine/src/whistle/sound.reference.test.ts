import { describe, expect, it } from 'vitest';
import absorption from '../../reference/air-absorption.json' with { type: 'json' };
import sound from '../../reference/whistle-sound.json' with { type: 'json' };
import { airAbsorptionDbPerKm } from './air-absorption.ts';
import { levelAtDbSpl, usualSound } from './carrying.ts';
import { dogThresholdDbSpl } from './dog-hearing.ts';
import { allowedPerDayS } from './hearing-dose.ts';
import { speedOfSoundMPerS } from './speed-of-sound.ts';

type Printed = [airC: number, humidityPct: number, pitchHz: number, printed: string];

/** Half of the last digit of a printed figure of three significant digits at most: "0.0784" 0.00005, "129" and "129.0" 0.5. */
function halfLastDigit(printed: string): number {
  const figures = printed.replace(/\.0$/, '');
  const decimals = figures.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

describe('absorption by air', () => {
  const [part1, part2] = [absorption.part1, absorption.part2] as [Printed[], Printed[]];

  it('has 190 values of one table and 47 of the other', () =>
    expect([part1.length, part2.length]).toEqual([190, 47]));

  it.each(part1)(
    'ISO 9613-1, table 1: %d C, %d %%, %d Hz: %s dB/km',
    (airC, humidityPct, pitchHz, printed) => {
      const off = Math.abs(airAbsorptionDbPerKm(pitchHz, { airC, humidityPct }) - Number(printed));
      // Three digits are printed; a trailing zero may be lost in the transcriptions, so half a unit of the third digit.
      const third = 0.5 * 10 ** (Math.floor(Math.log10(Number(printed))) - 2);
      expect(off).toBeLessThanOrEqual(third * 1.0001);
    },
  );

  it.each(part2)(
    'ISO 9613-2, table 2: %d C, %d %%, %d Hz: %s dB/km',
    (airC, humidityPct, pitchHz, printed) => {
      const off = Math.abs(airAbsorptionDbPerKm(pitchHz, { airC, humidityPct }) - Number(printed));
      expect(off).toBeLessThanOrEqual(halfLastDigit(printed) * 1.0001);
    },
  );

  it.each(sound.pressure as [number, number, number, number, number][])(
    '%d C, %d %%, %d kPa, %d Hz',
    (airC, humidityPct, pressureKPa, pitchHz, dbPerKm) => {
      expect(
        Math.abs(airAbsorptionDbPerKm(pitchHz, { airC, humidityPct, pressureKPa }) - dbPerKm),
      ).toBeLessThan(1e-3);
    },
  );
});

describe('sound on its way', () => {
  it.each(sound.speed as [number, number][])('at %d C sound runs %d m/s', (airC, mPerS) =>
    expect(Math.abs(speedOfSoundMPerS(airC) - mPerS)).toBeLessThan(1e-3),
  );

  it.each(sound.propagation as [number, number, number, number, number, number][])(
    'power level %d dB at %d m, %d C, %d %%, %d Hz: %d dB',
    (powerDb, distanceM, airC, humidityPct, pitchHz, levelDbSpl) => {
      // The examples start from sound power: 11 dB less at 1 m, less the absorption of the first metre, which ours counts from 1 m on.
      const firstMetreDb = airAbsorptionDbPerKm(pitchHz, { airC, humidityPct }) / 1000;
      const at1m = powerDb - 11 - firstMetreDb;
      const level = levelAtDbSpl(distanceM, { ...usualSound, levelDbSpl: at1m, pitchHz, airC, humidityPct });
      expect(Math.abs(level - levelDbSpl)).toBeLessThan(0.002);
    },
  );

  it('loses 40 dB over the first 100 m by spreading alone: 51.0 dB from the power level (ISO 9613-2, equation 7)', () => {
    // 20 Hz loses under 0.01 dB to the air on this way.
    const level = levelAtDbSpl(100, { ...usualSound, levelDbSpl: 100, pitchHz: 20 });
    expect(Math.abs(level - 60)).toBeLessThan(0.01);
  });
});

describe('ears', () => {
  it.each(sound.audiogram as [number, number][])('a dog just hears %d Hz at %d dB (Heffner 1983)', (hz, db) =>
    expect(dogThresholdDbSpl(hz)).toBeCloseTo(db, 9),
  );

  it('interpolates in the logarithm of pitch: 5.5 kHz is 1.7 dB', () => {
    // 4 - 5 ln(5.5 / 4) / ln 2 = 1.7028; the source states 1.7.
    expect(dogThresholdDbSpl(5_500)).toBeCloseTo(1.7028, 4);
    expect(() => dogThresholdDbSpl(49)).toThrow(RangeError);
    expect(() => dogThresholdDbSpl(50_001)).toThrow(RangeError);
  });

  it.each(sound.allowed as [number, number][])('%d dB(A) may be heard for %d s a day (NIOSH 1998)', (db, s) =>
    expect(Math.abs(allowedPerDayS(db) - s)).toBeLessThan(0.01),
  );
});
