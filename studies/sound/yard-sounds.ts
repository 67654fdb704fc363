import type { Dice } from '../careers/dice.ts';
import { biquad, filtered } from './filters.ts';
import { addAt, bandNoise, shaped, swell, toneAlong, wander } from './noise.ts';
import { rubbed } from './stick-slip.ts';

/** A tractor or van that reverses: a piezo that is switched on and off about once a second, or, on newer ones, hisses in its place. */
function reversing(rateHz: number, dice: Dice): Float64Array {
  const [onS, everyS] = [dice.between(0.25, 0.5), dice.between(0.7, 1.2)];
  const count = 3 + dice.below(8);
  const sound = new Float64Array(Math.round(count * everyS * rateHz));
  const samples = Math.round(onS * rateHz);
  const hz = dice.chance(0.5) ? dice.between(1000, 1500) : dice.between(2300, 3200);
  const one = dice.chance(0.3)
    ? bandNoise(samples, 700, 5000, rateHz, dice).map((x) => 0.3 * x)
    : toneAlong(() => hz, samples, rateHz).map((x) => Math.tanh(8 * x));
  // The disc rings at its own pitch and passes little below it.
  filtered(one, biquad('bandpass', dice.between(2000, 3500), dice.between(0.5, 2), rateHz));
  const beep = shaped(one, swell(samples, dice.between(0.002, 0.02), dice.between(0.003, 0.03), rateHz), 1.2);
  for (let k = 0; k < count; k++) addAt(sound, beep, Math.round(k * everyS * rateHz));
  return sound;
}

/** A phone that rings in a pocket: a made-up tune of struck bars or of bells by frequency modulation, through a speaker without bass. */
function ring(rateHz: number, dice: Dice): Float64Array {
  const root = dice.between(500, 1300);
  const stepS = dice.between(0.09, 0.24);
  const tune = Array.from({ length: 6 + dice.below(10) }, () => dice.pick([0, 2, 4, 5, 7, 9, 12, null]));
  const sound = new Float64Array(Math.round((tune.length * stepS + 0.8) * rateHz));
  const samples = Math.round(0.7 * rateHz);
  const dieS = dice.between(0.06, 0.35);
  const isBell = dice.chance(0.5);
  const [carried, deep] = [dice.pick([1.4, 2, 3.5]), dice.between(0.5, 3)];
  tune.forEach((tone, k) => {
    if (tone === null) return;
    const hz = root * 2 ** (tone / 12);
    const note = Float64Array.from({ length: samples }, (_, i) => {
      const s = i / rateHz;
      const died = Math.exp(-s / dieS);
      const turn = 2 * Math.PI * hz * s;
      if (isBell) return died * Math.sin(turn + deep * died * Math.sin(carried * turn));
      // Bars are cut so that their second mode stands two octaves up.
      return (
        died * Math.sin(turn) + 0.4 * died ** 3 * Math.sin(4 * turn) + 0.1 * died ** 8 * Math.sin(9.2 * turn)
      );
    });
    addAt(sound, note, Math.round(k * stepS * rateHz), 0.6);
  });
  return filtered(sound, biquad('highpass', dice.between(500, 1000), 0.8, rateHz));
}

/** A swing whose hook squeaks where it turns, once or twice a swing. */
function swing(rateHz: number, dice: Dice): Float64Array {
  const everyS = dice.between(1.1, 1.9);
  const hz = dice.between(700, 2600);
  const both = dice.chance(0.5);
  const part = {
    modes: [
      { hz, q: dice.between(15, 60), share: 1 },
      { hz: hz * dice.between(1.6, 2.9), q: dice.between(10, 40), share: dice.between(0.1, 0.6) },
    ],
    grips: dice.between(0.6, 1.6),
    losesWithin: dice.between(0.3, 0.8),
    rough: dice.between(0.2, 1),
  };
  const [narrow, weighs] = [dice.between(0.1, 0.35), dice.between(0.5, 1.5)];
  const turn = (s: number) => Math.sin((2 * Math.PI * s) / everyS);
  const press = (s: number) =>
    turn(s) > 0 || both ? weighs * Math.exp(-(((1 - Math.abs(turn(s))) / narrow) ** 2)) : 0;
  return rubbed(part, dice.between(2, 5), (s) => 0.2 + 0.8 * Math.abs(turn(s)), press, rateHz, dice);
}

/** A bicycle's or a trailer's brakes: pads that squeal while the wheel slows, until it stands. */
function brakes(rateHz: number, dice: Dice): Float64Array {
  const lastsS = dice.between(0.5, 2.5);
  const hz = dice.between(900, 3600);
  const wheelHz = dice.between(2, 8);
  const out = dice.between(0, 0.6);
  const part = {
    modes: [
      { hz, q: dice.between(40, 200), share: 1 },
      { hz: hz * dice.between(1.05, 1.4), q: dice.between(30, 120), share: dice.between(0.1, 0.9) },
      { hz: hz * dice.between(1.8, 2.6), q: dice.between(20, 80), share: dice.between(0.1, 0.5) },
    ],
    grips: dice.between(0.5, 1.5),
    losesWithin: dice.between(0.3, 1),
    rough: dice.between(0.1, 0.8),
  };
  const speed = (s: number) => Math.max(0, 1.3 * (1 - s / lastsS));
  const press = (s: number) =>
    Math.min(1, s / 0.15) * (1 - out * (0.5 + 0.5 * Math.sin(2 * Math.PI * wheelHz * s * speed(s))));
  return rubbed(part, lastsS + 0.1, speed, (s) => (s < lastsS ? press(s) : 0), rateHz, dice);
}

/** A dog's bowl of steel, set down or knocked: modes of a round shell (as n² - 1), each a pair a little apart, that beat as they ring. */
function bowl(rateHz: number, dice: Dice): Float64Array {
  const hz = dice.between(250, 700);
  const sound = new Float64Array(Math.round(2.5 * rateHz));
  const dieS = dice.between(0.15, 0.9);
  const samples = Math.round(Math.min(1.8, 5 * dieS) * rateHz);
  const apart = dice.between(0.001, 0.008);
  const strikes = 1 + dice.below(4);
  let at = 0;
  for (let strike = 0; strike < strikes; strike++) {
    const hard = dice.between(0.3, 1);
    for (let n = 2; n <= 8; n++) {
      const modeHz = (hz * (n * n - 1)) / 3;
      if (modeHz * (1 + apart) > 0.45 * rateHz) continue;
      const [a, b] = [dice.between(0.3, 1) / n, dice.between(0.1, 0.8) / n];
      const mode = Float64Array.from({ length: samples }, (_, i) => {
        const s = i / rateHz;
        const pair =
          a * Math.sin(2 * Math.PI * modeHz * s) + b * Math.sin(2 * Math.PI * modeHz * (1 + apart) * s);
        return pair * Math.exp((-s * Math.sqrt(n / 2)) / dieS);
      });
      addAt(sound, mode, at, hard);
    }
    at += Math.round(dice.between(0.05, 0.25) * rateHz);
  }
  return sound;
}

/** A tractor that works beyond the hedge: an engine's firings through its pipe and its sheets, knocking, and a gear that whines faintly. */
function tractor(rateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(5, 10) * rateHz);
  const firesHz = dice.between(25, 75);
  const load = wander(samples, 1, rateHz, dice);
  const uneven = wander(samples, 0.02, rateHz, dice);
  const whineRatio = dice.between(11, 43);
  const whines = dice.between(0, 0.06);
  let turn = 0;
  const bang = Float64Array.from({ length: samples }, (_, i) => {
    turn += (firesHz * (1 + 0.04 * load[i]!)) / rateHz;
    const since = (turn % 1) / firesHz;
    const knock = Math.exp(-since / 0.002) * (1 + 0.3 * uneven[i]!) * (1 + 0.8 * dice.normal());
    return knock + whines * Math.sin(2 * Math.PI * whineRatio * turn);
  });
  const sound = filtered(bang.slice(), biquad('lowpass', dice.between(150, 400), 1.5, rateHz));
  for (const hz of [dice.between(400, 900), dice.between(900, 2200), dice.between(2200, 3800)])
    addAt(sound, filtered(bang.slice(), biquad('bandpass', hz, dice.between(1, 4), rateHz)), 0, 0.25);
  return shaped(sound, swell(samples, 1.5, 1.5, rateHz));
}

const YARD = { reversing, ring, swing, brakes, bowl, tractor };
/** Sounds of farmyards, lanes and pockets. */
export type YardKind = keyof typeof YARD;
export const isYard = (kind: string): kind is YardKind => kind in YARD;
export const YARD_KINDS = Object.keys(YARD) as YardKind[];

/** One of them, about unit amplitude. */
export const yardSound = (kind: YardKind, sampleRateHz: number, dice: Dice): Float64Array =>
  YARD[kind](sampleRateHz, dice);
