/**
 * Lower factor L with `A = L L'` for drawing: A symmetric, row-major n x n, positive semi-definite to rounding. A direction with
 * no spread gets a column of zeros (Golub2013, 4.2.8, without pivoting).
 */
export function drawFactor(a: Float64Array, n: number): Float64Array {
  const l = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    let pivot = a[j * n + j]!;
    for (let k = 0; k < j; k++) pivot -= l[j * n + k]! ** 2;
    if (!(pivot > 1e-12 * Math.max(a[j * n + j]!, 1e-12))) continue;
    l[j * n + j] = Math.sqrt(pivot);
    for (let i = j + 1; i < n; i++) {
      let sum = a[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      l[i * n + j] = sum / l[j * n + j]!;
    }
  }
  return l;
}
