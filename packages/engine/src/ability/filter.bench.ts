import { bench, describe } from 'vitest';
import { seededRandom } from '../numeric/random.ts';
import { createAbilityFilter } from './filter.ts';
import type { LegResult } from './leg.ts';
import { shippedPriors } from './priors.ts';
import { simulateDog, simulateKennel } from './simulated-kennel.ts';

const random = seededRandom(1);
const kennel = simulateKennel(random, shippedPriors);
const legs: LegResult[] = Array.from({ length: 10 }, (_, d) =>
  simulateDog(`dog ${d}`, kennel, random, shippedPriors, 50, 20),
)
  .flatMap((dog) => dog.legs)
  .sort((a, b) => a.atMs - b.atMs);

describe(`the filter on ${legs.length} legs of 10 dogs`, () => {
  bench('observe every leg', () => {
    const filter = createAbilityFilter();
    for (const leg of legs) filter.observe(leg);
  });
  bench('the legs read, and nothing learned (weight 0)', () => {
    const filter = createAbilityFilter();
    for (const leg of legs) filter.observe({ ...leg, weight: 0 });
  });
});
