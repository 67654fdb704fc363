import type { Dice } from '../careers/dice.ts';
import { biquad, filtered } from './filters.ts';
import { stepsASample, thinned } from './fine-rate.ts';

/** A part that rubs and can ring: its own pitches, and how dry it is. */
export interface Rubbing {
  modes: readonly { hz: number; q: number; share: number }[];
  /** Friction at rest over friction in quick sliding, less one: nought squeals never. */
  grips: number;
  /** Speed of sliding within which the grip is lost, in speeds of the swing. */
  losesWithin: number;
  /** Roughness of the two faces. */
  rough: number;
}

/** How far friction reaches into a mode within a radian of its swing. */
const GRIPPED = 0.3;

/**
 * What rubbing sets ringing, by a friction that falls with the speed of sliding (Stribeck's curve): each mode x'' + (w/Q) x' + w² x = N μ(V - v),
 * μ(s) = tanh(s/0.1) (1 + grips · exp(-|s| / losesWithin)), v all modes' speed, V the sliding speed, N how hard the faces are pressed. Where the
 * falling branch outweighs the losses it sticks and slips, and the partials are its own. `speed` and `press` are told step by step, about 1; the
 * sound is the modes' speed, scaled to unit at its loudest.
 */
export function rubbed(
  { modes, grips, losesWithin, rough }: Rubbing,
  lastsS: number,
  speed: (s: number) => number,
  press: (s: number) => number,
  sampleRateHz: number,
  dice: Dice,
): Float64Array {
  const aSample = stepsASample(sampleRateHz, 44_000);
  const rateHz = aSample * sampleRateHz;
  const steps = Math.round(lastsS * rateHz);
  const swings = modes.map(({ hz, q, share }) => {
    const w = (2 * Math.PI * hz) / rateHz;
    const still = Math.exp(-w / (2 * q));
    return { c: still * Math.cos(w), s: still * Math.sin(w), driven: GRIPPED * w, share };
  });
  const res = modes.map(() => 0);
  const ims = modes.map(() => 0);
  let v = 0;
  let grain = 0;
  const fine = new Float64Array(steps);
  for (let i = 0; i < steps; i++) {
    const s = i / rateHz;
    grain += 0.05 * (dice.normal() - grain);
    const sliding = speed(s) - v;
    const friction = Math.tanh(sliding / 0.1) * (1 + grips * Math.exp(-Math.abs(sliding) / losesWithin));
    const force = press(s) * (1 + rough * grain) * friction;
    v = 0;
    for (let m = 0; m < swings.length; m++) {
      const swing = swings[m]!;
      const re = res[m]! * swing.c - ims[m]! * swing.s + swing.driven * force;
      ims[m] = res[m]! * swing.s + ims[m]! * swing.c;
      res[m] = re;
      v += swing.share * re;
    }
    fine[i] = v;
  }
  // Being pressed to one side is no sound.
  const sound = filtered(thinned(fine, aSample), biquad('highpass', 150, 0.7, sampleRateHz));
  const loudest = sound.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-9);
  return sound.map((x) => x / loudest);
}
