import type { Dice } from '../careers/dice.ts';
import { addAt, bandNoise, shaped, swell, toneAlong, whiteNoise } from './noise.ts';

const dying = (sound: Float64Array, decayS: number, sampleRateHz: number, gain: number) =>
  sound.map((x, i) => gain * x * Math.exp(-i / (decayS * sampleRateHz)));

/** A shot: an N-shaped wave of some milliseconds, then a dull tail. */
export function shot(sampleRateHz: number, dice: Dice): Float64Array {
  const sound = new Float64Array(Math.round(0.6 * sampleRateHz));
  const wave = Math.round(dice.between(0.001, 0.004) * sampleRateHz);
  for (let i = 0; i < wave; i++) sound[i] = 3 * (1 - (2 * i) / wave);
  addAt(sound, dying(bandNoise(sound.length, 100, 2500, sampleRateHz, dice), 0.06, sampleRateHz, 0.8), 0);
  return sound;
}

/** A gate or a chain: modes of iron that are no harmonics and ring for 0.03 to 0.4 s; struck once to three times. */
export function clank(sampleRateHz: number, dice: Dice): Float64Array {
  const sound = new Float64Array(Math.round(1.6 * sampleRateHz));
  const modes = Array.from({ length: 7 }, () => [dice.between(300, 6000), dice.between(0.03, 0.4)] as const);
  const strikes = 1 + dice.below(3);
  for (let k = 0; k < strikes; k++) {
    const at = Math.round((k === 0 ? 0 : dice.between(0.06, 0.5)) * sampleRateHz);
    const samples = Math.round(sampleRateHz);
    for (const [hz, decayS] of modes) {
      addAt(
        sound,
        dying(
          toneAlong(() => hz, samples, sampleRateHz),
          decayS,
          sampleRateHz,
          dice.between(0.05, 0.4),
        ),
        at,
      );
    }
    addAt(sound, dying(whiteNoise(Math.round(0.03 * sampleRateHz), dice), 0.004, sampleRateHz, 0.5), at);
  }
  return sound;
}

/** A hinge that squeals: it sticks and slips at a pitch that glides, rich in partials; held out. */
export function squeal(sampleRateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(0.2, 0.9) * sampleRateHz);
  const hz = dice.between(700, 2200);
  const glide = dice.between(-0.4, 0.5);
  const sound = new Float64Array(samples);
  for (let partial = 1; partial <= 5; partial++) {
    const tone = toneAlong((i) => partial * hz * (1 + (glide * i) / samples), samples, sampleRateHz);
    addAt(
      sound,
      tone.map((x) => x / partial),
      0,
    );
  }
  const shape = swell(samples, 0.05, 0.08, sampleRateHz);
  return sound.map((x, i) => x * shape[i]! * (0.6 + 0.4 * Math.abs(Math.sin(i / (0.004 * sampleRateHz)))));
}

/** A camera: two to four dull knocks within 0.15 s, no mode that rings. */
export function shutter(sampleRateHz: number, dice: Dice): Float64Array {
  const sound = new Float64Array(Math.round(0.3 * sampleRateHz));
  const knocks = 2 + dice.below(3);
  for (let k = 0; k < knocks; k++) {
    const noise = bandNoise(
      Math.round(0.03 * sampleRateHz),
      400,
      dice.between(2500, 6000),
      sampleRateHz,
      dice,
    );
    const at = Math.round((k * dice.between(0.02, 0.05) + 0.002) * sampleRateHz);
    addAt(sound, dying(noise, dice.between(0.003, 0.009), sampleRateHz, dice.between(0.4, 1)), at);
  }
  return sound;
}

/** A zip: teeth that pass faster and slower, 60 to 220 a second. */
export function zip(sampleRateHz: number, dice: Dice): Float64Array {
  const lastsS = dice.between(0.25, 0.9);
  const sound = new Float64Array(Math.round((lastsS + 0.05) * sampleRateHz));
  const teeth = dice.between(100, 220);
  for (let atS = 0; atS < lastsS; atS += 1 / (teeth * (0.3 + Math.sin((Math.PI * atS) / lastsS)))) {
    const tooth = bandNoise(Math.round(0.006 * sampleRateHz), 1500, 7500, sampleRateHz, dice);
    addAt(sound, dying(tooth, 0.0012, sampleRateHz, dice.between(0.3, 1)), Math.round(atS * sampleRateHz));
  }
  return sound;
}

/** Steps through grass: a soft rush at each, about two a second, for `lastsS`. */
export function footsteps(lastsS: number, sampleRateHz: number, dice: Dice): Float64Array {
  const sound = new Float64Array(Math.round(lastsS * sampleRateHz));
  for (let atS = 0.1; atS < lastsS; atS += dice.between(0.45, 0.6)) {
    const rush = bandNoise(Math.round(dice.between(0.08, 0.2) * sampleRateHz), 300, 5000, sampleRateHz, dice);
    const shape = swell(rush.length, 0.03, 0.06, sampleRateHz);
    addAt(sound, shaped(rush, shape, 0.4), Math.round(atS * sampleRateHz));
  }
  return sound;
}

/** A twig that breaks: one to three dry cracks, dead in some milliseconds; held out. */
export function twig(sampleRateHz: number, dice: Dice): Float64Array {
  const sound = new Float64Array(Math.round(0.3 * sampleRateHz));
  const cracks = 1 + dice.below(3);
  for (let k = 0; k < cracks; k++) {
    const crack = bandNoise(Math.round(0.02 * sampleRateHz), 700, 6500, sampleRateHz, dice);
    const at = Math.round((k === 0 ? 0 : dice.between(0.005, 0.2)) * sampleRateHz);
    addAt(sound, dying(crack, dice.between(0.001, 0.004), sampleRateHz, dice.between(0.4, 1)), at);
  }
  return sound;
}
