/**
 * Cholesky factor and what follows from it, for small symmetric positive definite matrices kept row-major in
 * a Float64Array of n x n (Golub2013, 4.2).
 */

/** Lower factor L with `A = L L'`; `null` if A is not positive definite to working precision. */
export function choleskyFactor(a: Float64Array, n: number): Float64Array | null {
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = a[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      if (i !== j) l[i * n + j] = sum / l[j * n + j]!;
      else if (sum > 0 && sum < Infinity) l[i * n + i] = Math.sqrt(sum);
      else return null;
    }
  }
  return l;
}

/** Solves `L L' x = b`. */
export function choleskySolve(l: Float64Array, n: number, b: Float64Array): Float64Array {
  const x = b.slice();
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= l[i * n + k]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= l[k * n + i]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
  return x;
}

/** Inverse of A from its factor, symmetric to the bit. */
export function choleskyInverse(l: Float64Array, n: number): Float64Array {
  const inverse = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const unit = new Float64Array(n);
    unit[j] = 1;
    const column = choleskySolve(l, n, unit);
    for (let i = j; i < n; i++) {
      inverse[i * n + j] = column[i]!;
      inverse[j * n + i] = column[i]!;
    }
  }
  return inverse;
}

/** `ln det A` from its factor. */
export function choleskyLogDet(l: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += Math.log(l[i * n + i]!);
  return 2 * sum;
}
