import type { Moments } from './ordinal-update.ts';

/** A Gaussian over ability (index 0) and weights; `cov` is row-major, symmetric. */
export interface GaussianBlock {
  readonly mean: Float64Array;
  readonly cov: Float64Array;
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

/** `h'b` over the places where h is not zero. */
export function projectMean(block: GaussianBlock, h: Float64Array, support: readonly number[]): number {
  let sum = 0;
  for (const i of support) sum += h[i]! * block.mean[i]!;
  return sum;
}

/** `h'Ph` over the places where h is not zero. */
export function projectVariance(block: GaussianBlock, h: Float64Array, support: readonly number[]): number {
  const n = block.mean.length;
  let sum = 0;
  for (const i of support) {
    const row = i * n;
    let inner = 0;
    for (const j of support) inner += block.cov[row + j]! * h[j]!;
    sum += h[i]! * inner;
  }
  return sum;
}

/** Adds the walk to the diagonal: `first` to the ability's variance, `others` to each weight's. */
export function widen(block: GaussianBlock, first: number, others: number): void {
  const n = block.mean.length;
  for (let i = 0; i < n; i++) block.cov[i * (n + 1)]! += i === 0 ? first : others;
}

const GAIN = new Float64Array(64);

/**
 * Gives a block its share of a one-dimensional update of `eta = h'b + the rest` (Minka2001): with
 * `shift = (m1 - m)/v` and `shrink = (v - v1)/v^2`, `b += P h shift` and `P -= P h h' P shrink`. P stays
 * symmetric to the bit, and no diagonal entry grows when `shrink >= 0`.
 */
export function updateBlock(
  block: GaussianBlock,
  h: Float64Array,
  support: readonly number[],
  shift: number,
  shrink: number,
): void {
  const { mean, cov } = block;
  const n = mean.length;
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (const j of support) sum += cov[i * n + j]! * h[j]!;
    GAIN[i] = sum;
  }
  for (let i = 0; i < n; i++) {
    const gain = GAIN[i]!;
    if (gain === 0) continue;
    mean[i]! += gain * shift;
    const scaled = gain * shrink;
    for (let j = i; j < n; j++) {
      const value = cov[i * n + j]! - scaled * GAIN[j]!;
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
