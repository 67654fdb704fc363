import type { Dice } from '../careers/dice.ts';

/** One resonance of a chamber: its pitch over the first's, the periods it rings (Q) and how much of it is felt at the mouth. */
interface Mode {
  ratio: number;
  q: number;
  share: number;
}

/** A chamber with a mouth across which a jet is blown against an edge. */
export interface Flue {
  resonanceHz: number;
  modes: readonly Mode[];
  /** Time in which the jet crosses the mouth at the usual pressure, in periods of the first resonance: about a half, or it does not sound. */
  crossPeriods: number;
  /** How far the crossing jet grows what moves it: its swing at the edge over its own half width, at the usual pressure. */
  grows: number;
  /** How far the edge lies beside the jet's middle, in half widths: nought gives odd partials alone. */
  aside: number;
  /** Turbulence of the jet, in half widths. */
  turbulent: number;
  /** What is heard of the jet itself, beside the chamber, and of its hiss. */
  bare: number;
  hiss: number;
}

/** How it is blown, step by step. */
export interface Blowing {
  steps: number;
  /** Pressure, 1 as usual. */
  pressure: (i: number) => number;
  /** By what the resonances are moved, and how much of the mouth is open. */
  bend: (i: number) => number;
  open: (i: number) => number;
}

/** The longest that a crossing is followed, in periods: a breath so weak makes no tone. */
const LONGEST_PERIODS = 3;
/** A jet that takes twice as long as it should hardly grows (its instability dies out at high Strouhal numbers). */
const WEAKER_FROM_PERIODS = 0.85;

/**
 * A flue instrument as the lumped models of musical acoustics have it (Fletcher; McIntyre, Schumacher and Woodhouse; Verge, Fabre and
 * Hirschberg; written from memory, not checked against the papers). The chamber's swing v at the mouth moves the jet; the jet carries that to
 * the edge in τ = cross / √p and grows it; there it blows in and out by F = -p [tanh(g v(t-τ)/√p + a + turbulence) - tanh a], and F drives the
 * modes. A tone sets in by itself where the delay is half a period and g √p outweighs the losses, sharpens as the pressure rises and shortens
 * τ, saturates as the tanh does, and rings down by the chamber's losses. Gives the sound and the height and turn of the first mode's swing,
 * all in units of the drive at usual pressure; `rateHz` wants ten steps a period.
 */
export function jetDriven(flue: Flue, blowing: Blowing, rateHz: number, dice: Dice) {
  const { steps, pressure, bend, open } = blowing;
  const { resonanceHz, modes, crossPeriods, grows, aside, turbulent, bare, hiss } = flue;
  const periodSteps = rateHz / resonanceHz;
  const kept = new Float64Array(2 ** Math.ceil(Math.log2(LONGEST_PERIODS * periodSteps + 4)));
  const mask = kept.length - 1;
  const res = modes.map(() => 0);
  const ims = modes.map(() => 0);
  const sound = new Float64Array(steps);
  const height = new Float64Array(steps);
  const turn = new Float64Array(steps);
  const rest = Math.tanh(aside);
  // Eddies as large as the mouth pass it about once a period.
  const eddy = Math.exp(-2.5 / periodSteps);
  const eddyDrive = Math.sqrt(1 - eddy * eddy);
  let swirl = 0;
  let hissed = 0;
  for (let i = 0; i < steps; i++) {
    const p = Math.max(0, pressure(i));
    const u = Math.sqrt(Math.max(p, 0.01));
    const lateSteps = Math.min(LONGEST_PERIODS * periodSteps, Math.max(1, (crossPeriods * periodSteps) / u));
    const whole = Math.floor(lateSteps);
    const part = lateSteps - whole;
    const late = (1 - part) * kept[(i - whole) & mask]! + part * kept[(i - whole - 1) & mask]!;
    const white = dice.normal();
    swirl = eddy * swirl + eddyDrive * white;
    const growth = grows / (1 + (lateSteps / periodSteps / WEAKER_FROM_PERIODS) ** 4);
    const flow = -p * open(i) * (Math.tanh((growth * late) / u + aside + turbulent * swirl) - rest);
    const moved = bend(i);
    let v = 0;
    for (let m = 0; m < modes.length; m++) {
      const { ratio, q, share } = modes[m]!;
      const w = (2 * Math.PI * ratio * moved) / periodSteps;
      const loss = w / (2 * q);
      const still = Math.exp(-loss);
      const [c, s] = [still * Math.cos(w), still * Math.sin(w)];
      const re = res[m]! * c - ims[m]! * s + 2 * loss * flow;
      ims[m] = res[m]! * s + ims[m]! * c;
      res[m] = re;
      v += share * re;
    }
    kept[i & mask] = v;
    hissed = 0.6 * hissed + 0.4 * white;
    sound[i] = v + bare * flow + hiss * p * u * (white - hissed);
    height[i] = Math.hypot(res[0]!, ims[0]!);
    turn[i] = Math.atan2(ims[0]!, res[0]!);
  }
  return { sound, height, turn };
}

/** The usual blowing of a whistle that is tried: full pressure, nothing moved. */
const tried = (steps: number): Blowing => ({ steps, pressure: () => 1, bend: () => 1, open: () => 1 });

/** Pitch and height of the tone at the usual pressure, from the last half of a tenth of a second. */
export function triedOut(flue: Flue, rateHz: number, dice: Dice): { pitchHz: number; height: number } {
  const steps = Math.round(0.1 * rateHz);
  const { turn, height } = jetDriven(flue, tried(steps), rateHz, dice);
  let turned = 0;
  let high = 0;
  const from = steps >> 1;
  for (let i = from; i < steps; i++) {
    const step = turn[i]! - turn[i - 1]!;
    turned += step - 2 * Math.PI * Math.round(step / (2 * Math.PI));
    high += height[i]!;
  }
  return { pitchHz: (turned * rateHz) / (2 * Math.PI * (steps - from)), height: high / (steps - from) };
}

/** The flue with its chamber made larger or smaller, as a maker would, until it sounds at `pitchHz` when it is blown as usual. */
export function madeFor(pitchHz: number, flue: Flue, rateHz: number, dice: Dice): Flue {
  let made = flue;
  for (let round = 0; round < 3; round++) {
    const now = triedOut(made, rateHz, dice).pitchHz;
    if (!(now > 0.5 * pitchHz && now < 2 * pitchHz)) {
      throw new RangeError(`flue: expected one that sounds near ${pitchHz} Hz, got ${now} Hz`);
    }
    made = { ...made, resonanceHz: (made.resonanceHz * pitchHz) / now };
  }
  return made;
}
