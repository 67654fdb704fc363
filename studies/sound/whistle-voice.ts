import type { Dice } from '../careers/dice.ts';
import { addAt, bandNoise, fromDb, swell, toneAlong, wander } from './noise.ts';

/** What sort of whistle it is; `slide` is one blown with the fingers or with a pitch that is moved on purpose. */
export type WhistleKind = 'plain' | 'pea' | 'twoTone' | 'slide';

/** One whistle as its owner blows it: the same through a recording. */
export interface WhistleVoice {
  kind: WhistleKind;
  pitchHz: number;
  /** Pitch of the second chamber over the first; 1 for all but `twoTone`. */
  secondRatio: number;
  secondDb: number;
  trillHz: number;
  trillDepth: number;
  /** How deep the pea closes the mouth, 0 to 1. */
  trillShut: number;
  slideShare: number;
  harmonicsDb: readonly [number, number];
  breathDb: number;
  /** Share by which the pitch begins low before the jet has settled. */
  scoop: number;
  attackS: number;
  releaseS: number;
  driftShare: number;
  /** What a wide handler does besides; a usual one does none of it. */
  manner?: Manner;
}

/** A blast that settles slowly, sinks at its end, swells, trembles, cracks at its beginning, or has a pea that rolls unevenly. */
interface Manner {
  settleS: number;
  endDrop: number;
  endS: number;
  swell: number;
  tremble: number;
  trembleHz: number;
  crackS: number;
  crackRatio: number;
  trillUneven: number;
  trillPower: number;
}

const drawManner = (dice: Dice): Manner => ({
  settleS: dice.between(0.005, 0.09),
  endDrop: dice.chance(0.4) ? dice.between(0, 0.2) : 0,
  endS: dice.between(0.01, 0.08),
  swell: dice.between(-0.5, 0.5),
  tremble: dice.chance(0.35) ? dice.between(0.02, 0.25) : 0,
  trembleHz: dice.between(2.5, 10),
  crackS: dice.chance(0.25) ? dice.between(0.005, 0.05) : 0,
  crackRatio: dice.between(1.25, 2.1),
  trillUneven: dice.between(0.02, 0.35),
  trillPower: dice.between(1, 3),
});

/** A whistle drawn in the ranges that common trade whistles keep (our judgement, 2026: no measured spectrum was found). */
export function drawWhistle(kind: WhistleKind, pitchHz: number, dice: Dice): WhistleVoice {
  const isPea = kind === 'pea';
  return {
    kind,
    pitchHz,
    secondRatio: kind === 'twoTone' ? dice.between(1.05, 1.11) : 1,
    secondDb: dice.between(-6, 0),
    trillHz: isPea ? dice.between(30, 60) : 0,
    trillDepth: isPea ? dice.between(0.012, 0.045) : 0,
    trillShut: isPea ? dice.between(0.3, 0.85) : 0,
    slideShare: kind === 'slide' ? dice.between(0.04, 0.14) * (dice.chance(0.6) ? 1 : -1) : 0,
    harmonicsDb: [dice.between(-42, -18), dice.between(-48, -24)],
    breathDb: dice.between(-34, -18),
    scoop: dice.between(0.01, 0.07),
    attackS: dice.between(0.008, 0.035),
    releaseS: dice.between(0.012, 0.05),
    driftShare: dice.between(0.001, 0.008),
  };
}

/** A whistle drawn wider than is usual: softer and harder mouths, drier and wetter breath, slower and quicker peas (our judgement, 2026). */
export const drawWideWhistle = (kind: WhistleKind, pitchHz: number, dice: Dice): WhistleVoice => ({
  ...drawWhistle(kind, pitchHz, dice),
  ...(kind === 'twoTone' ? { secondRatio: dice.between(1.03, 1.16), secondDb: dice.between(-12, 0) } : {}),
  ...(kind === 'pea'
    ? {
        trillHz: dice.between(12, 70),
        trillDepth: dice.between(0.005, 0.05),
        trillShut: dice.between(0.2, 0.95),
      }
    : {}),
  ...(kind === 'slide' ? { slideShare: dice.between(0.02, 0.22) * (dice.chance(0.6) ? 1 : -1) } : {}),
  harmonicsDb: [dice.between(-46, -12), dice.between(-52, -18)],
  breathDb: dice.between(-42, -13),
  scoop: dice.between(0, 0.16),
  attackS: dice.between(0.004, 0.07),
  releaseS: dice.between(0.008, 0.08),
  driftShare: dice.between(0.0005, 0.015),
  manner: drawManner(dice),
});

const trembling = ({ trembleHz }: Manner, i: number, sampleRateHz: number) =>
  Math.sin((2 * Math.PI * trembleHz * i) / sampleRateHz);

function bentBy(manner: Manner, i: number, samples: number, sampleRateHz: number): number {
  const { endDrop, endS, tremble, crackS, crackRatio } = manner;
  const sunk = 1 - endDrop * Math.exp(-(samples - i) / (endS * sampleRateHz));
  const cracked = i < crackS * sampleRateHz ? crackRatio : 1;
  return sunk * cracked * (1 + 0.05 * tremble * trembling(manner, i, sampleRateHz));
}

const swollenBy = (manner: Manner, i: number, samples: number, sampleRateHz: number): number =>
  (1 + manner.swell * (i / samples - 0.5)) * (1 + manner.tremble * trembling(manner, i, sampleRateHz));

/**
 * One blast as it leaves the mouth, about unit amplitude, `durationS` between the half heights of its rise and fall: an edge tone whose pitch
 * scoops up while the jet settles and follows the blowing pressure (as p^0.1), the breath round it, a chiff before the tone stands, and the
 * pea's beat on amplitude and pitch together. The sound begins `leadS` before the first half height.
 */
export function blowBlast(voice: WhistleVoice, durationS: number, sampleRateHz: number, dice: Dice) {
  const { attackS, releaseS } = voice;
  // A raised cosine is at half height half way up.
  const leadS = attackS / 2;
  const samples = Math.round((durationS + leadS + releaseS / 2) * sampleRateHz);
  const pressure = wander(samples, 0.25, sampleRateHz, dice);
  const { manner } = voice;
  const settleS = manner?.settleS ?? dice.between(0.008, 0.025);
  const trillPhase = dice.between(0, 2 * Math.PI);
  const trillJitter = wander(samples, 0.1, sampleRateHz, dice);
  const trillTurn = new Float64Array(samples);
  for (let i = 1; i < samples; i++) {
    trillTurn[i] =
      trillTurn[i - 1]! +
      (2 * Math.PI * voice.trillHz * (1 + (manner?.trillUneven ?? 0.06) * trillJitter[i]!)) / sampleRateHz;
  }
  const pea = (i: number) => Math.sin(trillTurn[i]! + trillPhase);
  const pitch = (i: number) =>
    voice.pitchHz *
    (1 - voice.scoop * Math.exp(-i / (settleS * sampleRateHz))) *
    (1 + voice.driftShare * pressure[i]!) *
    (1 + voice.trillDepth * pea(i)) *
    (1 + voice.slideShare * (i / samples - 0.5)) *
    (manner === undefined ? 1 : bentBy(manner, i, samples, sampleRateHz));
  const sound = new Float64Array(samples);
  const partials: readonly [number, number][] = [
    [1, 0],
    [2, voice.harmonicsDb[0]],
    [3, voice.harmonicsDb[1]],
    ...(voice.secondRatio > 1 ? [[voice.secondRatio, voice.secondDb] as [number, number]] : []),
  ];
  for (const [ratio, db] of partials) {
    const tone = toneAlong((i) => ratio * pitch(i), samples, sampleRateHz, dice.between(0, 6));
    for (let i = 0; i < samples; i++) sound[i] = sound[i]! + fromDb(db) * tone[i]!;
  }
  const breath = bandNoise(samples, 0.6 * voice.pitchHz, 1.6 * voice.pitchHz, sampleRateHz, dice);
  const shape = swell(samples, attackS, releaseS, sampleRateHz);
  for (let i = 0; i < samples; i++) {
    const open = 1 - voice.trillShut * (0.5 + 0.5 * pea(i)) ** (manner?.trillPower ?? 1);
    const blown =
      shape[i]! *
      open *
      (1 + 0.08 * pressure[i]!) *
      (manner === undefined ? 1 : swollenBy(manner, i, samples, sampleRateHz));
    sound[i] = blown * (sound[i]! + fromDb(voice.breathDb) * breath[i]!);
  }
  const chiff = bandNoise(Math.round(0.018 * sampleRateHz), 1500, 7000, sampleRateHz, dice);
  const chiffShape = swell(chiff.length, 0.004, 0.01, sampleRateHz);
  addAt(
    sound,
    chiff.map((x, i) => x * chiffShape[i]! * fromDb(voice.breathDb + 4)),
    0,
  );
  return { sound, leadS, lastsS: durationS };
}
