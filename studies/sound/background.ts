import type { Dice } from '../careers/dice.ts';
import { banded, biquad, filtered } from './filters.ts';
import { gustCascade } from './gust-cascade.ts';
import {
  addAt,
  bandNoise,
  fromDb,
  pinkNoise,
  rootMeanSquare,
  scaled,
  shaped,
  swell,
  toneAlong,
  wander,
  whiteNoise,
} from './noise.ts';
import type { Scene } from './scene.ts';

/** Where whistles and clicks are looked for; a low sample rate ends it earlier. */
export const bandHz = (sampleRateHz: number): [number, number] => [1500, Math.min(8000, 0.45 * sampleRateHz)];

/** Gusts that stand up within a third of a second and die away over seconds, one every five seconds or so, over a calm of half. */
function gustFronts(samples: number, sampleRateHz: number, dice: Dice): Float64Array {
  const gust = new Float64Array(samples).fill(0.5);
  for (let at = -3 * sampleRateHz; at < samples; at += dice.between(1.5, 9) * sampleRateHz) {
    const [high, riseS, dieS] = [dice.between(0.3, 2), dice.between(0.05, 0.35), dice.between(0.6, 3)];
    for (let i = Math.max(0, Math.round(at)); i < Math.min(samples, at + 8 * sampleRateHz); i++) {
      const s = (i - at) / sampleRateHz;
      gust[i] = gust[i]! + high * Math.min(1, s / riseS) * Math.exp(-s / dieS);
    }
  }
  return gust;
}

/**
 * The steady part of a field's sound, its power of 1.5 to 8 kHz one on the whole: leaves and grass that swell with the gusts, a pink murmur,
 * the microphone's own hiss. To it comes the wind at the microphone, pressure that falls steeply above some 200 Hz and goes with the square
 * of the gust, and buffets that push the microphone to its end.
 */
export function fieldBackground(scene: Scene, dice: Dice): Float64Array {
  const { sampleRateHz } = scene;
  const samples = Math.round(scene.lastsS * sampleRateHz);
  const gust =
    scene.gusts === 'fronts'
      ? gustFronts(samples, sampleRateHz, dice)
      : scene.gusts === 'cascade'
        ? gustCascade(samples, sampleRateHz, dice)
        : wander(samples, 3, sampleRateHz, dice).map((x) => Math.exp(0.3 * x));
  const leaves = bandNoise(samples, 900, 6000, sampleRateHz, dice);
  const murmur = pinkNoise(samples, sampleRateHz, dice);
  const hissGain = dice.between(0.2, 0.6);
  const murmurGain = dice.between(0.5, 2);
  const steady = whiteNoise(samples, dice);
  for (let i = 0; i < samples; i++) {
    steady[i] = hissGain * steady[i]! + gust[i]! * leaves[i]! + murmurGain * murmur[i]!;
  }
  const [lowHz, highHz] = bandHz(sampleRateHz);
  scaled(steady, 1 / rootMeanSquare(banded(steady.slice(), lowHz, highHz, sampleRateHz)));
  const rush = filtered(pinkNoise(samples, sampleRateHz, dice), biquad('lowpass', 180, 0.6, sampleRateHz));
  const rushGain = fromDb(scene.windDb) / rootMeanSquare(rush);
  for (let i = 0; i < samples; i++) steady[i] = steady[i]! + rushGain * gust[i]! ** 2 * rush[i]!;
  const buffets = Math.round((scene.buffetsPerMinute * scene.lastsS) / 60);
  for (let k = 0; k < buffets; k++) {
    const push = bandNoise(Math.round(dice.between(0.05, 0.4) * sampleRateHz), 15, 150, sampleRateHz, dice);
    const shape = swell(push.length, 0.02, 0.05, sampleRateHz);
    const gain = fromDb(scene.windDb + dice.between(10, 22));
    addAt(steady, shaped(push, shape, gain), dice.below(samples));
  }
  return steady;
}

/** A hand or cloth that rubs at the microphone: bursts of broad noise, uneven. */
export function rustle(sampleRateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(0.2, 1.5) * sampleRateHz);
  const rub = bandNoise(samples, 250, 6000, sampleRateHz, dice);
  const uneven = wander(samples, 0.03, sampleRateHz, dice);
  const shape = swell(samples, 0.05, 0.1, sampleRateHz);
  return rub.map((x, i) => 0.3 * x * shape[i]! * Math.exp(0.9 * uneven[i]! - 0.9));
}

/** A car that passes: tyres, and an engine's low partials. */
export function passingCar(sampleRateHz: number, dice: Dice): Float64Array {
  const samples = Math.round(dice.between(5, 9) * sampleRateHz);
  const tyres = bandNoise(samples, 300, 2500, sampleRateHz, dice);
  const engineHz = dice.between(60, 130);
  const engine = toneAlong((i) => engineHz * (1.03 - (0.06 * i) / samples), samples, sampleRateHz);
  return tyres.map((x, i) => (0.3 * x + 0.5 * engine[i]!) * Math.exp(-(((i / samples - 0.5) / 0.18) ** 2)));
}
