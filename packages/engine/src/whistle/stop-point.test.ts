import { describe, expect, it } from 'vitest';
import { blowWhenDogAtM, overrunM, speedOfSoundMPerS, usualStopConditions } from './stop-point.ts';

describe('where the dog is when the whistle blows', () => {
  it('has the speed of sound that ISO 9613-1 works with: 343.2 m/s at 20 C (0.2: the standard rounds to 0.1)', () => {
    expect(Math.abs(speedOfSoundMPerS(20) - 343.2)).toBeLessThan(0.2);
  });

  it('overruns by delay and braking, worked by hand', () => {
    // 340 m out in air where sound takes 1 s, 5 m/s, 0.35 s, braking 6 m/s2: 5 * 1.35 + 25 / 12 = 8.8333
    const airC = 273.15 * ((340 / 331.3) ** 2 - 1);
    expect(overrunM(340, { ...usualStopConditions, airC })).toBeCloseTo(8.8333, 3);
  });

  it('puts the halt where it was wanted: whistle point and overrun add up', () => {
    for (const haltAtM of [10, 18, 35, 80]) {
      const blowAtM = blowWhenDogAtM(haltAtM);
      expect(blowAtM + overrunM(blowAtM)).toBeCloseTo(haltAtM, 9);
    }
  });

  it('gives 0 when the halt is wanted sooner than can be: blowing at once would still overrun', () => {
    expect(blowWhenDogAtM(0)).toBe(0);
    expect(blowWhenDogAtM(0.2)).toBeLessThan(0.2);
  });

  it('says no to figures that cannot be', () => {
    expect(() => blowWhenDogAtM(-1)).toThrow(RangeError);
    expect(() => overrunM(Number.NaN)).toThrow(RangeError);
    expect(() => speedOfSoundMPerS(1000)).toThrow(RangeError);
  });
});
