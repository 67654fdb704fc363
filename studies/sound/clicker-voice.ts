import type { Dice } from '../careers/dice.ts';
import { addAt, fromDb, whiteNoise } from './noise.ts';

/** One training clicker: a bistable metal strip with the modes that its box lets out. */
export interface ClickerVoice {
  modes: readonly { hz: number; decayS: number; gain: number }[];
  releaseDb: number;
  /** The strip strikes twice at each snap: it buckles, then meets its stop. */
  strikeGapS: number;
}

/** A clicker drawn: four to six modes between 2 and 8 kHz with decays of a few milliseconds (our judgement, 2026: no measurement was found). */
export function drawClicker(dice: Dice, lowestHz: number, highestHz: number): ClickerVoice {
  return {
    modes: Array.from({ length: 4 + dice.below(3) }, () => ({
      hz: dice.between(lowestHz, highestHz),
      decayS: dice.between(0.001, 0.005),
      gain: dice.between(0.3, 1),
    })),
    releaseDb: dice.between(-10, 1),
    strikeGapS: dice.between(0.0006, 0.0025),
  };
}

function snap(voice: ClickerVoice, stretch: number, sampleRateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(0.04 * sampleRateHz);
  const sound = new Float64Array(samples);
  const strike = (at: number, strength: number) => {
    for (const { hz, decayS, gain } of voice.modes) {
      if (hz * stretch > 0.45 * sampleRateHz) continue;
      const turn = (2 * Math.PI * hz * stretch) / sampleRateHz;
      for (let i = at; i < samples; i++) {
        const since = i - at;
        sound[i] =
          sound[i]! + strength * gain * Math.sin(turn * since) * Math.exp(-since / (decayS * sampleRateHz));
      }
    }
    const thud = whiteNoise(Math.round(0.0012 * sampleRateHz), dice);
    addAt(
      sound,
      thud.map((x, i) => 0.4 * strength * x * Math.exp(-i / (0.0003 * sampleRateHz))),
      at,
    );
  };
  strike(0, 1);
  strike(Math.round(voice.strikeGapS * sampleRateHz), dice.between(0.4, 0.9));
  return sound;
}

/** A press and its release `gapS` later: two snaps of the one strip, the release with its modes a few per cent off. */
export function pressAndRelease(voice: ClickerVoice, gapS: number, sampleRateHz: number, dice: Dice) {
  const sound = new Float64Array(Math.round((gapS + 0.05) * sampleRateHz));
  addAt(sound, snap(voice, 1, sampleRateHz, dice), 0);
  const release = snap(voice, dice.between(0.93, 1.07), sampleRateHz, dice);
  addAt(sound, release, Math.round(gapS * sampleRateHz), fromDb(voice.releaseDb));
  return sound;
}
