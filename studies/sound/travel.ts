import type { Dice } from '../careers/dice.ts';
import { type Air, airAbsorptionDbPerM, soundSpeedMPerS } from './air-absorption.ts';
import { biquad, filtered } from './filters.ts';
import { type Response, throughResponse } from './fourier.ts';
import { addAt, fromDb, wander } from './noise.ts';
import { type Reverberation, reverberated } from './reverberation.ts';

/** Where a sound is made and what stands round it. */
export interface Path {
  distanceM: number;
  air: Air;
  /** Trees behind or beside: how late the first of their echoes is, over how long they come, and the loudest of them. */
  trees: { firstS: number; overS: number; loudestDb: number } | null;
  /** How late the echo of a wall is; null where there is none. */
  wallS: number | null;
  rings: Reverberation | null;
}

/** How long echoes are followed after the sound is over. */
const TAIL_S = 0.6;
const MOUTH_M = 1.5;
const MICROPHONE_M = 1.2;
/** Grassland, Pa·s/m²: the effective flow resistivity that outdoor sound work commonly takes for grass (100 to 300 thousand). */
const GRASS_RESISTIVITY = 2e5;

/**
 * Reflection of a plane wave off grass: impedance by Delany and Bazley (1970), then R = (Z sin θ - 1) / (Z sin θ + 1), θ the angle above the
 * ground. Below f/σ = 0.01 their fit is stretched; what whistles and clicks hold lies within it.
 */
function grassReflection(frequencyHz: number, sinGraze: number) {
  const x = Math.max(frequencyHz, 50) / GRASS_RESISTIVITY;
  const zRe = (1 + 0.0511 * x ** -0.75) * sinGraze;
  const zIm = -0.0768 * x ** -0.73 * sinGraze;
  const bottom = (zRe + 1) ** 2 + zIm ** 2;
  return { re: (zRe ** 2 + zIm ** 2 - 1) / bottom, im: (2 * zIm) / bottom };
}

/** Direct sound and its mirror in the grass, through the air; without the time that the direct sound travels. */
function openGround(path: Path): Response {
  const { distanceM, air } = path;
  const directM = Math.hypot(distanceM, MOUTH_M - MICROPHONE_M);
  const mirrorM = Math.hypot(distanceM, MOUTH_M + MICROPHONE_M);
  const sinGraze = (MOUTH_M + MICROPHONE_M) / mirrorM;
  const lateS = (mirrorM - directM) / soundSpeedMPerS(air.temperatureC);
  // Moving air takes away what the two agree about: by half at 100 m and 4 kHz (our judgement, 2026).
  const agreeing = (hz: number) => Math.exp(-0.7 * (distanceM / 100) * (hz / 4000) ** 2);
  // Both are smooth: a table every 25 Hz is as good, and a hundred times as quick.
  const table = Array.from({ length: 961 }, (_, k) => ({
    loss: fromDb(-airAbsorptionDbPerM(25 * k, air) * directM),
    grass: grassReflection(25 * k, sinGraze),
  }));
  return (hz) => {
    const { loss, grass } = table[Math.min(960, Math.round(hz / 25))]!;
    const share = (directM / mirrorM) * agreeing(hz);
    const turn = -2 * Math.PI * hz * lateS;
    const re = grass.re * Math.cos(turn) - grass.im * Math.sin(turn);
    const im = grass.re * Math.sin(turn) + grass.im * Math.cos(turn);
    return { re: loss * (1 + share * re), im: loss * share * im };
  };
}

/**
 * A sound as it comes to the microphone, its time counted from the arrival of the direct sound: `direct` with the ground's mirror and the
 * air's loss, and `echoes` off trees, a wall and a place that rings, each some hundredths of a second to nearly half a second late, duller with each bounce. Both are
 * relative to spherical spreading from 1 m; beyond 40 m the level wavers with the moving air.
 */
export function travelled(sound: Float64Array, sampleRateHz: number, path: Path, dice: Dice) {
  const { distanceM, trees, wallS, rings } = path;
  if (!(distanceM > 0)) throw new RangeError(`distanceM: expected > 0, got ${distanceM}`);
  const direct = throughResponse(sound, sampleRateHz, 0.01, openGround(path));
  const waverDb = Math.min(3, Math.max(0, distanceM - 40) / 60);
  const waver = wander(direct.length, 0.6, sampleRateHz, dice);
  for (let i = 0; i < direct.length; i++) direct[i] = (direct[i]! * fromDb(waverDb * waver[i]!)) / distanceM;
  const echoes =
    rings === null
      ? new Float64Array(direct.length + Math.round(TAIL_S * sampleRateHz))
      : reverberated(direct, TAIL_S, rings, sampleRateHz, dice);
  if (trees !== null) {
    const dull = filtered(direct.slice(), biquad('lowpass', dice.between(2500, 6000), 0.6, sampleRateHz));
    const bounces = 10 + dice.below(20);
    for (let k = 0; k < bounces; k++) {
      const along = k === 0 ? 0 : dice.uniform();
      const db = trees.loudestDb - 12 * along + (k === 0 ? 0 : dice.between(-9, 0));
      const gain = fromDb(db) * (dice.chance(0.5) ? 1 : -1) * (k === 0 ? 1 : 0.6);
      const at = Math.round((trees.firstS + along * trees.overS) * sampleRateHz);
      addAt(echoes, dull, at, gain);
    }
  }
  if (wallS !== null) {
    // Stone throws most of it back and hardly dulls it; it lies off to a side, so some is lost by the way.
    const loud = dice.between(-20, -8);
    const bright = filtered(direct.slice(), biquad('lowpass', dice.between(5000, 9000), 0.6, sampleRateHz));
    addAt(echoes, bright, Math.round(wallS * sampleRateHz), fromDb(loud));
    addAt(echoes, bright, Math.round(2.1 * wallS * sampleRateHz), -fromDb(loud - dice.between(8, 16)));
  }
  return { direct, echoes };
}
