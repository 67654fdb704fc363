import { describe, expect, it } from 'vitest';
import { speedOfSoundMPerS } from './speed-of-sound.ts';
import { type StopConditions, usualStopConditions } from './stop-conditions.ts';
import { blowWhenDogAtM, stopAfterWhistle, stopAtPlace } from './stop-point.ts';

/** Air in which sound runs 340 m/s: T = 293.15 (340 / 343.2)^2 kelvin. */
const airOf340C = 293.15 * (340 / 343.2) ** 2 - 273.15;
const at340: StopConditions = { ...usualStopConditions, airC: airOf340C };

describe('the stop that follows a whistle', () => {
  it('worked by hand at full speed: the sound overtakes the running dog', () => {
    // 335 m out at 5 m/s, sound at 340: they meet after 335 / (340 - 5) = 1 s, at 340 m. Then 0.35 s at 5 m/s and 25 / 12 m of braking.
    const stop = stopAfterWhistle(335, at340);
    expect(stop.soundDelayS).toBeCloseTo(1, 9);
    expect(stop.dogHearsAtM).toBeCloseTo(340, 9);
    expect(stop.dogBrakesAtM).toBeCloseTo(341.75, 9);
    expect(stop.dogHaltsAtM).toBeCloseTo(343.83333, 5);
    expect(stop.overrunM).toBeCloseTo(8.83333, 5);
    // The handler decides 0.3 s earlier: 1.5 m.
    expect(stop.decideWhenDogAtM).toBeCloseTo(333.5, 9);
  });

  it('worked by hand while the dog gets going: it gathers speed through its own reaction', () => {
    // a = 4, v = 10: 0.5 m out at 0.5 s and 2 m/s. No sound delay but 0.5 / 340 = 1.5 ms (2 m/s: 3 mm). Reaction 0.5 s: at 1 s 2 m out and 4 m/s; braking 16 / 8 = 2 m.
    const stop = stopAfterWhistle(0.5, {
      ...at340,
      runSpeedMPerS: 10,
      accelerationMPerS2: 4,
      brakingMPerS2: 4,
      reactionDogS: 0.5,
    });
    // 0.02: the 1.5 ms of sound at 4 m/s, and twice that again in braking.
    expect(Math.abs(stop.dogHaltsAtM - 4)).toBeLessThan(0.02);
    expect(stop.soundDelayS).toBeGreaterThan(0.00147);
    expect(stop.soundDelayS).toBeLessThan(0.00149);
  });

  it('agrees with the run played in steps of a tenth of a millisecond', () => {
    for (const blowAtM of [0.2, 1, 2.4, 2.6, 15, 120]) {
      const conditions = { ...usualStopConditions, reactionDogS: 0.5 };
      const played = play(blowAtM, conditions);
      const stop = stopAfterWhistle(blowAtM, conditions);
      // 5 mm: ten steps of the play at 5 m/s.
      expect(Math.abs(stop.dogHaltsAtM - played.haltsAtM)).toBeLessThan(0.005);
      expect(Math.abs(stop.dogHearsAtM - played.hearsAtM)).toBeLessThan(0.005);
    }
  });
});

/** The same stop by small steps, written apart from the closed forms. */
function play(blowAtM: number, at: StopConditions): { readonly hearsAtM: number; readonly haltsAtM: number } {
  const stepS = 1e-4;
  let [placeM, speed, sinceBlowS, sinceHeardS, hearsAtM] = [0, 0, -1, -1, 0];
  for (;;) {
    if (sinceBlowS < 0 && placeM >= blowAtM) sinceBlowS = 0;
    const soundAtM = speedOfSoundMPerS(at.airC) * sinceBlowS;
    if (sinceBlowS >= 0 && sinceHeardS < 0 && soundAtM >= placeM) [sinceHeardS, hearsAtM] = [0, placeM];
    if (sinceHeardS > at.reactionDogS) speed -= at.brakingMPerS2 * stepS;
    else speed = Math.min(at.runSpeedMPerS, speed + at.accelerationMPerS2 * stepS);
    if (speed <= 0) return { hearsAtM, haltsAtM: placeM };
    placeM += speed * stepS;
    if (sinceBlowS >= 0) sinceBlowS += stepS;
    if (sinceHeardS >= 0) sinceHeardS += stepS;
  }
}

describe('when to blow', () => {
  it('gives the stop at the send where even that is too late, and says so', () => {
    const stop = stopAtPlace(0.2);
    expect(stop).toMatchObject({ isTooLate: true, blowWhenDogAtM: 0, soundDelayS: 0 });
    expect(stop.dogHaltsAtM).toBeGreaterThan(0.2);
    expect(blowWhenDogAtM(0)).toBe(0);
    expect(stop.decideBeforeSendS).toBeCloseTo(0.3, 12);
  });

  it('says no to figures that cannot be', () => {
    expect(() => blowWhenDogAtM(-1)).toThrow(RangeError);
    expect(() => stopAfterWhistle(Number.NaN)).toThrow(RangeError);
    expect(() => speedOfSoundMPerS(1000)).toThrow(RangeError);
    for (const wrong of [{ runSpeedMPerS: 0 }, { brakingMPerS2: -1 }, { reactionDogS: Number.NaN }])
      expect(() => blowWhenDogAtM(20, { ...usualStopConditions, ...wrong })).toThrow(RangeError);
  });
});
