import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAlignment } from './align-in-order.ts';

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

/** Gains as a table, each row's bounds those given, else all columns. */
function tableOf(gains: ArrayLike<number>, misses: ArrayLike<number>, columns: number, bounds?: number[][]) {
  const bound = (i: number, end: 0 | 1) => bounds?.[i]?.[end] ?? end * columns;
  return {
    columns,
    gains: Float64Array.from(gains),
    misses: Float64Array.from(misses),
    from: Int32Array.from(misses, (_, i) => bound(i, 0)),
    to: Int32Array.from(misses, (_, i) => bound(i, 1)),
  };
}

describe('pairing in order', () => {
  it('is what every way written out comes to, whatever the bounds of each row', () => {
    const weight = fc.double({ min: 1e-6, max: 50, noNaN: true });
    const cases = fc
      .record({ rows: fc.integer({ min: 1, max: 4 }), columns: fc.integer({ min: 0, max: 5 }) })
      .chain(({ rows, columns }) => {
        const place = fc.integer({ min: 0, max: columns });
        const bound = fc.tuple(place, place).map(([a, b]) => [Math.min(a, b), Math.max(a, b)]);
        return fc.record({
          columns: fc.constant(columns),
          gains: fc.array(weight, { minLength: rows * columns, maxLength: rows * columns }),
          misses: fc.array(weight, { minLength: rows, maxLength: rows }),
          bounds: fc.array(bound, { minLength: rows, maxLength: rows }),
        });
      });
    fc.assert(
      fc.property(cases, ({ columns, gains, misses, bounds }) => {
        const within = (i: number, j: number) => j >= bounds[i]![0]! && j < bounds[i]![1]!;
        const weighed = everyWay(misses.length, columns)
          .filter((way) => way.every((j, i) => j < 0 || within(i, j)))
          .map((way) => ({
            way,
            weight: way.reduce((so, j, i) => so * (j < 0 ? misses[i]! : gains[i * columns + j]!), 1),
          }));
        const whole = weighed.reduce((sum, one) => sum + one.weight, 0);
        const found = createAlignment(tableOf(gains, misses, columns, bounds));
        // Sums of at most 252 positive doubles: a few units of the last place.
        expect(found.sum()).toBeCloseTo(Math.log(whole), 9);
        const shares = new Float64Array(gains.length);
        found.addShares(shares, 0.5);
        found.addShares(shares, 0.5);
        for (let i = 0; i < misses.length; i++) {
          for (let j = 0; j < columns; j++) {
            const having = weighed.filter(({ way }) => way[i] === j);
            const share = having.reduce((sum, one) => sum + one.weight, 0) / whole;
            expect(shares[i * columns + j]).toBeCloseTo(share, 9);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('does not overflow on 300 rows that each gain a million', () => {
    const n = 300;
    const gains = new Float64Array(n * n).fill(1e-9);
    for (let i = 0; i < n; i++) gains[i * n + i] = 1e6;
    const found = createAlignment(tableOf(gains, new Float64Array(n).fill(0.1), n));
    expect(found.sum()).toBeCloseTo(n * Math.log(1e6), 3);
    const shares = new Float64Array(n * n);
    found.addShares(shares, 1);
    expect(shares[17 * n + 17]).toBeCloseTo(1, 6);
    expect(shares[283 * n + 283]).toBeCloseTo(1, 6);
  });

  it('is anew what the numbers in the table are now', () => {
    const table = tableOf([3], [1], 1);
    const found = createAlignment(table);
    expect(found.sum()).toBeCloseTo(Math.log(4), 12);
    table.misses[0] = 2;
    expect(found.sum()).toBeCloseTo(Math.log(5), 12);
    table.to[0] = 0;
    expect(found.sum()).toBeCloseTo(Math.log(2), 12);
  });

  it('refuses what is no table, and a row that weighs nothing alone', () => {
    expect(() => createAlignment(tableOf([1, 2, 3], [1, 1], 2))).toThrow(RangeError);
    expect(() => createAlignment(tableOf([1, 1], [1, 0], 1)).sum()).toThrow(/row 1/);
    expect(() => createAlignment(tableOf([Number.POSITIVE_INFINITY], [1], 1)).sum()).toThrow(/row 0/);
  });
});
