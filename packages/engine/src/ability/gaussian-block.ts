import type { Moments } from './ordinal-update.ts';

/**
 * A Gaussian over ability (index 0) and weights. `cov` is the lower triangle of its covariance, row after row:
 * entry (i, j <= i) at i(i + 1)/2 + j. Symmetric by construction, and half the memory to walk through.
 */
export interface GaussianBlock {
  readonly mean: Float64Array;
  readonly cov: Float64Array;
}

/** Where entry (i, j <= i) lies in `cov`. */
export function packedAt(i: number, j: number): number {
  return (i * (i + 1)) / 2 + j;
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
  const cov = new Float64Array(packedAt(n, 0));
  for (let i = 0; i < n; i++) cov[packedAt(i, i)] = i === 0 ? first : others;
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
  const { values, support, count } = h;
  let sum = 0;
  for (let k = 0; k < count; k++) {
    const row = packedAt(support[k]!, 0);
    let inner = 0;
    for (let l = 0; l < k; l++) inner += cov[row + support[l]!]! * values[l]!;
    sum += values[k]! * (2 * inner + cov[row + support[k]!]! * values[k]!);
  }
  return sum;
}

/** Adds the walk to the diagonal: `first` to the ability's variance, `others` to each weight's. */
export function widen(block: GaussianBlock, first: number, others: number): void {
  const n = block.mean.length;
  for (let i = 0; i < n; i++) block.cov[packedAt(i, i)]! += i === 0 ? first : others;
}

const GAIN = new Float64Array(64);

/** P h, into `gain`: column by column, so that the additions do not wait for one another. */
function gainOf(block: GaussianBlock, h: SparseVector, gain: Float64Array): void {
  const { cov } = block;
  const { support, values, count } = h;
  const n = block.mean.length;
  gain.fill(0, 0, n);
  for (let k = 0; k < count; k++) {
    const place = support[k]!;
    const value = values[k]!;
    let at = packedAt(place, 0);
    for (let i = 0; i <= place; i++) gain[i]! += cov[at + i]! * value;
    at += 2 * place + 1;
    for (let i = place + 1; i < n; i++) {
      gain[i]! += cov[at]! * value;
      at += i + 1;
    }
  }
}

/**
 * Gives a block its share of a one-dimensional update of `eta = h'b + the rest` (Minka2001): with
 * `shift = (m1 - m)/v` and `shrink = (v - v1)/v^2`, `b += P h shift` and `P -= P h h' P shrink`. No diagonal
 * entry grows when `shrink >= 0`. Cost O(p^2).
 */
export function updateBlock(block: GaussianBlock, h: SparseVector, shift: number, shrink: number): void {
  const { mean, cov } = block;
  const n = mean.length;
  const gains = GAIN;
  gainOf(block, h, gains);
  let at = 0;
  for (let i = 0; i < n; i++) {
    const gain = gains[i]!;
    if (gain !== 0) {
      mean[i]! += gain * shift;
      const scaled = gain * shrink;
      for (let j = 0; j <= i; j++) cov[at + j]! -= scaled * gains[j]!;
    }
    at += i + 1;
  }
}

/** The same for a scalar block (general, form, odd), whose h is 1. */
export function updateScalar(block: Moments, shift: number, shrink: number): void {
  const p = block.variance;
  block.mean += p * shift;
  block.variance = p - p * p * shrink;
}
