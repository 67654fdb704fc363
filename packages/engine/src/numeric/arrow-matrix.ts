import { choleskyFactor, choleskyInverse, choleskyLogDet, choleskySolve } from './cholesky.ts';

/**
 * A symmetric positive definite matrix in the form of an arrow: equal blocks down the diagonal that do not
 * touch each other, all bordered by the same few rows: `[A_1 . L_1; . A_2 L_2; L_1' L_2' C]`. What a model with one
 * big grouping (a block each) and a few effects in common has for curvature. Vectors: blocks first, border last.
 */
export interface ArrowMatrix {
  readonly blocks: number;
  readonly size: number;
  readonly border: number;
  /** `A_i`, size x size each, row-major, one after another. */
  readonly diagonal: Float64Array;
  /** `L_i`, size x border each. */
  readonly link: Float64Array;
  /** `C`, border x border. */
  readonly corner: Float64Array;
}

export interface ArrowFactor {
  readonly matrix: ArrowMatrix;
  /** Lower Cholesky factor of each `A_i`. */
  readonly blockFactors: readonly Float64Array[];
  /** `A_i^-1 L_i`, size x border each. */
  readonly solvedLink: Float64Array;
  /** Lower Cholesky factor of the Schur complement `C - sum L_i' A_i^-1 L_i` (Golub2013, 4.2). */
  readonly cornerFactor: Float64Array;
}

/** A matrix of zeros to be added to. */
export function emptyArrow(blocks: number, size: number, border: number): ArrowMatrix {
  return {
    blocks,
    size,
    border,
    diagonal: new Float64Array(blocks * size * size),
    link: new Float64Array(blocks * size * border),
    corner: new Float64Array(border * border),
  };
}

/** Factors by eliminating the blocks one by one: cost `blocks * size * border^2`; `null` if not positive definite. */
export function arrowFactor(matrix: ArrowMatrix): ArrowFactor | null {
  const { blocks, size, border, diagonal, link } = matrix;
  const blockFactors: Float64Array[] = [];
  const solvedLink = link.slice();
  const schur = matrix.corner.slice();
  for (let b = 0; b < blocks; b++) {
    const factor = choleskyFactor(diagonal.subarray(b * size * size, (b + 1) * size * size), size);
    if (factor === null) return null;
    blockFactors.push(factor);
    solveRows(factor, size, border, solvedLink, b * size * border);
  }
  // The lower half is all that the factor reads.
  for (let row = 0; row < link.length; row += border)
    for (let c = 0; c < border; c++) {
      const left = link[row + c]!;
      if (left !== 0) for (let d = 0; d <= c; d++) schur[c * border + d]! -= left * solvedLink[row + d]!;
    }
  const cornerFactor = choleskyFactor(schur, border);
  return cornerFactor === null ? null : { matrix, blockFactors, solvedLink, cornerFactor };
}

/** Solves `L L' X = B` in place, B's `size` rows of `width` lying one after another from `from`. */
function solveRows(l: Float64Array, size: number, width: number, b: Float64Array, from: number): void {
  const take = (i: number, k: number, share: number) => {
    for (let c = 0; c < width; c++) b[from + i * width + c]! -= share * b[from + k * width + c]!;
  };
  const divide = (i: number) => {
    for (let c = 0; c < width; c++) b[from + i * width + c]! /= l[i * (size + 1)]!;
  };
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) take(i, k, l[i * size + k]!);
    divide(i);
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) take(i, k, l[k * size + i]!);
    divide(i);
  }
}

/** Solves `A x = b`. */
export function arrowSolve(factor: ArrowFactor, b: Float64Array): Float64Array {
  const { blocks, size, border, link } = factor.matrix;
  const x = b.slice();
  const end = x.subarray(blocks * size);
  for (let block = 0; block < blocks; block++) {
    const own = x.subarray(block * size, (block + 1) * size);
    own.set(choleskySolve(factor.blockFactors[block]!, size, own));
    for (let i = 0; i < size; i++)
      for (let c = 0; c < border; c++) end[c]! -= link[(block * size + i) * border + c]! * own[i]!;
  }
  end.set(choleskySolve(factor.cornerFactor, border, end));
  for (let i = 0; i < blocks * size; i++)
    for (let c = 0; c < border; c++) x[i]! -= factor.solvedLink[i * border + c]! * end[c]!;
  return x;
}

/** `ln det A`. */
export function arrowLogDet(factor: ArrowFactor): number {
  const { size, border } = factor.matrix;
  return factor.blockFactors.reduce(
    (sum, block) => sum + choleskyLogDet(block, size),
    choleskyLogDet(factor.cornerFactor, border),
  );
}

/** The border's part of the inverse (border x border), and the diagonal of the blocks' part. */
export function arrowInverse(factor: ArrowFactor): { corner: Float64Array; blockDiagonal: Float64Array } {
  const { blocks, size, border } = factor.matrix;
  const corner = choleskyInverse(factor.cornerFactor, border);
  const blockDiagonal = new Float64Array(blocks * size);
  for (let b = 0; b < blocks; b++) {
    const own = choleskyInverse(factor.blockFactors[b]!, size);
    for (let i = 0; i < size; i++) {
      const at = b * size + i;
      const row = factor.solvedLink.subarray(at * border, (at + 1) * border);
      let sum = own[i * (size + 1)]!;
      for (let c = 0; c < border; c++) {
        let across = 0;
        for (let d = 0; d < border; d++) across += corner[c * border + d]! * row[d]!;
        sum += row[c]! * across;
      }
      blockDiagonal[at] = sum;
    }
  }
  return { corner, blockDiagonal };
}
