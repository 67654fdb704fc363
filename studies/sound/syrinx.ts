import type { Dice } from '../careers/dice.ts';
import { addAt, fromDb, wander } from './noise.ts';
import { selfSounding, swingSound } from './self-sounding.ts';

/** One gesture of one side of a syrinx: a breath's pressure and a muscle's pull on the membranes. */
interface Gesture {
  atS: number;
  lastsS: number;
  /** Pitch along the gesture, u from 0 to 1. */
  pitchHz: (u: number) => number;
  /** Pressure along it, 0 to about 1. */
  pressure: (u: number) => number;
  db: number;
  second: number;
}

type Way = (dice: Dice) => Gesture[];

/** A breath that swells and sinks, quicker or slower at its two ends. */
function breath(dice: Dice): (u: number) => number {
  const [rise, fall] = [dice.between(0.08, 0.45), dice.between(0.1, 0.5)];
  return (u) => Math.min(1, Math.sin((Math.PI / 2) * Math.min(1, u / rise)), Math.max(0, (1 - u) / fall));
}

const note = (dice: Dice, atS: number, lastsS: number, pitchHz: (u: number) => number): Gesture => ({
  atS,
  lastsS,
  pitchHz,
  pressure: breath(dice),
  db: dice.between(-5, 0),
  second: fromDb(dice.between(-40, -16)),
});

/** Both sides at once, each with its own pitch and its own breath: chords that no single pipe can sound. */
const twoVoiced: Way = (dice) => {
  const all: Gesture[] = [];
  let atS = 0;
  for (let k = 2 + dice.below(6); k > 0; k--) {
    const lastsS = dice.between(0.08, 0.5);
    const low = dice.between(1800, 3600);
    const high = low * dice.between(1.12, 1.9);
    const [a, b] = [dice.between(0.85, 1.15), dice.between(0.85, 1.15)];
    all.push(note(dice, atS, lastsS, (u) => low * a ** u));
    all.push(
      note(dice, atS + dice.between(0, 0.3) * lastsS, lastsS * dice.between(0.6, 1), (u) => high * b ** u),
    );
    atS += lastsS + dice.between(0.03, 0.4);
  }
  return all;
};

/** One breath, on which the pitch jumps between levels as the membranes fall from one way of swinging into another. */
const jumper: Way = (dice) => {
  const all: Gesture[] = [];
  const hz = dice.between(2000, 4500);
  const levels = Array.from({ length: 2 + dice.below(4) }, () => hz * dice.between(0.7, 1.5));
  let atS = 0;
  for (let k = 1 + dice.below(4); k > 0; k--) {
    const lastsS = dice.between(0.15, 0.9);
    all.push(
      note(dice, atS, lastsS, (u) => levels[Math.min(levels.length - 1, Math.floor(u * levels.length))]!),
    );
    atS += lastsS + dice.between(0.1, 0.8);
  }
  return all;
};

/** A level pipe whose breath flutters: loud and soft ten to fifty times a second. */
const flutter: Way = (dice) => {
  const hz = dice.between(2200, 5200);
  const [perS, depth] = [dice.between(10, 50), dice.between(0.4, 1.1)];
  const lastsS = dice.between(0.25, 1.6);
  const restS = dice.between(0.3, 1.5);
  return Array.from({ length: 1 + dice.below(4) }, (_, k) => {
    const one = note(
      dice,
      k * (lastsS + restS),
      lastsS,
      (u) => hz * (1 + 0.02 * Math.sin(2 * Math.PI * perS * u * lastsS)),
    );
    const { pressure } = one;
    return {
      ...one,
      pressure: (u) => pressure(u) * (1 - depth * (0.5 + 0.5 * Math.sin(2 * Math.PI * perS * u * lastsS))),
    };
  });
};

/** Level pipes, long or short, near together or far apart, on one level or stepping down: of all that sings the likest to a whistle. */
const pipes: Way = (dice) => {
  const hz = dice.between(1900, 5000);
  const lastsS = dice.between(0.09, 0.9);
  const everyS = lastsS + dice.between(0.1, 1.8);
  const stepDown = dice.chance(0.4) ? dice.between(0.93, 0.99) : 1;
  const bend = dice.between(-0.03, 0.03);
  return Array.from({ length: 1 + dice.below(7) }, (_, k) =>
    note(
      dice,
      k * everyS * dice.between(0.97, 1.03),
      lastsS * dice.between(0.92, 1.08),
      (u) => hz * stepDown ** k * (1 + bend * (u - 0.5)),
    ),
  );
};

/** A ball that is let fall: the same short note quicker and quicker, or slower. */
const bouncing: Way = (dice) => {
  const hz = dice.between(2300, 4800);
  const bend = dice.between(0.88, 1.12);
  const quicker = dice.between(0.86, 1.05);
  const all: Gesture[] = [];
  let everyS = dice.between(0.12, 0.45);
  for (let k = 6 + dice.below(14), atS = 0; k > 0; k--) {
    all.push(note(dice, atS, Math.min(0.2, 0.7 * everyS), (u) => hz * bend ** (u - 0.5)));
    atS += everyS;
    everyS = Math.max(0.06, everyS * quicker);
  }
  return all;
};

/** A long cry that falls, or rises and falls, its second partial strong: a bird of prey's, a gull's. */
const cry: Way = (dice) => {
  const hz = dice.between(1600, 3400);
  const [arch, fall] = [dice.between(0, 0.3), dice.between(0.02, 0.4)];
  return Array.from({ length: 1 + dice.below(3) }, (_, k) => ({
    ...note(
      dice,
      k * dice.between(0.9, 2),
      dice.between(0.35, 1.4),
      (u) => hz * (1 + arch * Math.sin(Math.PI * u) - fall * u),
    ),
    second: fromDb(dice.between(-22, -4)),
  }));
};

const WAYS = { twoVoiced, jumper, flutter, pipes, bouncing, cry };
/** Ways of singing that come of a syrinx, none of them in the sets that teach. */
export type SyrinxKind = keyof typeof WAYS;
export const isSyrinx = (kind: string): kind is SyrinxKind => kind in WAYS;

/**
 * A phrase as a syrinx sings it, about unit amplitude: each gesture drives a tone that sounds by itself, so its rise and fall are the
 * membranes' own; our own descriptions of ways, no bird's recording.
 */
export function syrinxPhrase(kind: SyrinxKind, rateHz: number, dice: Dice): Float64Array {
  const gestures = WAYS[kind](dice);
  const wholeS = Math.max(...gestures.map(({ atS, lastsS }) => atS + lastsS)) + 0.15;
  const sound = new Float64Array(Math.round(wholeS * rateHz));
  const quickness = dice.between(150, 900);
  const hoarse = 10 ** dice.between(-4.5, -2.5);
  for (const { atS, lastsS, pitchHz, pressure, db, second } of gestures) {
    const samples = Math.round((lastsS + 0.05) * rateHz);
    const unsteady = wander(samples, 0.08, rateHz, dice);
    const pitch = (i: number) => pitchHz(Math.min(1, i / (lastsS * rateHz))) * (1 + 0.002 * unsteady[i]!);
    const over = (i: number) => (i > lastsS * rateHz ? -0.3 : 1.3 * pressure(i / (lastsS * rateHz)) - 0.3);
    const swing = selfSounding({ samples, over, pitchHz: pitch, quickness, kicks: hoarse }, rateHz, dice);
    addAt(sound, swingSound(swing, pitch, second, rateHz), Math.round(atS * rateHz), fromDb(db));
  }
  return sound;
}
