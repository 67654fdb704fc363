/** All ways of pairing two lists in order, weighed. */
export interface Alignment {
  /** Logarithm of the sum of the weights of all ways. */
  readonly logSum: number;
  /** Share of that sum in which `row` and `column` are paired, at `row * columns + column`. */
  readonly share: Float64Array;
}

/**
 * Sums over every way of pairing rows with columns so that pairs do not cross. A way weighs the product of `gains` of its pairs and
 * of `misses` of the rows that it leaves alone; a column left alone weighs 1. Forward and backward recursion, each row divided by
 * its largest number so that none overflows.
 * `O(rows * columns)`. Checked against every way written out (`align-in-order.test.ts`).
 * @throws RangeError unless `gains` has rows * columns numbers and each row has a number above nought
 */
export function alignInOrder(gains: Float64Array, misses: Float64Array, columns: number): Alignment {
  const rows = misses.length;
  const { before, scale, logSum } = forward(gains, misses, columns);
  const wide = columns + 1;
  const whole = before[rows * wide + columns]!;
  const share = new Float64Array(rows * columns);
  /** From row i and column j on: the same, from the other end. */
  let after = new Float64Array(wide).fill(1);
  const paired = new Float64Array(columns);
  for (let i = rows; i >= 1; i--) {
    const over = 1 / scale[i - 1]!;
    const miss = misses[i - 1]! * over;
    const next = new Float64Array(wide);
    next[columns] = miss * after[columns]!;
    for (let j = columns - 1; j >= 0; j--) {
      const gain = gains[(i - 1) * columns + j]! * over;
      share[(i - 1) * columns + j] = (gain * before[(i - 1) * wide + j]! * after[j + 1]!) / whole;
      paired[j] = gain * after[j + 1]! + miss * paired[j]!;
      next[j] = next[j + 1]! + paired[j]!;
    }
    after = next;
  }
  return { logSum, share };
}

/** The sum alone, without the shares: half the work. Throws as `alignInOrder` does. */
export function sumInOrder(gains: Float64Array, misses: Float64Array, columns: number): number {
  return forward(gains, misses, columns).logSum;
}

function forward(gains: Float64Array, misses: Float64Array, columns: number) {
  const rows = misses.length;
  if (gains.length !== rows * columns)
    throw new RangeError(`gains: expected ${rows} * ${columns} numbers, got ${gains.length}`);
  const wide = columns + 1;
  const scale = rowScales(gains, misses, columns);
  /** Up to row i and column j: all ways, and those in which column j is paired. */
  const before = new Float64Array((rows + 1) * wide).fill(1, 0, wide);
  const paired = new Float64Array(columns);
  let logSum = 0;
  for (let i = 1; i <= rows; i++) {
    const over = 1 / scale[i - 1]!;
    const miss = misses[i - 1]! * over;
    logSum += Math.log(scale[i - 1]!);
    let so = miss * before[(i - 1) * wide]!;
    before[i * wide] = so;
    for (let j = 0; j < columns; j++) {
      const gain = gains[(i - 1) * columns + j]! * over;
      paired[j] = gain * before[(i - 1) * wide + j]! + miss * paired[j]!;
      so += paired[j]!;
      before[i * wide + j + 1] = so;
    }
  }
  return { before, scale, logSum: logSum + Math.log(before[rows * wide + columns]!) };
}

function rowScales(gains: Float64Array, misses: Float64Array, columns: number): Float64Array {
  return misses.map((miss, i) => {
    let most = miss;
    for (let j = 0; j < columns; j++) most = Math.max(most, gains[i * columns + j]!);
    if (!(most > 0 && Number.isFinite(most)))
      throw new RangeError(`gains: expected a finite number above 0 in row ${i}, got ${most}`);
    return most;
  });
}
