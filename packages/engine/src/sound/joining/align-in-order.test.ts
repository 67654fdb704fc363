import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alignInOrder, sumInOrder } from './align-in-order.ts';

/** Every way, one by one: for each row the column it is paired with (after those before it), or -1. */
function everyWay(rows: number, columns: number): number[][] {
  let ways: number[][] = [[]];
  for (let i = 0; i < rows; i++) {
    ways = ways.flatMap((way) => {
      const last = Math.max(-1, ...way);
      const free = Array.from({ length: columns - last - 1 }, (_, n) => last + 1 + n);
      return [-1, ...free].map((column) => [...way, column]);
    });
  }
  return ways;
}

describe('pairing in order', () => {
  it('is what every way written out comes to', () => {
    const weight = fc.double({ min: 1e-6, max: 50, noNaN: true });
    const cases = fc
      .record({ rows: fc.integer({ min: 1, max: 4 }), columns: fc.integer({ min: 0, max: 5 }) })
      .chain(({ rows, columns }) =>
        fc.record({
          columns: fc.constant(columns),
          gains: fc.array(weight, { minLength: rows * columns, maxLength: rows * columns }),
          misses: fc.array(weight, { minLength: rows, maxLength: rows }),
        }),
      );
    fc.assert(
      fc.property(cases, ({ columns, gains, misses }) => {
        const weighed = everyWay(misses.length, columns).map((way) => ({
          way,
          weight: way.reduce((so, j, i) => so * (j < 0 ? misses[i]! : gains[i * columns + j]!), 1),
        }));
        const whole = weighed.reduce((sum, one) => sum + one.weight, 0);
        const found = alignInOrder(Float64Array.from(gains), Float64Array.from(misses), columns);
        // Sums of at most 252 positive doubles: a few units of the last place.
        expect(found.logSum).toBeCloseTo(Math.log(whole), 9);
        expect(sumInOrder(Float64Array.from(gains), Float64Array.from(misses), columns)).toBe(found.logSum);
        for (let i = 0; i < misses.length; i++) {
          for (let j = 0; j < columns; j++) {
            const having = weighed.filter(({ way }) => way[i] === j);
            const share = having.reduce((sum, one) => sum + one.weight, 0) / whole;
            expect(found.share[i * columns + j]).toBeCloseTo(share, 9);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  it('does not overflow on 300 rows that each gain a million', () => {
    const n = 300;
    const gains = new Float64Array(n * n).fill(1e-9);
    for (let i = 0; i < n; i++) gains[i * n + i] = 1e6;
    const { logSum, share } = alignInOrder(gains, new Float64Array(n).fill(0.1), n);
    expect(logSum).toBeCloseTo(n * Math.log(1e6), 3);
    expect(share[17 * n + 17]).toBeCloseTo(1, 6);
  });

  it('refuses what is no table, and a row that nothing can explain', () => {
    expect(() => alignInOrder(new Float64Array(3), new Float64Array(2), 2)).toThrow(RangeError);
    expect(() => alignInOrder(new Float64Array(1), new Float64Array(1), 1)).toThrow(/row 0/);
  });
});
