import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../numeric/index.ts';
import { cleanGuessability, cleanHazard, hazardSpread } from './clean-figures.ts';
import { cleanNumber } from './clean-number.ts';
import { cleanSends, numberToDraw } from './clean-sends.ts';
import { guessability } from './guessability.ts';
import { ORDER_LIMITS } from './limits.ts';

const share = fc.double({ min: 0.2, max: 0.6, noNaN: true });
const sends = fc.integer({ min: 1, max: 20 });

/** Every session of so many drawn sends between two stops, each with the chance of its number shared out. */
function everySession(chances: readonly number[]) {
  const drawn = chances.length - 1;
  const places = Array.from({ length: 2 ** drawn }, (_, bits) =>
    Array.from({ length: drawn }, (_, n) => ((bits >> n) & 1) === 1),
  );
  const cleanIn = (order: readonly boolean[]) => order.filter(Boolean).length;
  const arrangements = chances.map((_, number) => places.filter((order) => cleanIn(order) === number).length);
  return places.map((order) => ({
    order: [false, ...order, false],
    weight: chances[cleanIn(order)]! / arrangements[cleanIn(order)]!,
  }));
}

/** Chance of a clean send after exactly so many stops, by walking every session. */
function hazardByWalking(ways: ReturnType<typeof everySession>, stops: number): number {
  let asked = 0;
  let clean = 0;
  for (const { order, weight } of ways) {
    let running = 1;
    for (let at = 1; at < order.length - 1; at++) {
      if (running === stops) {
        asked += weight;
        clean += order[at] ? weight : 0;
      }
      running = order[at] ? 0 : running + 1;
    }
  }
  return clean / asked;
}

describe('clean sends: laws', () => {
  it('draws within its bounds, never the first or the last, the same for the same seed', () => {
    fc.assert(
      fc.property(sends, share, fc.nat(), (sends, share, seed) => {
        const found = cleanSends({ sends, share, random: seededRandom(seed) });
        const number = found.clean.filter(Boolean).length;
        expect(found.clean).toHaveLength(sends);
        expect(found.clean[0]).toBe(false);
        expect(found.clean.at(-1)).toBe(false);
        expect(number).toBeGreaterThanOrEqual(found.least);
        expect(number).toBeLessThanOrEqual(found.most);
        expect(found.imbalance).toBeCloseTo(number - share * Math.max(0, sends - 2), 9);
        expect(cleanSends({ sends, share, random: seededRandom(seed) })).toEqual(found);
      }),
      { numRuns: 300 },
    );
  });

  it('is as likely clean after none to three stops, and guessed by no simple rule, at any length and share', () => {
    fc.assert(
      fc.property(sends, share, (sends, share) => {
        const { hazard, bestGuess } = cleanSends({ sends, share, random: seededRandom(1) });
        expect(hazardSpread(hazard)).toBeLessThanOrEqual(ORDER_LIMITS.hazard);
        expect(bestGuess.accuracy).toBeLessThan(ORDER_LIMITS.guess);
        for (const chance of hazard) {
          if (chance === null) continue;
          expect(chance).toBeGreaterThan(0);
          expect(chance).toBeLessThan(1);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('has figures that walking every session gives too', () => {
    for (const [drawn, share] of [
      [1, 0.3],
      [2, 0.5],
      [6, 0.35],
      [9, 0.25],
    ] as const) {
      const number = numberToDraw(drawn, share);
      const ways = everySession(number.chances);
      const walked = guessability(ways, { from: 1, to: drawn + 1 }).accuracy;
      const reckoned = cleanGuessability(number).accuracy;
      // 1e-12: some thousand additions of doubles.
      for (const rule of ['win-stay', 'alternate', 'last-two', 'place', 'last-sessions'] as const)
        expect(reckoned[rule]).toBeCloseTo(walked[rule], 12);
      cleanHazard(number).forEach((chance, stops) => {
        if (chance === null) expect(hazardByWalking(ways, stops)).toBeNaN();
        else expect(chance).toBeCloseTo(hazardByWalking(ways, stops), 12);
      });
    }
  });

  it('has a clean send in every session of eight drawn sends and more, at any share', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 30 }), share, (drawn, share) => {
        expect(numberToDraw(drawn, share).least).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('keeps the wanted share on average (the chance of the draw is found for that)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), share, (drawn, share) => {
        const mean = numberToDraw(drawn, share).chances.reduce(
          (sum, chance, number) => sum + chance * number,
          0,
        );
        // Halving 55 times; the rest is the rounding of up to 31 additions.
        expect(mean).toBeCloseTo(share * drawn, 9);
      }),
    );
  });

  it('draws what it says: 5,000 sessions of ten against the exact hazard', () => {
    const random = seededRandom(20);
    const asked = [0, 0, 0, 0];
    const clean = [0, 0, 0, 0];
    let hazard = cleanSends({ sends: 10, share: 0.35, random }).hazard;
    for (let n = 0; n < 5000; n++) {
      const session = cleanSends({ sends: 10, share: 0.35, random });
      hazard = session.hazard;
      let running = 1;
      for (const isClean of session.clean.slice(1, -1)) {
        if (running < 4) {
          asked[running]!++;
          if (isClean) clean[running]!++;
        }
        running = isClean ? 0 : running + 1;
      }
    }
    hazard.forEach((chance, stops) => {
      // Four standard errors of a share.
      const error = 4 * Math.sqrt((chance! * (1 - chance!)) / asked[stops]!);
      expect(Math.abs(clean[stops]! / asked[stops]! - chance!)).toBeLessThan(error);
    });
  });

  it('forbids no run of stops', () => {
    const random = seededRandom(4);
    const longest = new Set<number>();
    for (let n = 0; n < 3000; n++) {
      const { clean } = cleanSends({ sends: 12, share: 0.35, random });
      longest.add(
        Math.max(
          ...clean
            .map(Number)
            .join('')
            .split('1')
            .map((run) => run.length),
        ),
      );
    }
    // Two clean sends next to each other at one end of ten drawn leave a run of nine; it is rare.
    expect(Math.max(...longest)).toBeGreaterThanOrEqual(8);
  });

  it('fails the limits when a fixed number is merely shuffled: a clean send grows likelier with every stop', () => {
    // Three clean of eight by hand: after one stop at the start 3/8; after a clean send fewer are left.
    const exactly3 = { least: 3, most: 3, drawnWith: 0.375, chances: [0, 0, 0, 1, 0, 0, 0, 0, 0] };
    const hazard = cleanHazard(exactly3);
    for (let stops = 1; stops < hazard.length; stops++)
      expect(hazard[stops]!).toBeGreaterThan(hazard[stops - 1]!);
    expect(hazard[0]).toBeCloseTo(2 / 7, 12);
    expect(hazardSpread(hazard)).toBeGreaterThan(ORDER_LIMITS.hazard);
  });

  it('says what to do about an argument that is wrong', () => {
    const random = seededRandom(1);
    expect(() => cleanSends({ sends: 0, share: 0.3, random })).toThrow(
      'sends: expected a whole number 1..60, got 0',
    );
    expect(() => cleanSends({ sends: 61, share: 0.3, random })).toThrow('draw the rest as another session');
    for (const wrong of [0, 1, -0.2, Number.NaN])
      expect(() => cleanSends({ sends: 8, share: wrong, random })).toThrow(RangeError);
    expect(() => cleanNumber(8, 0.5, 4, 6)).toThrow(
      'least, most: expected 0 <= least < 4 < most <= 8, got 4 and 6',
    );
  });
});
