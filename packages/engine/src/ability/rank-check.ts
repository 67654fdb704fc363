import type { Random } from '../numeric/random.ts';
import { seededRandom } from '../numeric/random.ts';
import { MS_PER_DAY } from '../quantity/time.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { createAbilityFilter } from './filter.ts';
import type { LogitEstimate } from './forecaster.ts';
import { shippedPriors } from './priors.ts';
import { simulateDog, simulateKennel } from './simulated-kennel.ts';

/** Rank of the truth among `draws` draws of what is stated: uniform on 0..draws if the spread is right (Talts2018). */
export function rankOf(truth: number, stated: LogitEstimate, draws: number, random: Random): number {
  let rank = 0;
  for (let k = 0; k < draws; k++) if (stated.mean + stated.sd * random.normal() < truth) rank += 1;
  return rank;
}

/** Pearson's chi-square of ranks 0..draws in `bins` equal bins against the uniform; `bins - 1` degrees. */
export function rankChiSquare(ranks: readonly number[], draws: number, bins: number): number {
  const counts = new Float64Array(bins);
  for (const rank of ranks) counts[Math.floor((rank * bins) / (draws + 1))]! += 1;
  const expected = ranks.length / bins;
  return counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

/** Truth and statement of one quantity of one simulated dog. */
export interface StatedTruth {
  readonly truth: number;
  readonly stated: LogitEstimate;
}

export interface CalibrationSample {
  readonly ability: readonly StatedTruth[];
  readonly hardAsk: readonly StatedTruth[];
  readonly form: readonly StatedTruth[];
}

/**
 * Simulation-based calibration (Talts2018): `dogs` dogs, each of a kennel of its own, drawn from the priors,
 * worked for 8 sessions of 10 legs, filtered, and asked for: ability at the stop, log-odds of a hard ask
 * never tried, form of the last day.
 */
export function calibrationSample(dogs: number, seed: number): CalibrationSample {
  const random = seededRandom(seed);
  const ability: StatedTruth[] = [];
  const hardAsk: StatedTruth[] = [];
  const form: StatedTruth[] = [];
  for (let k = 0; k < dogs; k++) {
    const kennel = simulateKennel(random, shippedPriors);
    const { legs, truth } = simulateDog('a', kennel, random, shippedPriors, 8, 10);
    const filter = createAbilityFilter();
    for (const leg of legs) filter.observe(leg);
    const last = legs.at(-1)!;
    ability.push({ truth: truth.ability('stop'), stated: filter.ability('a', 'stop', last.atMs) });
    form.push({ truth: truth.lastForm, stated: filter.form('a', last.session) });
    const question = {
      dog: 'a',
      skill: 'stop',
      session: null,
      atMs: last.atMs + 14 * MS_PER_DAY,
      ask: { distanceM: 120, wayFraction: 0.8, temptation: 'shot-and-dummy', handlerPlace: 'apart' },
      context: EASY_CONTEXT,
    } as const;
    hardAsk.push({ truth: truth.logOdds(question, random), stated: filter.forecast(question).logOdds });
  }
  return { ability, hardAsk, form };
}
