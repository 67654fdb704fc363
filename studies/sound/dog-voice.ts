import type { Dice } from '../careers/dice.ts';
import { addAt, bandNoise, shaped, swell, toneAlong } from './noise.ts';

/** Some barks in a row: a harsh voice that rises and falls within 0.1 to 0.2 s, partials and rough breath. */
export function barks(sampleRateHz: number, dice: Dice): Float64Array {
  const count = 1 + dice.below(5);
  const hz = dice.between(350, 900);
  const sound = new Float64Array(Math.round(count * 0.7 * sampleRateHz));
  let atS = 0.01;
  for (let k = 0; k < count; k++) {
    const samples = Math.round(dice.between(0.09, 0.2) * sampleRateHz);
    const shape = swell(samples, 0.02, 0.08, sampleRateHz);
    const arch = (i: number) => hz * (0.8 + 0.4 * Math.sin((Math.PI * i) / samples));
    const bark = bandNoise(samples, 500, 3500, sampleRateHz, dice).map((x) => 0.35 * x);
    for (let partial = 1; partial <= 8; partial++) {
      addAt(
        bark,
        toneAlong((i) => partial * arch(i), samples, sampleRateHz, partial).map((x) => (0.7 * x) / partial),
        0,
      );
    }
    addAt(sound, shaped(bark, shape), Math.round(atS * sampleRateHz));
    atS += dice.between(0.25, 0.6);
  }
  return sound;
}

/** A waiting dog's whine: a voice between 700 and 1,900 Hz that slides, with its second and third partial in the whistles' band. */
export function whine(sampleRateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(0.3, 1.1) * sampleRateHz);
  const hz = dice.between(700, 1900);
  const arch = dice.between(0.1, 0.35);
  const pitch = (i: number) => hz * (1 + arch * Math.sin((Math.PI * i) / samples));
  const shape = swell(samples, 0.08, 0.15, sampleRateHz);
  const sound = new Float64Array(samples);
  [1, 0.4, 0.15].forEach((gain, k) => {
    addAt(
      sound,
      toneAlong((i) => (k + 1) * pitch(i), samples, sampleRateHz).map((x) => gain * x),
      0,
    );
  });
  return shaped(sound, shape);
}
