import { type Dice, diceNamed } from '../careers/dice.ts';
import { fieldBackground } from './background.ts';
import { clickSnrDb, whistleSnrDb } from './band-ratio.ts';
import { drawClicker, pressAndRelease } from './clicker-voice.ts';
import { addDisturbances } from './disturbances.ts';
import { recorded } from './microphone.ts';
import { addAt, fromDb, scaled } from './noise.ts';
import { drawPattern } from './pattern.ts';
import type { Recording, TrueClick, TrueWhistle } from './recording.ts';
import type { Scene } from './scene.ts';
import { travelled } from './travel.ts';
import { blow, drawVoice, type Voice } from './voices.ts';

/** A pattern of blasts or one press, placed: the sound with its echoes, and what is true of it but for the ratios. */
interface Placed {
  sound: Float64Array;
  direct: Float64Array;
  at: number;
  whistles: Omit<TrueWhistle, 'inBandSnrDb'>[];
  clickS: number | null;
}

/** A blast of 0.35 s and longer is a long one (common practice, no source). */
const LONG_FROM_S = 0.35;

function placed(dry: Float64Array, atS: number, distanceM: number, scene: Scene, dice: Dice) {
  const { treesS, wallS, rings, sampleRateHz } = scene;
  const trees =
    treesS === null
      ? null
      : { firstS: dice.between(...treesS), overS: dice.between(0.1, 0.3), loudestDb: dice.between(-30, -12) };
  const path = { distanceM, air: scene.air, trees, wallS, rings };
  const { direct, echoes } = travelled(dry, sampleRateHz, path, dice);
  addAt(echoes, direct, 0);
  return { sound: echoes, direct, at: Math.round(atS * sampleRateHz) };
}

function blownPattern(voice: Voice, whose: 'own' | 'other', atS: number, scene: Scene, dice: Dice): Placed {
  const { sampleRateHz } = scene;
  const distanceM = dice.between(...scene.distanceM);
  const pattern = drawPattern(scene, dice);
  const dry = new Float64Array(
    Math.round(pattern.reduce((sum, { lastsS, gapS }) => sum + lastsS + gapS, 0.2) * sampleRateHz),
  );
  const whistles: Placed['whistles'] = [];
  const firstAt = Math.round(atS * sampleRateHz);
  let fromS = 0.05;
  for (const { lastsS: wantedS, gapS, gain } of pattern) {
    const { sound, leadS, lastsS } = blow(voice, wantedS, sampleRateHz, dice);
    const at = Math.round((fromS - leadS) * sampleRateHz);
    addAt(dry, sound, at, gain);
    const startS = (firstAt + at) / sampleRateHz + leadS;
    const kind = lastsS >= LONG_FROM_S ? 'long' : 'pip';
    whistles.push({ startS, endS: startS + lastsS, kind, pitchHz: voice.pitchHz, distanceM, whose });
    fromS += lastsS + gapS;
  }
  return { ...placed(dry, atS, distanceM, scene, dice), whistles, clickS: null };
}

/** Another handler's pitch: at least a tenth off the own one, within the scene's span. */
function otherPitchHz(ownHz: number, [low, high]: Scene['pitchHz'], dice: Dice): number {
  const hz = dice.between(low, high);
  return Math.abs(Math.log(hz / ownHz)) > Math.log(1.1)
    ? hz
    : ownHz * (ownHz > (low + high) / 2 ? 0.8 : 1.25);
}

/** Own and other patterns and presses one after another, scaled to a ratio drawn from the scene's span. */
function placeAll(scene: Scene, background: Float64Array, dice: Dice): Placed[] {
  const { snrDb, sampleRateHz } = scene;
  if (snrDb === null) return [];
  const ownHz = dice.between(...scene.pitchHz);
  const own = drawVoice(dice.pick(scene.whistles), ownHz, scene.breadth, dice);
  const other = drawVoice(
    dice.pick(scene.whistles),
    otherPitchHz(ownHz, scene.pitchHz, dice),
    scene.breadth,
    dice,
  );
  const clicker = drawClicker(dice, ...scene.clickModesHz);
  const all: Placed[] = [];
  for (let atS = dice.between(0.5, 2); ; atS += dice.between(...scene.betweenS)) {
    let one: Placed;
    if (dice.chance(0.45)) {
      const dry = pressAndRelease(clicker, dice.between(...scene.releaseGapS), sampleRateHz, dice);
      const distanceM = Math.min(20, dice.between(...scene.distanceM));
      const at = placed(dry, atS, distanceM, scene, dice);
      one = { ...at, whistles: [], clickS: at.at / sampleRateHz };
    } else {
      const isOther = dice.chance(scene.othersShare);
      one = blownPattern(isOther ? other : own, isOther ? 'other' : 'own', atS, scene, dice);
    }
    atS += one.sound.length / sampleRateHz;
    if (atS > scene.lastsS - 0.5) return all;
    const now = ratios(one, background, sampleRateHz);
    const weakest = Math.min(...now);
    // A mouth that let go before its whistle spoke: nothing was blown.
    if (!Number.isFinite(weakest)) continue;
    const gain = fromDb(dice.between(...snrDb) - weakest);
    scaled(one.sound, gain);
    scaled(one.direct, gain);
    all.push(one);
  }
}

const ratios = (
  { whistles, clickS, direct, at }: Placed,
  rest: Float64Array,
  sampleRateHz: number,
): number[] =>
  clickS === null
    ? whistles.map((whistle) => whistleSnrDb(direct, at, whistle, rest, sampleRateHz))
    : [clickSnrDb(direct, at, rest, sampleRateHz)];

/** A blast or press of which other sounds push more than this share of the samples to full scale is not in the recording any more. */
const DROWNED_SHARE = 0.1;

/** Share of the samples that stand at full scale where all else is more than twice as loud as the pattern itself. */
function drownedShare(
  samples: Float32Array,
  sum: Float64Array,
  { sound, at }: Placed,
  from: number,
  to: number,
): number {
  let drowned = 0;
  for (let i = Math.round(from); i < to; i++) {
    const own = sound[i - at] ?? 0;
    const isFull = Math.abs(samples[i]!) >= 32767 / 32768;
    if (isFull && Math.abs(sum[i]! - own) > 2 * Math.abs(own)) drowned++;
  }
  return drowned / (to - from);
}

/**
 * A recording of a scene with its truth. Sound is added up as pressure (background, disturbances, each blast or press over its own path with
 * its echoes), the ratios are measured against all that is not the pattern itself (minus infinity where a buffet or a shot fills the phone's
 * range over it), and the sum goes through the phone. The times are of the direct sound at the microphone.
 */
export function makeRecording(scene: Scene): Recording {
  const { sampleRateHz, name } = scene;
  const sum = fieldBackground(scene, diceNamed(`${name} background`));
  const all = placeAll(scene, sum, diceNamed(`${name} patterns`));
  const disturbed = addDisturbances(sum, scene, diceNamed(`${name} disturbances`));
  for (const { sound, at } of all) addAt(sum, sound, at);
  const samples = recorded(sum.slice(), scene);
  const whistles: TrueWhistle[] = [];
  const clicks: TrueClick[] = [];
  for (const one of all) {
    const isDrowned = (fromS: number, toS: number) =>
      drownedShare(samples, sum, one, fromS * sampleRateHz, toS * sampleRateHz) > DROWNED_SHARE;
    addAt(sum, one.sound, one.at, -1);
    const found = ratios(one, sum, sampleRateHz);
    addAt(sum, one.sound, one.at);
    one.whistles.forEach((whistle, k) => {
      const inBandSnrDb = isDrowned(whistle.startS, whistle.endS) ? Number.NEGATIVE_INFINITY : found[k]!;
      whistles.push({ ...whistle, inBandSnrDb });
    });
    if (one.clickS !== null) {
      const snrDb = isDrowned(one.clickS, one.clickS + 0.008) ? Number.NEGATIVE_INFINITY : found[0]!;
      clicks.push({ timeS: one.clickS, snrDb });
    }
  }
  return { samples, sampleRateHz, truth: { whistles, clicks }, disturbed };
}
