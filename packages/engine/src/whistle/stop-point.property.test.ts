import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carriesFarM, levelAtDbSpl, type WhistleSound } from './carrying.ts';
import type { StopConditions } from './stop-conditions.ts';
import { stopAfterWhistle, stopAtPlace } from './stop-point.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const conditions: fc.Arbitrary<StopConditions> = fc.record({
  runSpeedMPerS: between(0.5, 17),
  accelerationMPerS2: between(1, 12),
  brakingMPerS2: between(1, 12),
  reactionHandlerS: between(0, 1),
  reactionDogS: between(0, 2),
  airC: between(-20, 45),
});
const sounds: fc.Arbitrary<WhistleSound> = fc.record({
  levelDbSpl: between(70, 120),
  pitchHz: between(500, 20_000),
  noiseDb: between(0, 80),
  airC: between(-20, 45),
  humidityPct: between(5, 100),
  cover: between(0, 3),
});

describe('laws of a stop', () => {
  it('whistle point and overrun add up to the wanted halt, unless it is too late', () => {
    fc.assert(
      fc.property(conditions, between(0, 400), (at, haltAtM) => {
        const stop = stopAtPlace(haltAtM, at);
        // 1e-9 of the place: rounding of a dozen operations.
        expect(Math.abs(stop.blowWhenDogAtM + stop.overrunM - stop.dogHaltsAtM)).toBeLessThan(
          1e-9 * (1 + haltAtM),
        );
        if (stop.isTooLate) expect(stop.dogHaltsAtM).toBeGreaterThanOrEqual(haltAtM - 1e-9);
        else expect(Math.abs(stop.dogHaltsAtM - haltAtM)).toBeLessThan(1e-7 * (1 + haltAtM));
      }),
    );
  });

  it('forwards undoes backwards', () => {
    fc.assert(
      fc.property(conditions, between(0, 400), (at, blowAtM) => {
        const stop = stopAfterWhistle(blowAtM, at);
        const back = stopAtPlace(stop.dogHaltsAtM, at);
        expect(Math.abs(back.blowWhenDogAtM - blowAtM)).toBeLessThan(1e-6 * (1 + blowAtM));
      }),
    );
  });

  it('the steps come in order: decide, blow, hear, brake, halt', () => {
    fc.assert(
      fc.property(conditions, between(0, 400), (at, haltAtM) => {
        const stop = stopAtPlace(haltAtM, at);
        const steps = [
          stop.decideWhenDogAtM,
          stop.blowWhenDogAtM,
          stop.dogHearsAtM,
          stop.dogBrakesAtM,
          stop.dogHaltsAtM,
        ];
        for (const [i, step] of steps.slice(1).entries())
          expect(step).toBeGreaterThanOrEqual(steps[i]! - 1e-9);
      }),
    );
  });

  it('the overrun grows with speed, with the dog’s reaction and with distance, and falls with braking', () => {
    fc.assert(
      fc.property(conditions, between(0, 300), between(1.01, 1.4), (at, blowAtM, more) => {
        const overrunM = (changed: Partial<StopConditions>, farM = blowAtM) =>
          stopAfterWhistle(farM, { ...at, ...changed }).overrunM;
        const usualM = overrunM({}) - 1e-9;
        expect(overrunM({ runSpeedMPerS: at.runSpeedMPerS * more })).toBeGreaterThanOrEqual(usualM);
        expect(overrunM({ reactionDogS: at.reactionDogS * more })).toBeGreaterThanOrEqual(usualM);
        expect(overrunM({}, blowAtM * more)).toBeGreaterThanOrEqual(usualM);
        expect(overrunM({ brakingMPerS2: at.brakingMPerS2 * more })).toBeLessThanOrEqual(usualM + 2e-9);
      }),
    );
  });
});

describe('laws of a whistle’s sound', () => {
  it('the level falls with distance and with cover', () => {
    fc.assert(
      fc.property(sounds, between(1, 900), between(1.01, 2), (sound, distanceM, more) => {
        expect(levelAtDbSpl(distanceM * more, sound)).toBeLessThan(levelAtDbSpl(distanceM, sound));
        const bare = levelAtDbSpl(distanceM, { ...sound, cover: 0 });
        expect(levelAtDbSpl(distanceM, sound)).toBeLessThanOrEqual(bare);
      }),
    );
  });

  it('louder carries farther, noise carries it less far', () => {
    fc.assert(
      fc.property(sounds, between(0.5, 20), (sound, moreDb) => {
        const farM = carriesFarM(sound);
        expect(carriesFarM({ ...sound, levelDbSpl: sound.levelDbSpl + moreDb })).toBeGreaterThanOrEqual(farM);
        expect(carriesFarM({ ...sound, noiseDb: sound.noiseDb + moreDb })).toBeLessThanOrEqual(farM);
      }),
    );
  });
});
