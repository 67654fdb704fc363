import type { Dice } from '../careers/dice.ts';
import { banded } from './filters.ts';

/** A sound from what each sample is. */
function sampled(samples: number, at: (i: number) => number): Float64Array {
  const sound = new Float64Array(samples);
  for (let i = 0; i < samples; i++) sound[i] = at(i);
  return sound;
}

/** White Gaussian noise of unit power. */
export const whiteNoise = (samples: number, dice: Dice) => sampled(samples, () => dice.normal());

/** Noise between two corners, of unit power. */
export function bandNoise(samples: number, lowHz: number, highHz: number, sampleRateHz: number, dice: Dice) {
  const sound = banded(whiteNoise(samples, dice), lowHz, highHz, sampleRateHz);
  return scaled(sound, 1 / Math.max(1e-12, rootMeanSquare(sound)));
}

/** Noise whose power falls about as 1/f from 30 Hz up: one white noise through six one-pole low-passes, an octave and a half apart; unit power. */
export function pinkNoise(samples: number, sampleRateHz: number, dice: Dice): Float64Array {
  const keep = Array.from({ length: 6 }, (_, stage) =>
    Math.exp((-2 * Math.PI * 30 * 2.8 ** stage) / sampleRateHz),
  );
  const drive = keep.map((share) => Math.sqrt(1 - share * share));
  const state = new Float64Array(6);
  const sound = sampled(samples, () => {
    const white = dice.normal();
    let sum = 0;
    for (let stage = 0; stage < 6; stage++) {
      state[stage] = keep[stage]! * state[stage]! + drive[stage]! * white;
      sum += state[stage]!;
    }
    return sum;
  });
  return scaled(sound, 1 / Math.max(1e-12, rootMeanSquare(sound)));
}

/** A smooth random curve of unit spread about nought that forgets in about `memoryS`; straight between 40 points a memory. */
export function wander(samples: number, memoryS: number, sampleRateHz: number, dice: Dice): Float64Array {
  const stride = Math.max(1, Math.floor((memoryS * sampleRateHz) / 40));
  const keep = Math.exp(-1 / 40);
  const drive = Math.sqrt(1 - keep * keep);
  let from = dice.normal();
  let to = keep * from + drive * dice.normal();
  return sampled(samples, (i) => {
    const along = i % stride;
    if (along === 0 && i > 0) {
      from = to;
      to = keep * from + drive * dice.normal();
    }
    return from + ((to - from) * along) / stride;
  });
}

export function scaled(sound: Float64Array, factor: number): Float64Array {
  for (let i = 0; i < sound.length; i++) sound[i] = sound[i]! * factor;
  return sound;
}

export function rootMeanSquare(sound: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < sound.length; i++) sum += sound[i]! ** 2;
  return sound.length === 0 ? 0 : Math.sqrt(sum / sound.length);
}

/** A factor of amplitude from decibels. */
export const fromDb = (db: number) => 10 ** (db / 20);

/** Adds `sound`, times `gain`, into `into` from the sample `at`; what sticks out is dropped. */
export function addAt(into: Float64Array, sound: Float64Array, at: number, gain = 1): void {
  const from = Math.max(0, -at);
  const to = Math.min(sound.length, into.length - at);
  for (let i = from; i < to; i++) into[at + i] = into[at + i]! + gain * sound[i]!;
}

/** Up over `riseS`, full, down over `fallS`, by raised cosines. */
export function swell(samples: number, riseS: number, fallS: number, sampleRateHz: number): Float64Array {
  const rise = Math.max(1, riseS * sampleRateHz);
  const fall = Math.max(1, fallS * sampleRateHz);
  const half = (part: number) => (part >= 1 ? 1 : 0.5 - 0.5 * Math.cos(Math.PI * part));
  return sampled(samples, (i) => half(i / rise) * half((samples - 1 - i) / fall));
}

/** A tone that follows its pitch sample by sample, unit amplitude; nothing is sounded above 0.47 of the sample rate. */
export function toneAlong(pitchHz: (i: number) => number, samples: number, sampleRateHz: number, phase = 0) {
  let turn = phase;
  return sampled(samples, (i) => {
    const hz = pitchHz(i);
    turn += (2 * Math.PI * hz) / sampleRateHz;
    return hz < 0.47 * sampleRateHz ? Math.sin(turn) : 0;
  });
}

/** The sound under a shape of the same length, times `gain`. */
export const shaped = (sound: Float64Array, shape: Float64Array, gain = 1) =>
  sampled(sound.length, (i) => gain * sound[i]! * shape[i]!);
