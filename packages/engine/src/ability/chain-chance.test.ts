import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logistic } from '../numeric/logistic.ts';
import { seededRandom } from '../numeric/random.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { sharedProduct, sharedProductInterval } from './chain-chance.ts';
import { createAbilityFilter } from './filter.ts';

const LEGS = [
  { mean: 1.5, variance: 0.5 },
  { mean: 0.4, variance: 0.8 },
  { mean: 2.5, variance: 0.3 },
];

describe('chance that no leg of a chain is missed', () => {
  it('agrees with simulation, interval too', () => {
    const random = seededRandom(3);
    const n = 100_000;
    const products = Float64Array.from({ length: n }, () => {
      const shared = 0.4 * random.normal();
      return LEGS.reduce(
        (p, { mean, variance }) => p * logistic(mean + shared + Math.sqrt(variance) * random.normal()),
        1,
      );
    }).sort();
    const mean = products.reduce((sum, p) => sum + p, 0) / n;
    // Five standard errors: sd of a product is under 0.2.
    expect(Math.abs(sharedProduct(LEGS, 0.16) - mean)).toBeLessThan((5 * 0.2) / Math.sqrt(n));
    const [low, high] = sharedProductInterval(LEGS, 0.16);
    // Two moments of the product are kept, its shape is not: 0.02. Sampling: 0.001.
    expect(Math.abs(low - products[0.05 * n]!)).toBeLessThan(0.02);
    expect(Math.abs(high - products[0.95 * n]!)).toBeLessThan(0.02);
  });
  it('what is shared makes the whole chain likelier than legs that know nothing of each other', () => {
    const apart = sharedProduct(
      LEGS.map(({ mean, variance }) => ({ mean, variance: variance + 1 })),
      0,
    );
    expect(sharedProduct(LEGS, 1)).toBeGreaterThan(apart);
  });
  it('one leg is that leg', () => {
    const filter = createAbilityFilter();
    const asked = {
      dog: 'a',
      skill: 'stop',
      session: null,
      atMs: 0,
      ask: { distanceM: 40 },
      context: EASY_CONTEXT,
    } as const;
    const { chance, interval90 } = filter.forecast(asked);
    const chain = filter.chain([asked]);
    // Two quadratures of one integral: 1e-6 each.
    expect(Math.abs(chain.noneMissed - (1 - chance.missed))).toBeLessThan(3e-6);
    expect(Math.abs(chain.allGood - chance.good)).toBeLessThan(3e-6);
    expect(chain.interval90[0]).toBeCloseTo(interval90.notMissed[0], 12);
    expect(chain.interval90[1]).toBeCloseTo(interval90.notMissed[1], 12);
  });
  it('holds at the ends', () => {
    for (const mean of [-800, 800]) {
      const legs = LEGS.map(({ variance }) => ({ mean, variance }));
      const [low, high] = sharedProductInterval(legs, 0.2);
      for (const p of [sharedProduct(legs, 0.2), low, high]) expect(p >= 0 && p <= 1).toBe(true);
      expect(low).toBeLessThanOrEqual(high);
    }
  });
  it('holds for any legs: low <= high, both chances, and the expected chance between them', () => {
    const leg = fc.record({
      mean: fc.double({ min: -6, max: 8, noNaN: true }),
      variance: fc.double({ min: 0.01, max: 4, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(leg, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (legs, shared) => {
          const [low, high] = sharedProductInterval(legs, shared);
          const expected = sharedProduct(legs, shared);
          expect(low >= 0 && low <= high && high <= 1).toBe(true);
          // A skewed product's mean may pass its 95 % quantile only where both are next to nothing.
          expect(expected).toBeGreaterThan(low - 1e-6);
          expect(expected).toBeLessThan(high + 0.02);
        },
      ),
      { numRuns: 300 },
    );
  });
});
