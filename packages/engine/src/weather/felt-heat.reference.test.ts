import { describe, expect, it } from 'vitest';
import felt from '../../reference/felt-heat.json' with { type: 'json' };
import { apparentTemperatureC } from './apparent-temperature.ts';
import { heatIndexC, heatIndexRegressionF } from './heat-index.ts';
import { vapourPressureHPa } from './vapour-pressure.ts';
import { wbgtEstimateC } from './wbgt-estimate.ts';
import { wetBulbC } from './wet-bulb.ts';

describe('heat index', () => {
  const table = felt.table as [airF: number, humidityPct: number, printedF: number][];

  it('has 133 printed cells', () => expect(table).toHaveLength(133));

  it.each(table)('the printed table: %d F, %d %%: %d F', (airF, humidityPct, printedF) => {
    // 1.0 F: whole degrees are printed, and three cells go to the next one.
    expect(Math.abs(heatIndexRegressionF(airF, humidityPct) - printedF)).toBeLessThan(1);
  });

  it.each(felt.cases as [number, number, number][])(
    'the algorithm: %d F, %d %%: %d F',
    (airF, humidityPct, indexF) => {
      const ours = heatIndexC((airF - 32) / 1.8, humidityPct) * 1.8 + 32;
      // 0.001 F: the cases have four decimals; 68 F and the like turn to Celsius and back within 1e-13.
      expect(Math.abs(ours - indexF)).toBeLessThan(0.001);
    },
  );

  it('is the air itself in the cold', () => {
    expect(heatIndexC(4, 90)).toBe(4);
    expect(heatIndexC(-20, 50)).toBe(-20);
  });
});

describe('wet bulb, WBGT and apparent temperature', () => {
  it('Stull’s worked example: 20 C and 50 % make 13.7 C; 13.699342 in two public test suites', () =>
    expect(wetBulbC(20, 50)).toBeCloseTo(13.699342, 6));

  it('the bureau’s estimate at 30 C and 80 %: 307.395084 K, 34.245084 C (a public test suite)', () =>
    // 1e-5: kelvin turned by 273.15.
    expect(Math.abs(wbgtEstimateC(30, 80) - 34.245084)).toBeLessThan(1e-5));

  it.each(felt.grid as [number, number, number, number, number, number][])(
    '%d C, %d %%: wet bulb %d, vapour %d hPa, WBGT %d, apparent %d',
    (airC, humidityPct, wetC, vapourHPa, wbgtC, apparentC) => {
      // 0.001 C and hPa: the grid has four decimals.
      expect(Math.abs(wetBulbC(airC, humidityPct)! - wetC)).toBeLessThan(0.001);
      expect(Math.abs(vapourPressureHPa(airC, humidityPct) - vapourHPa)).toBeLessThan(0.001);
      expect(Math.abs(wbgtEstimateC(airC, humidityPct) - wbgtC)).toBeLessThan(0.001);
      expect(Math.abs(apparentTemperatureC(airC, humidityPct, 2) - apparentC)).toBeLessThan(0.001);
    },
  );

  it('can’t say a wet bulb outside its range', () => {
    expect(wetBulbC(-21, 50)).toBeNull();
    expect(wetBulbC(51, 50)).toBeNull();
  });

  it('says no to air that is none', () => {
    expect(() => heatIndexC(Number.NaN, 50)).toThrow(RangeError);
    expect(() => wetBulbC(20, 101)).toThrow(RangeError);
    expect(() => wbgtEstimateC(20, 50, 2)).toThrow('sun: expected 0..1, got 2');
    expect(() => apparentTemperatureC(20, 50, -1)).toThrow(RangeError);
  });
});
