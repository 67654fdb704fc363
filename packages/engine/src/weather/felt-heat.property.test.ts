import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apparentTemperatureC } from './apparent-temperature.ts';
import { CARE_LEVELS, careLevel, heatLevel, heatOf, isHot } from './care-level.ts';
import { heatIndexC } from './heat-index.ts';
import { wbgtEstimateC } from './wbgt-estimate.ts';
import { wetBulbC } from './wet-bulb.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rank = (level: (typeof CARE_LEVELS)[number]) => CARE_LEVELS.indexOf(level);

describe('laws of heat', () => {
  it('the heat index grows with humidity above 27 C, from 40 % on, where the printed table begins', () => {
    fc.assert(
      fc.property(between(27, 45), between(40, 99), between(0.01, 1), (airC, humidityPct, more) => {
        expect(heatIndexC(airC, humidityPct + more)).toBeGreaterThan(heatIndexC(airC, humidityPct));
      }),
    );
  });

  it('the wet bulb lies under the air and grows with both', () => {
    fc.assert(
      fc.property(between(0, 45), between(10, 98), between(0.1, 1), (airC, humidityPct, more) => {
        const wetC = wetBulbC(airC, humidityPct)!;
        // 0.7 C: the formula's stated error upwards is 0.65 C.
        expect(wetC).toBeLessThan(airC + 0.7);
        expect(wetBulbC(airC, humidityPct + more)!).toBeGreaterThan(wetC);
        expect(wetBulbC(airC + more, humidityPct)!).toBeGreaterThan(wetC);
      }),
    );
  });

  it('sun never cools and wind never warms', () => {
    fc.assert(
      fc.property(
        between(0, 45),
        between(5, 100),
        between(0, 0.9),
        between(0, 0.1),
        (airC, humidityPct, sun, more) => {
          expect(wbgtEstimateC(airC, humidityPct, sun + more)).toBeGreaterThanOrEqual(
            wbgtEstimateC(airC, humidityPct, sun) - 1e-9,
          );
          expect(apparentTemperatureC(airC, humidityPct, 10 * (sun + more))).toBeLessThanOrEqual(
            apparentTemperatureC(airC, humidityPct, 10 * sun),
          );
        },
      ),
    );
  });

  it('hotter, moister or sunnier is never an easier day', () => {
    fc.assert(
      fc.property(
        between(15, 44),
        between(40, 99),
        between(0, 1),
        between(0, 1),
        (airC, humidityPct, sun, more) => {
          const level = rank(heatLevel({ airC, humidityPct }));
          expect(rank(heatLevel({ airC: airC + more, humidityPct }))).toBeGreaterThanOrEqual(level);
          expect(rank(heatLevel({ airC, humidityPct: humidityPct + more }))).toBeGreaterThanOrEqual(level);
          expect(rank(heatLevel({ airC, humidityPct, sun }))).toBeGreaterThanOrEqual(level);
          expect(rank(careLevel({ airC, humidityPct }))).toBeGreaterThanOrEqual(level);
        },
      ),
    );
  });

  it('a plan is bounded wherever the contract calls it hot', () => {
    fc.assert(
      fc.property(between(-20, 50), fc.option(between(0, 100), { nil: undefined }), (airC, humidityPct) => {
        if (isHot({ airC, humidityPct })) expect(heatOf({ airC, humidityPct })).not.toBe('fine');
      }),
    );
  });
});
