import { describe, expect, it } from 'vitest';
import { arrowFactor, arrowInverse, arrowLogDet, arrowSolve, emptyArrow } from './arrow-matrix.ts';
import { choleskyFactor, choleskyInverse, choleskyLogDet, choleskySolve } from './cholesky.ts';
import { seededRandom } from './random.ts';

/** A random arrow and the same matrix written out in full: identity plus a sum of squares that touch one block. */
function randomArrow(blocks: number, size: number, border: number, seed: number) {
  const random = seededRandom(seed);
  const arrow = emptyArrow(blocks, size, border);
  const n = blocks * size + border;
  const full = new Float64Array(n * n);
  const add = (i: number, j: number, value: number) => {
    full[i * n + j]! += value;
    const own = blocks * size;
    if (i < own && j < own) arrow.diagonal[i * size + (j % size)]! += value;
    else if (i < own) arrow.link[i * border + j - own]! += value;
    else if (j >= own) arrow.corner[(i - own) * border + j - own]! += value;
  };
  for (let i = 0; i < n; i++) add(i, i, 1);
  for (let row = 0; row < 8 * blocks; row++) {
    const block = random.below(blocks);
    const places = [
      ...Array.from({ length: size }, (_, i) => block * size + i),
      ...Array.from({ length: border }, (_, c) => blocks * size + c),
    ];
    const values = places.map(() => random.normal());
    places.forEach((i, a) => {
      places.forEach((j, b) => {
        add(i, j, values[a]! * values[b]!);
      });
    });
  }
  return { arrow, full, n, b: Float64Array.from({ length: n }, () => random.normal()) };
}

describe.each([
  [5, 1, 4],
  [3, 4, 2],
  [6, 2, 0],
  [1, 3, 5],
  [2, 0, 3],
])('an arrow of %i blocks of %i and a border of %i', (blocks, size, border) => {
  const { arrow, full, n, b } = randomArrow(blocks, size, border, 31 * blocks + 7 * size + border);
  const factor = arrowFactor(arrow)!;
  const dense = choleskyFactor(full, n)!;
  // Against the dense factor; 1e-12: rounding of some tens of operations at a condition under 1e3.
  it('solves, has the determinant and the inverse of the dense matrix', () => {
    const want = choleskySolve(dense, n, b);
    arrowSolve(factor, b).forEach((value, i) => {
      expect(Math.abs(value - want[i]!)).toBeLessThan(1e-12);
    });
    expect(Math.abs(arrowLogDet(factor) - choleskyLogDet(dense, n))).toBeLessThan(1e-12 * n);
    const inverse = choleskyInverse(dense, n);
    const { corner, blockDiagonal } = arrowInverse(factor);
    const own = blocks * size;
    expect(blockDiagonal.length).toBe(own);
    blockDiagonal.forEach((value, i) => {
      expect(Math.abs(value - inverse[i * (n + 1)]!)).toBeLessThan(1e-12);
    });
    for (let c = 0; c < border; c++)
      for (let d = 0; d < border; d++)
        expect(Math.abs(corner[c * border + d]! - inverse[(own + c) * n + own + d]!)).toBeLessThan(1e-12);
  });
});

it('says no to a matrix that is not positive definite, in a block or in the corner', () => {
  const { arrow } = randomArrow(3, 2, 2, 9);
  const worse = (part: 'diagonal' | 'corner') => {
    const values = arrow[part].slice();
    values[3] = -1;
    return { ...arrow, [part]: values };
  };
  expect(arrowFactor(worse('diagonal'))).toBeNull();
  expect(arrowFactor(worse('corner'))).toBeNull();
});
