import type { Dice } from '../careers/dice.ts';
import { biquad, filtered } from './filters.ts';
import { addAt, bandNoise, fromDb, swell, wander } from './noise.ts';

/** Rain on a hood or on the phone's pocket: drops at chance times, each a thud of cloth stretched over air, high or low by its size. */
function rainOnHood(rateHz: number, dice: Dice): Float64Array {
  const lastsS = dice.between(4, 12);
  const sound = new Float64Array(Math.round((lastsS + 0.1) * rateHz));
  const perS = 10 ** dice.between(0.5, 2);
  for (let atS = 0; atS < lastsS; atS += -Math.log(1 - dice.uniform()) / perS) {
    const hz = 10 ** dice.between(2.6, 3.6);
    const dieS = dice.between(0.6, 3) / hz;
    const turn = dice.between(0, 6);
    const drop = Float64Array.from({ length: Math.round(8 * dieS * rateHz) }, (_, i) => {
      const s = i / rateHz;
      return Math.exp(-s / dieS) * (0.7 * Math.sin(2 * Math.PI * hz * s + turn) + 0.3 * dice.normal());
    });
    addAt(sound, drop, Math.round(atS * rateHz), fromDb(-Math.abs(8 * dice.normal())));
  }
  return sound;
}

/** A waxed or a rustling jacket: folds that snap, thousands a second while an arm moves, big ones seldom (as powers of chance). */
function jacket(rateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(0.3, 2.5) * rateHz);
  const moves = wander(samples, dice.between(0.05, 0.3), rateHz, dice);
  const shape = swell(samples, 0.08, 0.1, rateHz);
  const perSample = dice.between(600, 4000) / rateHz;
  const steep = dice.between(1.2, 2.2);
  const snaps = Float64Array.from({ length: samples }, (_, i) => {
    const rate = perSample * shape[i]! * Math.exp(0.8 * moves[i]! - 0.5);
    return dice.chance(rate) ? Math.min(12, (1 - dice.uniform()) ** (-1 / steep)) * dice.normal() : 0;
  });
  const cloth = filtered(snaps.slice(), biquad('bandpass', dice.between(1200, 5000), 0.5, rateHz));
  addAt(cloth, filtered(snaps, biquad('lowpass', dice.between(300, 900), 0.7, rateHz)), 0, 0.7);
  const loudest = cloth.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-9);
  return cloth.map((x) => x / loudest);
}

/** A child's tract is about two thirds as long as a man's: formants of a, e, i, o, u so much higher (rounded, from memory). */
const CHILD_VOWELS = [
  [1030, 1700, 3500],
  [750, 2600, 3600],
  [390, 3200, 3900],
  [680, 1200, 3200],
  [430, 1250, 3200],
] as const;

/** Children who play or call: voices of 280 to 600 Hz, and now and then a shriek above that, through formants one after another. */
function children(rateHz: number, dice: Dice): Float64Array {
  const sound = new Float64Array(Math.round(6.5 * rateHz));
  const ownHz = dice.between(280, 480);
  const tract = dice.between(0.9, 1.12);
  for (let k = 2 + dice.below(7), atS = 0.02; k > 0 && atS < 5; k--) {
    const isShriek = dice.chance(0.15);
    const hz = isShriek ? dice.between(800, 1700) : ownHz * dice.between(0.8, 1.5);
    const lastsS = isShriek ? dice.between(0.25, 1) : dice.between(0.1, 0.45);
    const samples = Math.round(lastsS * rateHz);
    const sway = wander(samples, 0.05, rateHz, dice);
    const [bend, quiver] = [dice.between(-0.3, 0.4), dice.between(0, 0.02)];
    let turn = 0;
    const glottis = Float64Array.from({ length: samples }, (_, i) => {
      turn += (hz * (1 + bend * Math.sin((Math.PI * i) / samples)) * (1 + quiver * sway[i]!)) / rateHz;
      // Rosenberg's pulse: opens, shuts twice as quickly, stays shut for a third.
      const u = turn % 1;
      return u < 0.44
        ? 0.5 - 0.5 * Math.cos((Math.PI * u) / 0.44)
        : u < 0.66
          ? Math.cos((Math.PI * (u - 0.44)) / 0.44)
          : 0;
    });
    const breath = bandNoise(samples, 2000, 6500, rateHz, dice);
    const voice = glottis.map((x, i) => x - (glottis[i - 1] ?? 0) + 0.03 * breath[i]!);
    for (const formantHz of dice.pick(CHILD_VOWELS)) {
      const resonance = biquad('lowpass', tract * formantHz, dice.between(5, 10), rateHz);
      filtered(voice, resonance);
    }
    const shape = swell(samples, 0.03, 0.06, rateHz);
    const loudest = voice.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-9);
    addAt(
      sound,
      voice.map((x, i) => (x * shape[i]!) / loudest),
      Math.round(atS * rateHz),
      fromDb(dice.between(-6, 0)),
    );
    atS += lastsS + dice.between(0.03, 0.4);
  }
  return sound;
}

/** An insect that scrapes: teeth of a file strike a wing that rings, faster in the middle of a stroke; strokes in verses or without end. */
function fileInsect(rateHz: number, dice: Dice): Float64Array {
  const lastsS = dice.between(3, 9);
  const sound = new Float64Array(Math.round((lastsS + 0.1) * rateHz));
  const hz = dice.between(3500, Math.min(9500, 0.4 * rateHz));
  const teethPerS = dice.chance(0.4) ? hz : dice.between(400, 2500);
  const [strokeS, everyS] = [dice.between(0.012, 0.05), dice.between(0.055, 0.2)];
  const [sings, rests] = [dice.between(0.3, 3), dice.between(0, 1.2)];
  for (let atS = 0; atS < lastsS; atS += everyS * dice.between(0.95, 1.05)) {
    if (atS % (sings + rests) > sings) continue;
    for (let s = 0; s < strokeS; ) {
      const swift = 0.5 + 0.5 * Math.sin((Math.PI * s) / strokeS);
      const at = Math.round((atS + s) * rateHz);
      sound[at] = sound[at]! + swift * dice.between(0.8, 1.2);
      s += 1 / (teethPerS * (0.85 + 0.15 * swift));
    }
  }
  filtered(sound, biquad('bandpass', hz, dice.between(8, 40), rateHz));
  const loudest = sound.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-9);
  return sound.map((x) => x / loudest);
}

const ABOUT = { rainOnHood, jacket, children, fileInsect };
/** Sounds of the weather, of clothes, of people and of the grass about a handler. */
export type AboutKind = keyof typeof ABOUT;
export const isAbout = (kind: string): kind is AboutKind => kind in ABOUT;
export const ABOUT_KINDS = Object.keys(ABOUT) as AboutKind[];

/** One of them, about unit amplitude. */
export const aboutTheHandler = (kind: AboutKind, sampleRateHz: number, dice: Dice): Float64Array =>
  ABOUT[kind](sampleRateHz, dice);
