import type { Dice } from '../careers/dice.ts';
import { addAt, bandNoise, shaped, swell, toneAlong, wander } from './noise.ts';

/** A camera's two beeps: level, switched on and off within some milliseconds, at 2 to 4 kHz. */
function beeps(rateHz: number, dice: Dice): Float64Array {
  const hz = dice.between(2000, 4200);
  const [lastsS, everyS] = [dice.between(0.04, 0.12), dice.between(0.12, 0.3)];
  const count = 1 + dice.below(3);
  const sound = new Float64Array(Math.round((count * everyS + 0.1) * rateHz));
  const samples = Math.round(lastsS * rateHz);
  const one = shaped(
    toneAlong(() => hz, samples, rateHz).map((x) => x + 0.3 * Math.sign(x)),
    swell(samples, 0.003, 0.003, rateHz),
  );
  for (let k = 0; k < count; k++) addAt(sound, one, Math.round(k * everyS * rateHz));
  return sound;
}

/** A fence wire that sings in the wind: a fifth of the wind's speed over its thickness, narrow, never steady (Strouhal). */
function wire(rateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(1, 5) * rateHz);
  const hz = dice.between(1200, 2600);
  const speed = wander(samples, 0.4, rateHz, dice);
  const loud = wander(samples, 0.2, rateHz, dice);
  const tone = toneAlong((i) => hz * (1 + 0.06 * speed[i]!), samples, rateHz);
  const shape = swell(samples, 0.4, 0.5, rateHz);
  return tone.map((x, i) => x * shape[i]! * Math.exp(0.7 * loud[i]!));
}

/** A sheep's bell: cast modes, the hum, the strike and two above, that ring for a third of a second; rung unevenly. */
function bell(rateHz: number, dice: Dice): Float64Array {
  const hz = dice.between(700, 1900);
  const sound = new Float64Array(Math.round(2.5 * rateHz));
  const samples = Math.round(0.6 * rateHz);
  for (let at = 0; at < sound.length; at += Math.round(dice.between(0.15, 0.7) * rateHz)) {
    [1, 1.51, 2.35, 3.2].forEach((ratio, k) => {
      const dieS = dice.between(0.08, 0.3) / (k + 1);
      const tone = toneAlong(() => ratio * hz, samples, rateHz);
      addAt(
        sound,
        tone.map((x, i) => (x * Math.exp(-i / (dieS * rateHz))) / (k + 1)),
        at,
      );
    });
  }
  return sound;
}

/** A grasshopper: dry pulses of broad noise from 5 kHz up, thirty to eighty a second, in bouts. */
function grasshopper(rateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(0.5, 3) * rateHz);
  const perS = dice.between(30, 80);
  const noise = bandNoise(samples, 5000, 0.45 * rateHz, rateHz, dice);
  const shape = swell(samples, 0.2, 0.1, rateHz);
  return noise.map(
    (x, i) => 0.4 * x * shape[i]! * Math.max(0, Math.sin((2 * Math.PI * perS * i) / rateHz)) ** 3,
  );
}

/** A gate swung to: its hinge grates at a pitch that sinks as it slows, in bursts that stick and slip, then the latch strikes. */
function gateSwing(rateHz: number, dice: Dice): Float64Array {
  const lastsS = dice.between(0.4, 1.5);
  const sound = new Float64Array(Math.round((lastsS + 0.4) * rateHz));
  const hz = dice.between(900, 2800);
  const rub = wander(sound.length, 0.03, rateHz, dice);
  const samples = Math.round(lastsS * rateHz);
  for (let partial = 1; partial <= 3; partial++) {
    const tone = toneAlong(
      (i) => partial * hz * (1 - (0.45 * i) / samples) * (1 + 0.01 * rub[i]!),
      samples,
      rateHz,
    );
    addAt(
      sound,
      tone.map((x, i) => (x * Math.max(0, rub[i]! + 0.4)) / partial),
      0,
    );
  }
  for (let mode = 0; mode < 5; mode++) {
    const [modeHz, dieS] = [dice.between(500, 5000), dice.between(0.02, 0.15)];
    const tone = toneAlong(() => modeHz, Math.round(0.3 * rateHz), rateHz);
    addAt(
      sound,
      tone.map((x, i) => 0.6 * x * Math.exp(-i / (dieS * rateHz))),
      samples,
    );
  }
  return sound;
}

const FARM = { beeps, wire, bell, grasshopper, gateSwing };
/** Sounds of a farm and of a camera that are in no set that teaches. */
export type FarmKind = keyof typeof FARM;
export const isFarm = (kind: string): kind is FarmKind => kind in FARM;

/** One of them, about unit amplitude. */
export const farmSound = (kind: FarmKind, sampleRateHz: number, dice: Dice): Float64Array =>
  FARM[kind](sampleRateHz, dice);
