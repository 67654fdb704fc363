import { describe, expect, it } from 'vitest';
import { createLateness, createTapsOverlap } from './lateness.ts';

/** The law as its docstring has it, of one call alone. */
function byTheFormula(restS: number, spreadS: number): number {
  const z = restS / spreadS;
  const middle = (0.86 * Math.exp((-z * z) / 2)) / (spreadS * Math.sqrt(2 * Math.PI));
  return middle + (restS > 0 ? (0.11 / 30) * Math.exp(-restS / 30) : (0.03 / 10) * Math.exp(restS / 10));
}

describe('the lateness of a thumb', () => {
  // Close together and far apart, at one time, and one just where it is expected.
  const startsS = [0, 0, 3, 3.5, 40, 41, 100, 100.25, 180, 700, 7000];

  it('is along calls what its formula says of each alone', () => {
    const along = createLateness(Float64Array.from(startsS));
    for (const expectedS of [-20, 3.5, 100, 5000]) {
      for (const spreadS of [1, 8]) {
        for (const [first, last] of [
          [0, startsS.length],
          [4, 9],
          [5, 5],
        ] as const) {
          const found = new Float64Array(startsS.length + 2).fill(-1);
          along(found, 1, first, last, expectedS, spreadS);
          startsS.slice(first, last).forEach((startS, n) => {
            const law = byTheFormula(expectedS - startS, spreadS);
            // A tail is carried over at most eleven calls: some units of the last place; 5,000 s away there is nothing left to compare.
            expect(Math.abs(found[n + 1]! - law)).toBeLessThanOrEqual(1e-13 * law + 1e-300);
          });
          expect(found[0]).toBe(-1);
          expect(found[1 + last - first]).toBe(-1);
        }
      }
    }
  });

  it('is a law: over all times it comes to one', () => {
    const stepS = 0.05;
    const grid = Float64Array.from({ length: 20_000 }, (_, n) => n * stepS);
    const found = new Float64Array(grid.length);
    createLateness(grid)(found, 0, 0, grid.length, 600, 4);
    // The sum of a grid of 0.05 s, cut off 600 s on one side and 400 s on the other.
    expect(found.reduce((sum, one) => sum + one * stepS, 0)).toBeCloseTo(1, 3);
  });
});

describe('two taps of one call', () => {
  const overlap = createTapsOverlap();

  it('lie apart as the product of their laws has it, summed finely', () => {
    for (const apartS of [-40, 0, 7.3, 90]) {
      let sum = 0;
      // A grid fifty times as fine and twice as wide as the one that is tried.
      for (let callS = -500; callS <= 200; callS += 0.01)
        sum += 0.01 * byTheFormula(-callS, 1.8) * byTheFormula(apartS - callS, 6.2);
      // At nought each law has a step of its tails: half a step of the grid at 0.008 a second.
      expect(Math.abs(overlap(apartS, 1.8, 6.2) / sum - 1)).toBeLessThan(0.01);
    }
  });

  it('are some way apart: over all ways it comes to one', () => {
    let sum = 0;
    for (let apartS = -90; apartS <= 240; apartS += 0.5) sum += 0.5 * overlap(apartS, 2, 4);
    // What is farther apart than that: under 0.11 exp(-8) and 0.11 exp(-3), late the one or the other.
    expect(sum).toBeGreaterThan(0.99);
    expect(sum).toBeLessThan(1.001);
  });
});
