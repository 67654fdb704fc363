import { finiteBetween } from '../quantity/index.ts';
import { type Air, airAbsorptionDbPerKm } from './air-absorption.ts';
import { dogThresholdDbSpl } from './dog-hearing.ts';

/** A whistle and the air and noise it is blown into. */
export interface WhistleSound extends Air {
  /** At 1 m before the whistle. */
  readonly levelDbSpl: number;
  readonly pitchHz: number;
  /** Noise at the dog, in the ear's own band about the pitch. */
  readonly noiseDb: number;
  /** 0 bare ground to 3 over the dog's back, as in an ask. */
  readonly cover?: number | undefined;
}

/** Taken where nothing is told (contract, "whistle"; our judgement). */
export const usualSound: WhistleSound = {
  levelDbSpl: 105,
  pitchHz: 3_500,
  noiseDb: 40,
  airC: 15,
  humidityPct: 70,
};

/** What stems and leaves take beside the air, decibels a metre at the height of the dog's back (our judgement, 2026; no source). */
const COVER_DB_PER_M = 0.06;
const COVER_REACH_M = 200;
const FULL_COVER = 3;
/** Beyond this the answer is only "more than". */
export const FARTHEST_CARRYING_M = 2_000;

/**
 * Level of the whistle at a distance in still air over open ground, dB SPL:
 * `L = L_1m - 20 lg d - alpha (d - 1) / 1000 - cover`, alpha by ISO9613-1 (spreading: ISO9613-2, equation 7). No ground, no hill,
 * no wind: real fields differ by 10 dB and more. Nearer than 1 m it is the level at 1 m.
 * @throws RangeError for figures that cannot be
 */
export function levelAtDbSpl(distanceM: number, sound: WhistleSound): number {
  finiteBetween('distanceM', distanceM, 0, 1e5);
  finiteBetween('levelDbSpl', sound.levelDbSpl, 0, 150);
  const cover = finiteBetween('cover', sound.cover ?? 0, 0, FULL_COVER) / FULL_COVER;
  const d = Math.max(1, distanceM);
  const taken = (airAbsorptionDbPerKm(sound.pitchHz, sound) * (d - 1)) / 1000;
  const inCover = COVER_DB_PER_M * cover * Math.min(d - 1, COVER_REACH_M);
  return sound.levelDbSpl - 20 * Math.log10(d) - taken - inCover;
}

/** Whether a whistle is heard, by how much, and what bounds it. */
export interface Carrying {
  readonly levelAtDogDb: number;
  /** Over what the dog can just make out: the higher of its threshold in quiet and the noise. */
  readonly marginDb: number;
  readonly carries: boolean;
  readonly boundBy: 'noise' | 'threshold';
}

/** What the dog can just make out of a tone: its threshold in quiet, or the noise in the same band where that is higher (Fletcher1940). */
function justHeardDb(sound: WhistleSound): number {
  return Math.max(dogThresholdDbSpl(sound.pitchHz), finiteBetween('noiseDb', sound.noiseDb, -20, 150));
}

/** Whether a whistle carries to a dog `distanceM` away: a margin above 0 by these figures, which is not yet an obeyed whistle. */
export function carryingTo(distanceM: number, sound: WhistleSound): Carrying {
  const levelAtDogDb = levelAtDbSpl(distanceM, sound);
  const marginDb = levelAtDogDb - justHeardDb(sound);
  const boundBy = sound.noiseDb > dogThresholdDbSpl(sound.pitchHz) ? 'noise' : 'threshold';
  return { levelAtDogDb, marginDb, carries: marginDb > 0, boundBy };
}

/** How far the whistle carries by these figures, metres: where the margin is gone; 0 where it never is heard, 2,000 at most. */
export function carriesFarM(sound: WhistleSound): number {
  const margin = (distanceM: number) => levelAtDbSpl(distanceM, sound) - justHeardDb(sound);
  if (margin(1) <= 0) return 0;
  if (margin(FARTHEST_CARRYING_M) > 0) return FARTHEST_CARRYING_M;
  let [near, far] = [1, FARTHEST_CARRYING_M];
  // The level only falls, so halving finds the place: 40 times to a few nanometres.
  for (let step = 0; step < 40; step++) {
    const middle = (near + far) / 2;
    if (margin(middle) > 0) near = middle;
    else far = middle;
  }
  return near;
}
