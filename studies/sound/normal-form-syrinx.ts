import type { Dice } from '../careers/dice.ts';
import { biquad, filtered } from './filters.ts';
import { stepsASample, thinned } from './fine-rate.ts';
import { wander } from './noise.ts';

/** One gesture of a singing bird: a pull on the membranes and a breath, both along u from 0 to 1. */
export interface SongGesture {
  atS: number;
  lastsS: number;
  /** What the tension would sound at a breath that just suffices. */
  pitchHz: (u: number) => number;
  /** Pressure over what it takes to sound, up to 1; below nought there is no tone. */
  breath: (u: number) => number;
}

/** What is the bird's own: the same through a song. */
export interface Throat {
  /** The membranes' own quickness (gamma of the model), 1/s: the higher over the pitch, the more a breath flattens and the sooner it is too much. */
  quickness: number;
  /** How far towards the end of what sounds at all a full breath pushes: the further, the richer in partials. Beyond 0.4 a low tone may fail. */
  push: number;
  tracheaM: number;
  returned: number;
  beakHz: number;
  beakQ: number;
  /** What passes beside the mouth's resonance. */
  straight: number;
  hoarse: number;
}

/** Steps a second at least: a swing of 6.5 kHz has seven, where a step of fourth order is off by a two-hundredth of the pitch. */
const SONG_FROM_HZ = 44_000;
const SOUND_M_PER_S = 343;
/** A resting bird's breath: the membranes stand open and still. */
const AT_REST = -0.5;
/** Tension and breath move slowly: they are told to the membranes every so many steps. */
const GESTURE_STEPS = 8;

/** Tension and pressure at which the still membranes would begin to swing at `w` quicknesses, `u` beyond the threshold. */
const tuned = (w: number, u: number) => ({
  alpha: w * w * u - u * u - 2 * u ** 3,
  beta: w * w - 2 * u - 3 * u * u,
});

/** The largest `u` for which more breath is more pressure. */
const furthest = (w: number) => (Math.sqrt(4 + 24 * w * w) - 2) / 12;

/**
 * A song by the normal form of a syrinx (Mindlin and Laje, The Physics of Birdsong, 2005; written from memory): x' = y,
 * y' = -α γ² - β γ² x - γ² x³ - γ x² y + γ² x² - γ x y, with α the pressure and β the tension. The still point x = -u is left for a swing where
 * u > 0 (trace -γ (x² + x)) at γ √(β + 2u + 3u²); that gives α and β of a pitch and a breath. The swing's speed goes into a trachea that is
 * open at one end and so throws it back turned over, and out through the mouth's own resonance. Harmonics and onsets are the model's. About unit
 * amplitude at its loudest; `samples` long.
 */
export function normalFormSong(
  gestures: readonly SongGesture[],
  throat: Throat,
  samples: number,
  sampleRateHz: number,
  dice: Dice,
): Float64Array {
  const aSample = stepsASample(sampleRateHz, SONG_FROM_HZ);
  const rateHz = aSample * sampleRateHz;
  const steps = samples * aSample;
  const { quickness, push, tracheaM, returned, hoarse } = throat;
  const h = quickness / rateHz;
  const backSteps = Math.max(1, Math.round((2 * tracheaM * rateHz) / SOUND_M_PER_S));
  const source = new Float64Array(steps);
  const unsteady = wander(Math.ceil(steps / GESTURE_STEPS), 0.03, rateHz / GESTURE_STEPS, dice);
  const inTime = [...gestures].sort((a, b) => a.atS - b.atS);
  let now = 0;
  let w = (2 * Math.PI * (inTime[0]?.pitchHz(0) ?? 3000)) / quickness;
  let { alpha, beta } = tuned(w, AT_REST * push * furthest(w));
  let x = -AT_REST * push * furthest(w);
  let v = 0;
  // In the membranes' own time, y = γ v: x' = v, v' = -α - βx - x³ - x²v + x² - xv.
  const pull = (at: number, speed: number) =>
    -alpha - beta * at - at ** 3 - at * at * speed + at * at - at * speed;
  for (let i = 0; i < steps; i++) {
    if (i % GESTURE_STEPS === 0) {
      const s = i / rateHz;
      while (now < inTime.length - 1 && s >= inTime[now + 1]!.atS) now++;
      const gesture = inTime[now];
      const u = gesture === undefined ? -1 : (s - gesture.atS) / gesture.lastsS;
      const isSung = gesture !== undefined && u >= 0 && u <= 1;
      if (isSung)
        w = (2 * Math.PI * gesture.pitchHz(u) * (1 + 0.002 * unsteady[i / GESTURE_STEPS]!)) / quickness;
      const breath = isSung ? Math.max(AT_REST, Math.min(1, gesture.breath(u))) : AT_REST;
      const rough = hoarse * dice.normal();
      ({ alpha, beta } = tuned(w, (breath + rough) * push * furthest(w)));
    }
    // Runge and Kutta's step of fourth order.
    const a1 = pull(x, v);
    const v2 = v + 0.5 * h * a1;
    const a2 = pull(x + 0.5 * h * v, v2);
    const v3 = v + 0.5 * h * a2;
    const a3 = pull(x + 0.5 * h * v2, v3);
    const v4 = v + h * a3;
    const a4 = pull(x + h * v3, v4);
    x += (h / 6) * (v + 2 * v2 + 2 * v3 + v4);
    v += (h / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
    source[i] = v - (i < backSteps ? 0 : returned * source[i - backSteps]!);
  }
  const out = thinned(source, aSample);
  const mouth = filtered(out.slice(), biquad('bandpass', throat.beakHz, throat.beakQ, sampleRateHz));
  const sung = mouth.map((one, i) => one + throat.straight * out[i]!);
  const loudest = sung.reduce((most, one) => Math.max(most, Math.abs(one)), 1e-9);
  return sung.map((one) => one / loudest);
}
