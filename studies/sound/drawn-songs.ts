import type { Dice } from '../careers/dice.ts';
import { addAt, fromDb, shaped, toneAlong, wander } from './noise.ts';

/** How the pitch goes along one note: u from 0 to 1 to a factor of the note's pitch. */
type Line = (u: number) => number;

/** The figures of a note that make its way; each is drawn for a song and kept by its notes, more or less. */
const LINES = {
  /** A level, with a bend of some hundredths. */
  level: (dice: Dice): Line => {
    const [slope, arch] = [dice.between(-0.04, 0.04), dice.between(-0.03, 0.03)];
    return (u) => 1 + slope * (u - 0.5) + arch * Math.sin(Math.PI * u);
  },
  /** From one pitch to another, straight or ever quicker. */
  glide: (dice: Dice): Line => {
    const [ratio, power] = [dice.between(0.55, 1.8), dice.between(0.4, 2.5)];
    return (u) => ratio ** (u ** power - 0.5);
  },
  /** Up and down, or down and up. */
  arch: (dice: Dice): Line => {
    const [height, lean] = [dice.between(-0.4, 0.5), dice.between(0.5, 2)];
    return (u) => 1 + height * Math.sin(Math.PI * u ** lean);
  },
  /** A pitch that sways. */
  sway: (dice: Dice): Line => {
    const [turns, depth] = [dice.between(1.5, 12), dice.between(0.01, 0.12)];
    return (u) => 1 + depth * Math.sin(2 * Math.PI * turns * u);
  },
  /** Two or three levels with a quick slide between. */
  stairs: (dice: Dice): Line => {
    const steps = Array.from({ length: 2 + dice.below(2) }, () => dice.between(0.75, 1.3));
    return (u) => {
      const at = u * steps.length - 0.5;
      const low = Math.max(0, Math.min(steps.length - 1, Math.floor(at)));
      const high = Math.min(steps.length - 1, low + 1);
      const part = Math.max(0, Math.min(1, (at - low - 0.4) / 0.2));
      return steps[low]! * (steps[high]! / steps[low]!) ** part;
    };
  },
  /** Anything that is smooth: four random waves. */
  free: (dice: Dice): Line => {
    const waves = Array.from(
      { length: 4 },
      (_, k) => [dice.between(-0.12, 0.12) / (k + 1), dice.between(0, 6)] as const,
    );
    return (u) =>
      Math.exp(
        waves.reduce((sum, [depth, phase], k) => sum + depth * Math.sin(Math.PI * (k + 1) * u + phase), 0),
      );
  },
} as const;

/** Songs drawn from wide ranges, by the line of their notes: each is a family of its own, to be left out when numbers are judged. */
export type DrawnKind = keyof typeof LINES;
export const isDrawn = (kind: string): kind is DrawnKind => kind in LINES;
export const DRAWN_KINDS = Object.keys(LINES) as DrawnKind[];

/** Shape of a note's loudness: how it rises and falls, and how it quavers. */
function loudness(lastsS: number, sampleRateHz: number, dice: Dice, quaver: { perS: number; depth: number }) {
  const samples = Math.max(16, Math.round(lastsS * sampleRateHz));
  const [rise, fall] = [dice.between(0.04, 0.5), dice.between(0.06, 0.6)];
  const power = dice.between(0.7, 2);
  return Float64Array.from({ length: samples }, (_, i) => {
    const u = i / samples;
    const swell = Math.sin((Math.PI / 2) * Math.min(1, u / rise, Math.max(0, (1 - u) / fall))) ** power;
    return (
      swell * (1 - quaver.depth * (0.5 + 0.5 * Math.sin((2 * Math.PI * quaver.perS * i) / sampleRateHz)))
    );
  });
}

/**
 * A song of notes that all follow lines of one sort, everything else drawn from wide ranges: how many, how long, how regular, how pure, how
 * rough, whether each is like the one before. It stands for birds, beasts and toys that nobody thought of; about unit amplitude.
 */
export function drawnSong(kind: DrawnKind, sampleRateHz: number, dice: Dice): Float64Array {
  const makeLine = LINES[kind];
  const hz = 1600 * (6200 / 1600) ** dice.uniform();
  const same = dice.chance(0.6);
  const line = makeLine(dice);
  const lastsS = 0.05 * (1.2 / 0.05) ** dice.uniform();
  const restS = 0.03 * (1.5 / 0.03) ** dice.uniform();
  const quicker = dice.chance(0.25) ? dice.between(0.85, 1.12) : 1;
  const uneven = dice.chance(0.5) ? dice.between(0, 0.05) : dice.between(0.1, 0.6);
  const stray = dice.chance(0.5) ? dice.between(0, 0.006) : dice.between(0.02, 0.35);
  const step = dice.chance(0.25) ? dice.between(0.93, 1.06) : 1;
  const quaver = dice.chance(0.3)
    ? { perS: dice.between(6, 90), depth: dice.between(0.2, 1) }
    : { perS: 0, depth: 0 };
  const partials = [
    1,
    fromDb(dice.between(-45, dice.chance(0.3) ? -2 : -15)),
    fromDb(dice.between(-50, dice.chance(0.3) ? -6 : -25)),
  ];
  const rough = dice.chance(0.3) ? dice.between(0.002, 0.02) : 0;
  const count = 1 + dice.below(dice.chance(0.5) ? 4 : 16);
  const notes: { atS: number; sound: Float64Array }[] = [];
  for (let k = 0, atS = 0; k < count && atS < 8; k++) {
    const own = same ? line : makeLine(dice);
    const noteS = Math.max(0.03, lastsS * quicker ** k * (1 + uneven * dice.between(-1, 1)));
    const noteHz = hz * step ** k * Math.exp(stray * dice.between(-1, 1));
    const shape = loudness(noteS, sampleRateHz, dice, quaver);
    const jitter = wander(shape.length, 0.01, sampleRateHz, dice);
    const sound = new Float64Array(shape.length);
    partials.forEach((gain, p) => {
      const pitch = (i: number) => (p + 1) * noteHz * own(i / shape.length) * (1 + rough * jitter[i]!);
      addAt(sound, toneAlong(pitch, shape.length, sampleRateHz), 0, gain);
    });
    notes.push({ atS, sound: shaped(sound, shape, fromDb(dice.between(-5, 0))) });
    atS += noteS + Math.max(0.02, restS * quicker ** k * (1 + uneven * dice.between(-1, 1)));
  }
  const last = notes.at(-1)!;
  const whole = new Float64Array(Math.round((last.atS + 0.05) * sampleRateHz) + last.sound.length);
  for (const { atS, sound } of notes) addAt(whole, sound, Math.round(atS * sampleRateHz));
  return whole;
}
