import { describe, expect, it } from 'vitest';
import { careLevel, coldLevel, heatLevel, heatOf, isHot } from './care-level.ts';

describe('what the weather leaves of a session', () => {
  it('keeps the contract’s rule: 30 C, or 27 C with 70 %', () => {
    expect([{ airC: 30 }, { airC: 27, humidityPct: 70 }].map(isHot)).toEqual([true, true]);
    expect([{ airC: 29.9 }, { airC: 27, humidityPct: 69.9 }, {}].map(isHot)).toEqual([false, false, false]);
    expect(heatOf({ airC: 30, humidityPct: 40 })).toBe('short');
    expect(heatOf({ airC: 29.9, humidityPct: 40 })).toBe('fine');
    expect(heatOf(undefined)).toBe('fine');
  });

  it.each([
    [{ airC: 18, humidityPct: 60 }, 'fine'],
    [{ airC: 24, humidityPct: 30 }, 'care'],
    [{ airC: 28, humidityPct: 75 }, 'short'],
    [{ airC: 33 }, 'stop'],
    [{ airC: 30, humidityPct: 70 }, 'stop'],
    // Heat index at 29.44 C (85 F) and 98 %: over 39.4 C (103 F, danger): a stop by the index, not by the air.
    [{ airC: 29.4, humidityPct: 98 }, 'stop'],
    // 26 C and 40 % has an index of 25.8 C in shade; full sun adds 8.3: 34.1, extreme caution.
    [{ airC: 26, humidityPct: 40, sun: 1 }, 'short'],
    [{ airC: 26, humidityPct: 40, sun: 0 }, 'care'],
  ] as const)('heat at %j: %s', (weather, level) => expect(heatLevel(weather)).toBe(level));

  it.each([
    // Apparent temperature by hand at 0 C, 70 %: 0 + 0.33 * 4.27 - 0.7 v - 4: -2.6 in calm, -13.1 at 15 m/s.
    [{ airC: 0, humidityPct: 70 }, 'care'],
    [{ airC: 0, humidityPct: 70, windMPerS: 15 }, 'short'],
    [{ airC: 9, humidityPct: 70 }, 'fine'],
    [{}, 'fine'],
  ] as const)('cold at %j: %s', (weather, level) => {
    expect(coldLevel(weather)).toBe(level);
    expect(careLevel(weather)).toBe(level);
  });
});
