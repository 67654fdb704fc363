import type { Dice } from '../careers/dice.ts';
import { addAt, bandNoise, fromDb, swell, toneAlong } from './noise.ts';

/** One note of a song: a pitch that bends from one end to the other by way of its middle. */
interface Note {
  fromHz: number;
  middleHz: number;
  toHz: number;
  lastsS: number;
  restS: number;
  buzz?: number;
}

/** How a bird of that way of singing sings: our own descriptions of ways, no bird's recording. */
type Song = (dice: Dice) => Note[];

const times = (n: number, note: (k: number) => Note) => Array.from({ length: n }, (_, k) => note(k));

const sweep = (fromHz: number, toHz: number, lastsS: number, restS: number): Note => ({
  fromHz,
  middleHz: (fromHz + toHz) / 2,
  toHz,
  lastsS,
  restS,
});

/** Short chirps that fall or rise by a third and more. */
const chirps: Song = (dice) => {
  const hz = dice.between(3000, 6000);
  return times(2 + dice.below(6), () =>
    sweep(
      hz * dice.between(1.1, 1.4),
      hz * dice.between(0.7, 0.95),
      dice.between(0.04, 0.12),
      dice.between(0.08, 0.4),
    ),
  );
};

/** A rich warble: notes that slide into one another between 1.5 and 3.5 kHz. */
const warble: Song = (dice) =>
  times(5 + dice.below(8), () => ({
    fromHz: dice.between(1500, 3500),
    middleHz: dice.between(1500, 3500),
    toHz: dice.between(1500, 3500),
    lastsS: dice.between(0.08, 0.35),
    restS: dice.between(0.01, 0.08),
  }));

/** Two notes turn about, a see-saw: each nearly level, which is what makes it like pips. */
const seesaw: Song = (dice) => {
  const high = dice.between(4200, 6200);
  const low = high * dice.between(0.6, 0.82);
  return times(6 + dice.below(8), (k) =>
    sweep(k % 2 ? low : high, (k % 2 ? low : high) * dice.between(0.94, 0.99), 0.11, 0.07),
  );
};

/** A rattle of quick sweeps, ten to twenty-five a second. */
const rattle: Song = (dice) => {
  const hz = dice.between(2500, 5500);
  const eachS = 1 / dice.between(10, 25);
  return times(12 + dice.below(20), () => sweep(hz * 1.2, hz * 0.85, 0.6 * eachS, 0.4 * eachS));
};

/** One level note said again and again, softly begun: held out of the sets that are tuned on. */
const piping: Song = (dice) => {
  const hz = dice.between(2000, 4200);
  const bend = dice.between(0.9, 0.97);
  const lastsS = dice.between(0.12, 0.35);
  const restS = dice.between(0.25, 0.7);
  return times(2 + dice.below(5), () => ({
    fromHz: hz * bend,
    middleHz: hz,
    toHz: hz * bend,
    lastsS,
    restS,
  }));
};

/** A long rise, a wader's: held out. */
const rise: Song = (dice) => {
  const hz = dice.between(1500, 2200);
  return times(1 + dice.below(3), () =>
    sweep(hz, hz * dice.between(1.35, 1.8), dice.between(0.4, 1), dice.between(0.15, 0.5)),
  );
};

/** A song without a pause, four to eight notes a second: held out. */
const aloft: Song = (dice) =>
  times(20 + dice.below(20), () =>
    sweep(dice.between(2500, 6500), dice.between(2500, 6500), dice.between(0.06, 0.2), 0.03),
  );

/** A dry buzz: held out. */
const buzz: Song = (dice) => {
  const hz = dice.between(3500, 5500);
  return times(1 + dice.below(3), () => ({
    ...sweep(hz, hz * 0.97, dice.between(0.4, 1.2), 0.4),
    buzz: dice.between(60, 120),
  }));
};

const SONGS = { chirps, warble, seesaw, rattle, piping, rise, aloft, buzz };
/** The ways of singing that the study knows. */
export type BirdKind = keyof typeof SONGS;

/** A phrase sung at about unit amplitude, with a weak second partial and nothing of a whistle's breath. */
export function birdPhrase(kind: BirdKind, sampleRateHz: number, dice: Dice): Float64Array {
  const notes = SONGS[kind](dice);
  const whole = notes.reduce((sum, { lastsS, restS }) => sum + lastsS + restS, 0.1);
  const sound = new Float64Array(Math.round(whole * sampleRateHz));
  let atS = 0;
  for (const note of notes) {
    const samples = Math.max(8, Math.round(note.lastsS * sampleRateHz));
    const bend = (i: number) => {
      const u = i / samples;
      const peak = 2 * note.middleHz - (note.fromHz + note.toHz) / 2;
      return (1 - u) ** 2 * note.fromHz + 2 * u * (1 - u) * peak + u * u * note.toHz;
    };
    const wobble = note.buzz ?? 0;
    const pitch = (i: number) =>
      bend(i) * (1 + (wobble ? 0.08 * Math.sin((2 * Math.PI * wobble * i) / sampleRateHz) : 0));
    const tone = toneAlong(pitch, samples, sampleRateHz);
    const second = toneAlong((i) => 2 * pitch(i), samples, sampleRateHz);
    const shape = swell(
      samples,
      note.lastsS * dice.between(0.15, 0.45),
      note.lastsS * dice.between(0.2, 0.5),
      sampleRateHz,
    );
    const loud = fromDb(dice.between(-6, 0));
    addAt(
      sound,
      tone.map((x, i) => loud * shape[i]! * (x + 0.04 * second[i]!)),
      Math.round(atS * sampleRateHz),
    );
    atS += note.lastsS + note.restS;
  }
  return sound;
}

/** Crickets: three to five pulses of a steady 4 to 5.5 kHz, again and again for `lastsS`; held out. */
export function crickets(lastsS: number, sampleRateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(lastsS * sampleRateHz);
  const hz = dice.between(4000, 5500);
  const everyS = dice.between(0.3, 0.6);
  const pulses = 3 + dice.below(3);
  const tone = toneAlong(() => hz, samples, sampleRateHz);
  const rough = bandNoise(samples, hz - 200, hz + 200, sampleRateHz, dice);
  return tone.map((x, i) => {
    const inSong = ((i / sampleRateHz) % everyS) / 0.03;
    const inPulse = inSong % 1;
    return inSong < pulses ? Math.sin(Math.PI * inPulse) ** 2 * (x + 0.1 * rough[i]!) : 0;
  });
}
