import type { Dice } from '../careers/dice.ts';
import { fromDb } from './noise.ts';

/** A place that rings: a yard between walls, a wood, a hall with its doors open. */
export interface Reverberation {
  /** Time in which it dies by 60 dB. */
  lastsS: number;
  /** How loud it sets in, against the direct sound. */
  loudDb: number;
}

/** Lengths of the ways round, as shares of the longest: no two in a simple ratio. */
const WAYS = [1, 0.89, 0.79, 0.71, 0.63, 0.547, 0.486, 0.433];

/**
 * What a place gives back: a network of eight delays that feed one another (Jot's, after Stautner and Puckette; from memory), mixed by a
 * Householder matrix I - (2/8) 1 1ᵀ, which keeps the power, so that the loss of each way alone sets how long it lasts; a low-pass in each way
 * lets the treble die sooner. As long as the sound and `tailS` more, silent until the shortest way is gone.
 */
export function reverberated(
  direct: Float64Array,
  tailS: number,
  { lastsS, loudDb }: Reverberation,
  sampleRateHz: number,
  dice: Dice,
): Float64Array {
  const longestS = dice.between(0.035, 0.09);
  const ways = WAYS.map((share) => {
    const late = Math.max(1, Math.round(share * longestS * dice.between(0.97, 1.03) * sampleRateHz));
    return {
      kept: new Float64Array(late),
      at: 0,
      keeps: fromDb((-60 * late) / (lastsS * sampleRateHz)),
      low: 0,
    };
  });
  // A one-pole low-pass of unit gain at nought: about 3 to 8 kHz.
  const dull = Math.exp((-2 * Math.PI * dice.between(3000, 8000)) / sampleRateHz);
  const gain = fromDb(loudDb);
  const out = new Float64Array(direct.length + Math.round(tailS * sampleRateHz));
  for (let i = 0; i < out.length; i++) {
    let sum = 0;
    for (const way of ways) {
      way.low = dull * way.low + (1 - dull) * way.keeps * way.kept[way.at]!;
      sum += way.low;
    }
    const dry = direct[i] ?? 0;
    let heard = 0;
    let sign = 1;
    for (const way of ways) {
      heard += sign * way.low;
      way.kept[way.at] = way.low - 0.25 * sum + sign * dry;
      way.at = way.at + 1 === way.kept.length ? 0 : way.at + 1;
      sign = -sign;
    }
    out[i] = (gain * heard) / Math.sqrt(8);
  }
  return out;
}
