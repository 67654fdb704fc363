import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../numeric/index.ts';
import { stopPlaces } from './stop-places.ts';

const fraction = fc.double({ min: 0, max: 1, noNaN: true });

describe('where the stops come: laws', () => {
  it('is within reach, one in each equal part of it, the same for the same seed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20 }),
        fraction,
        fraction,
        fc.nat(),
        (stops, one, other, seed) => {
          const least = Math.min(one, other);
          const most = Math.max(one, other);
          const found = stopPlaces({ stops, least, most, random: seededRandom(seed) });
          expect(found.wayFractions).toHaveLength(stops);
          const inOrder = found.wayFractions.toSorted((a, b) => a - b);
          inOrder.forEach((place, n) => {
            const part = (most - least) / stops;
            // 1e-12: the parts' ends are sums of fractions.
            expect(place).toBeGreaterThanOrEqual(least + n * part - 1e-12);
            expect(place).toBeLessThanOrEqual(least + (n + 1) * part + 1e-12);
          });
          expect(stopPlaces({ stops, least, most, random: seededRandom(seed) })).toEqual(found);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('spans a quarter of the way with three stops and more wherever the reach does (common practice, no source)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 20 }),
        fraction,
        fraction,
        fc.nat(),
        (stops, one, other, seed) => {
          const least = Math.min(one, other);
          const most = Math.max(one, other);
          const { span, spread } = stopPlaces({ stops, least, most, random: seededRandom(seed) });
          if (most - least >= 0.25) {
            expect(spread).toBe('kept');
            expect(span).toBeGreaterThanOrEqual(0.25 - 1e-9);
          } else expect(spread).toBe('out-of-reach');
        },
      ),
      { numRuns: 300 },
    );
  });

  it('comes in every order as often: the earliest stop is first in a third of three', () => {
    const random = seededRandom(9);
    let first = 0;
    for (let n = 0; n < 6000; n++) {
      const places = stopPlaces({ stops: 3, least: 0.2, most: 0.8, random }).wayFractions;
      if (places[0] === Math.min(...places)) first++;
    }
    // Four standard errors of a third of 6,000.
    expect(Math.abs(first / 6000 - 1 / 3)).toBeLessThan(4 * Math.sqrt(2 / 9 / 6000));
  });

  it('says that few stops need no span, and which argument is wrong', () => {
    const random = seededRandom(1);
    expect(stopPlaces({ stops: 2, least: 0.2, most: 0.9, random }).spread).toBe('too-few');
    expect(stopPlaces({ stops: 0, least: 0.2, most: 0.9, random })).toEqual({
      wayFractions: [],
      span: 0,
      spread: 'too-few',
    });
    expect(() => stopPlaces({ stops: -1, least: 0, most: 1, random })).toThrow(
      'stops: expected a whole number >= 0, got -1',
    );
    expect(() => stopPlaces({ stops: 1, least: -0.1, most: 1, random })).toThrow(
      'least: expected 0..1, got -0.1',
    );
    expect(() => stopPlaces({ stops: 1, least: 0.5, most: 0.4, random })).toThrow(
      'most: expected 0.5..1, got 0.4',
    );
  });
});
