import type { Moments } from './ordinal-update.ts';

/** A Gaussian over ability (index 0) and weights; `cov` is row-major, symmetric. */
export interface GaussianBlock {
  readonly mean: Float64Array;
  readonly cov: Float64Array;
}

/** A vector of which only the `count` places named first in `support` are not zero, with their `values`. */
export interface SparseVector {
  readonly support: Int32Array;
  readonly values: Float64Array;
  count: number;
}

export function sparseVector(length: number): SparseVector {
  return { support: new Int32Array(length), values: new Float64Array(length), count: 0 };
}

/** Appends a place that is not zero; places come in ascending order. */
export function append(vector: SparseVector, place: number, value: number): void {
  vector.support[vector.count] = place;
  vector.values[vector.count] = value;
  vector.count += 1;
}

/** A block with the given means and independent variances: `first` for ability, `others` for each weight. */
export function independentBlock(mean: Float64Array, first: number, others: number): GaussianBlock {
  const n = mean.length;
  const cov = new Float64Array(n * n);
  for (let i = 0; i < n; i++) cov[i * (n + 1)] = i === 0 ? first : others;
  return { mean: mean.slice(), cov };
}

export function copyBlock(block: GaussianBlock): GaussianBlock {
  return { mean: block.mean.slice(), cov: block.cov.slice() };
}

/** `h'b`. */
export function projectMean(mean: Float64Array, h: SparseVector): number {
  const { values, support, count } = h;
  let sum = 0;
  for (let k = 0; k < count; k++) sum += values[k]! * mean[support[k]!]!;
  return sum;
}

/** `h'Ph`. */
export function projectVariance(block: GaussianBlock, h: SparseVector): number {
  const { cov } = block;
  const n = block.mean.length;
  const { values, support, count } = h;
  let sum = 0;
  for (let k = 0; k < count; k++) {
    const i = support[k]!;
    const row = i * n;
    let inner = 0;
    for (let l = 0; l < k; l++) inner += cov[row + support[l]!]! * values[l]!;
    sum += values[k]! * (2 * inner + cov[row + i]! * values[k]!);
  }
  return sum;
}

/** Adds the walk to the diagonal: `first` to the ability's variance, `others` to each weight's. */
export function widen(block: GaussianBlock, first: number, others: number): void {
  const n = block.mean.length;
  for (let i = 0; i < n; i++) block.cov[i * (n + 1)]! += i === 0 ? first : others;
}

const GAIN = new Float64Array(64);
const MOVED = new Int32Array(64);

/**
 * Gives a block its share of a one-dimensional update of `eta = h'b + the rest` (Minka2001): with
 * `shift = (m1 - m)/v` and `shrink = (v - v1)/v^2`, `b += P h shift` and `P -= P h h' P shrink`. P stays
 * symmetric to the bit, and no diagonal entry grows when `shrink >= 0`.
 */
export function updateBlock(block: GaussianBlock, h: SparseVector, shift: number, shrink: number): void {
  const { mean, cov } = block;
  const n = mean.length;
  const { values, support, count } = h;
  let moved = 0;
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let sum = 0;
    for (let k = 0; k < count; k++) sum += cov[row + support[k]!]! * values[k]!;
    if (sum === 0) continue;
    GAIN[moved] = sum;
    MOVED[moved++] = i;
    mean[i]! += sum * shift;
  }
  for (let a = 0; a < moved; a++) {
    const i = MOVED[a]!;
    const scaled = GAIN[a]! * shrink;
    for (let b = a; b < moved; b++) {
      const j = MOVED[b]!;
      const value = cov[i * n + j]! - scaled * GAIN[b]!;
      cov[i * n + j] = value;
      cov[j * n + i] = value;
    }
  }
}

/** The same for a scalar block (general, form, odd), whose h is 1. */
export function updateScalar(block: Moments, shift: number, shrink: number): void {
  const p = block.variance;
  block.mean += p * shift;
  block.variance = p - p * p * shrink;
}
