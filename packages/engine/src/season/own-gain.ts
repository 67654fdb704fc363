import { type AbilityPriors, createAbilityFilter, type LegResult } from '../ability/index.ts';

/** How much a session is worth to this very dog, against the gain of the priors, and how likely that is. */
export interface GainShare {
  readonly times: number;
  readonly weight: number;
}

/** Gains that are weighed, alike likely beforehand: a dog that has come to rest, to one that learns twice as fast (our judgement, 2026). */
const TIMES = [0, 0.5, 1, 1.5, 2] as const;
const LEAST_CHANCE = 1e-12;

/**
 * What a dog's own record says of its gain: the filter is run through its legs once with each gain, and each weighs by the chance
 * that it gave to what came (`p(g | y) ~ p(g) prod_t p(y_t | y_<t, g)`, the filter's own evidence). Legs of one dog, in time order;
 * weights add up to 1. With no leg that counts, all weigh alike.
 */
export function gainShares(legs: readonly LegResult[], priors: AbilityPriors): GainShare[] {
  const logs = TIMES.map((times) => {
    const filter = createAbilityFilter({ ...priors, gainPerSession: times * priors.gainPerSession });
    let sum = 0;
    for (const leg of legs) {
      const { chance } = filter.observe(leg);
      if (leg.weight > 0) sum += leg.weight * Math.log(Math.max(LEAST_CHANCE, chance[leg.grade]));
    }
    return sum;
  });
  const most = Math.max(...logs);
  const likely = logs.map((log) => Math.exp(log - most));
  const total = likely.reduce((sum, one) => sum + one, 0);
  return TIMES.map((times, k) => ({ times, weight: likely[k]! / total }));
}

/** The gain at a share 0..1 of the weights, smallest first. */
export function gainAt(shares: readonly GainShare[], share: number): number {
  let sum = 0;
  for (const { times, weight } of shares) {
    sum += weight;
    if (share < sum) return times;
  }
  return shares.at(-1)!.times;
}
