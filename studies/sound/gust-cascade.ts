import type { Dice } from '../careers/dice.ts';
import { wander } from './noise.ts';

/** Memories of the eddies, from those that pass in ten seconds to those of a third of a second, each a third of the one before. */
const EDDIES_S = [9, 3, 1, 0.35];
/** Spread of the logarithm that each size of eddy adds: our judgement, 2026; lulls of a third and gusts of thrice the mean come of it. */
const EACH = 0.28;

/**
 * Strength of the wind about a mean of one, as turbulence makes it: large eddies carry smaller ones and multiply them, so that quiet and gusty
 * stretches come by themselves (Kolmogorov's and Obukhov's log-normal cascade of 1962, from memory).
 */
export function gustCascade(samples: number, sampleRateHz: number, dice: Dice): Float64Array {
  // The mean of exp(s n) is exp(s²/2).
  const logs = new Float64Array(samples).fill(-0.5 * EDDIES_S.length * EACH ** 2);
  for (const memoryS of EDDIES_S) {
    const eddy = wander(samples, memoryS, sampleRateHz, dice);
    for (let i = 0; i < samples; i++) logs[i] = logs[i]! + EACH * eddy[i]!;
  }
  return logs.map(Math.exp);
}
