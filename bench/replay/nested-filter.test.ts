import { createAbilityFilter, shippedPriors } from '@sedgeline/engine/ability';
import { seededRandom } from '@sedgeline/engine/numeric';
import { expect, it } from 'vitest';
import { simulateDog, simulateKennel } from '../../packages/engine/src/ability/simulated-kennel.ts';
import { nestedFilter } from './nested-filter.ts';

it('the flat filter says what the one written plainly with arrays of arrays says', () => {
  const random = seededRandom(3);
  const kennel = simulateKennel(random, shippedPriors);
  const legs = Array.from({ length: 3 }, (_, d) =>
    simulateDog(`dog ${d}`, kennel, random, shippedPriors, 12, 9),
  )
    .flatMap((dog) => dog.legs)
    .sort((a, b) => a.atMs - b.atMs);
  const flat = createAbilityFilter();
  const nested = nestedFilter();
  let most = 0;
  legs.forEach((leg, n) => {
    const weighed = { ...leg, weight: [1, 1, 0.5, 0][n % 4]! };
    const { chance } = flat.observe(weighed);
    const plain = nested(weighed);
    for (const grade of ['missed', 'fair', 'good'] as const)
      most = Math.max(most, Math.abs(chance[grade] - plain[grade]));
  });
  // The same sums in another order: some thousand roundings of 1e-16.
  expect(most).toBeLessThan(1e-10);
});
