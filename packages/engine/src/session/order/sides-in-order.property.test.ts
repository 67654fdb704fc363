import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../numeric/index.ts';
import { guessInHindsight } from './guess-in-hindsight.ts';
import { guessability } from './guessability.ts';
import { ORDER_LIMITS } from './limits.ts';
import { evenOrdersKeeping, GELLERMANN_RULES, ordersKeeping } from './side-rules.ts';
import { type CastSide, sideRules, sidesInOrder } from './sides-in-order.ts';

const seed = fc.nat();
const count = fc.integer({ min: 1, max: 14 });
const session = fc.array(fc.constantFrom<CastSide>('left', 'right'), { maxLength: 20 });
const earlier = fc.array(session, { maxLength: 5 });
const longestRun = (sides: readonly CastSide[]) =>
  Math.max(
    ...sides
      .map((side, at) => sides.slice(at).findIndex((one) => one !== side))
      .map((n, at) => (n < 0 ? sides.length - at : n)),
  );

describe('sides in order: laws', () => {
  it('is even, never four running, and the same for the same seed, whatever the last sessions were', () => {
    fc.assert(
      fc.property(count, seed, earlier, (count, seed, earlier) => {
        const drawn = sidesInOrder({ count, earlier, random: seededRandom(seed) });
        const rights = drawn.sides.filter((side) => side === 'right').length;
        expect(drawn.sides).toHaveLength(count);
        expect(drawn.imbalance).toBe(2 * rights - count);
        expect(Math.abs(drawn.imbalance)).toBeLessThanOrEqual(1);
        expect(longestRun(drawn.sides)).toBeLessThanOrEqual(3);
        expect(sidesInOrder({ count, earlier, random: seededRandom(seed) })).toEqual(drawn);
      }),
      { numRuns: 300 },
    );
  });

  it('can be guessed by no simple rule from eight sides on, neither as it is drawn nor by habit in hindsight', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: ORDER_LIMITS.fromSends, max: 14 }),
        seed,
        earlier,
        (count, seed, earlier) => {
          const { sides, bestGuess } = sidesInOrder({ count, earlier, random: seededRandom(seed) });
          expect(bestGuess.accuracy).toBeLessThan(ORDER_LIMITS.guess);
          expect(bestGuess.accuracy).toBeGreaterThanOrEqual(0.5);
          expect(guessInHindsight(sides.map((side) => side === 'right')).accuracy).toBeLessThan(
            ORDER_LIMITS.guess,
          );
        },
      ),
      { numRuns: 200 },
    );
  });

  it.each([15, 16, 17, 18, 19, 20])('holds for %d sides too', (count) => {
    const first = sidesInOrder({ count, random: seededRandom(count) });
    const next = sidesInOrder({ count, earlier: [first.sides], random: seededRandom(count) });
    for (const { sides, imbalance, bestGuess } of [first, next]) {
      expect(sides).toHaveLength(count);
      expect(Math.abs(imbalance)).toBeLessThanOrEqual(1);
      expect(bestGuess.accuracy).toBeLessThan(ORDER_LIMITS.guess);
    }
    expect(next.apartFrom).toBe(1);
  });

  it('draws every allowed order as often', () => {
    const allowed = evenOrdersKeeping(10, sideRules(10)).length;
    const random = seededRandom(7);
    const tally = new Map<string, number>();
    for (let n = 0; n < 5000; n++) {
      const written = sidesInOrder({ count: 10, random })
        .sides.map((side) => side[0])
        .join('');
      tally.set(written, (tally.get(written) ?? 0) + 1);
    }
    expect(tally.size).toBe(allowed);
    const expected = 5000 / allowed;
    const chiSquare = [...tally.values()].reduce((sum, seen) => sum + (seen - expected) ** 2 / expected, 0);
    // Mean of chi square is its degrees of freedom, its sd the root of twice them: four sds.
    expect(chiSquare).toBeLessThan(allowed - 1 + 4 * Math.sqrt(2 * (allowed - 1)));
  });

  it('keeps apart from a session of the same length: neither repeated nor turned about', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 14 }), seed, (count, seed) => {
        const random = seededRandom(seed);
        const before = sidesInOrder({ count, random }).sides;
        const { sides, apartFrom } = sidesInOrder({ count, earlier: [before], random });
        if (apartFrom === 0) return;
        const same = sides.filter((side, place) => side === before[place]).length;
        // One place or a tenth of them either way of half.
        expect(Math.abs(2 * same - count)).toBeLessThanOrEqual(Math.max(2, count / 5));
      }),
    );
  });

  it('would not do with the printed rules alone: the last two sides give those orders away', () => {
    const ways = ordersKeeping(10, GELLERMANN_RULES).map((order) => ({
      order: Array.from({ length: 10 }, (_, place) => ((order >> place) & 1) === 1),
      weight: 1,
    }));
    expect(guessability(ways).best.by).toBe('last-two');
    expect(guessability(ways).best.accuracy).toBeGreaterThan(ORDER_LIMITS.guess);
  });

  it('says what to do about a count that is none', () => {
    const random = seededRandom(1);
    expect(sidesInOrder({ count: 0, random }).sides).toEqual([]);
    for (const wrong of [-1, 2.5, Number.NaN])
      expect(() => sidesInOrder({ count: wrong, random })).toThrow(RangeError);
    expect(() => sidesInOrder({ count: 21, random })).toThrow(
      'count: expected a whole number 0..20, got 21; draw a longer session in parts',
    );
  });
});
