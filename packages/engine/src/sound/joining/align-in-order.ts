/** What pairing rows with columns weighs, row by row; a caller fills it anew for each sum. */
export interface PairTable {
  readonly columns: number;
  /** What a row left alone weighs: above nought. One for each row. */
  readonly misses: Float64Array;
  /** Row `i` may be paired with the columns from `from[i]` up to `to[i]`, that one left out. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** What a pair weighs, at `row * columns + column`; read within the bounds of the row alone. */
  readonly gains: Float64Array;
}

/** Sums are brought back to one beyond this, so that none overflows. */
const MOST = 1e60;

/**
 * Sums over every way of pairing rows with columns so that pairs do not cross. A way weighs the product of `gains` of its pairs and of
 * `misses` of the rows that it leaves alone; a column left alone weighs 1. Forward and backward recursion over the last column (the first, backward)
 * that is paired: a row changes what ends within its bounds alone, and what lies before all bounds to come is held as one sum.
 * Takes as many steps as there are columns within bounds, and those between bounds that overlap. Checked against every way written out
 * (`align-in-order.test.ts`).
 * @throws RangeError where sizes do not fit (at once), or a row's numbers are not finite and above nought (when summed)
 */
export function createAlignment(table: PairTable) {
  const { columns, misses, from, to, gains } = table;
  const rows = misses.length;
  if (gains.length !== rows * columns || from.length !== rows || to.length !== rows)
    throw new RangeError(`gains: expected ${rows} * ${columns} numbers and bounds, got ${gains.length}`);
  /** Ways of the rows so far whose last pair lies before this column, for each pair within bounds. */
  const before = new Float64Array(rows * columns);
  const logScales = new Float64Array(rows);
  const ending = new Float64Array(columns);
  let logWhole = 0;

  /** Logarithm of the sum of the weights of all ways. */
  function sum(): number {
    ending.fill(0);
    const lowest = lowestToCome(from);
    let [sure, edge, whole, logScale, logMisses] = [1, 0, 1, 0, 0];
    for (let i = 0; i < rows; i++) {
      const [first, last, miss] = [from[i]!, to[i]!, misses[i]!];
      for (; edge < lowest[i]!; edge++) sure += ending[edge]!;
      let so = sure;
      for (let j = edge; j < first; j++) so += ending[j]!;
      logScales[i] = logScale;
      for (let j = first, n = i * columns + first; j < last; j++, n++) {
        before[n] = so;
        const more = (gains[n]! / miss) * so;
        so += ending[j]!;
        ending[j] = ending[j]! + more;
        whole += more;
      }
      if (!(miss > 0 && whole > 0 && whole < Number.POSITIVE_INFINITY))
        throw new RangeError(`gains: expected finite numbers and a miss above 0 in row ${i}, got ${miss}`);
      logMisses += Math.log(miss);
      if (whole < MOST) continue;
      for (let j = edge; j < columns; j++) ending[j] = ending[j]! / whole;
      sure /= whole;
      logScale += Math.log(whole);
      whole = 1;
    }
    logWhole = logScale + Math.log(whole);
    return logWhole + logMisses;
  }

  /** Adds to `into`, of the size of `gains`, `weight` times the share of the last sum in which row and column are paired. */
  function addShares(into: Float64Array, weight: number): void {
    ending.fill(0);
    const highest = highestSoFar(to);
    let [sure, edge, whole, logScale] = [1, columns, 1, 0];
    for (let i = rows - 1; i >= 0; i--) {
      const [first, last, miss] = [from[i]!, to[i]!, misses[i]!];
      while (edge > highest[i]!) sure += ending[--edge]!;
      let so = sure;
      for (let j = edge - 1; j >= last; j--) so += ending[j]!;
      const unit = weight * Math.exp(logScales[i]! + logScale - logWhole);
      for (let j = last - 1, n = i * columns + last - 1; j >= first; j--, n--) {
        const more = (gains[n]! / miss) * so;
        into[n] = into[n]! + unit * more * before[n]!;
        so += ending[j]!;
        ending[j] = ending[j]! + more;
        whole += more;
      }
      if (whole < MOST) continue;
      for (let j = 0; j < edge; j++) ending[j] = ending[j]! / whole;
      sure /= whole;
      logScale += Math.log(whole);
      whole = 1;
    }
  }

  return { sum, addShares };
}

/** The least of what is still to come, for each place. */
function lowestToCome(from: Int32Array): Int32Array {
  const lowest = from.slice();
  for (let i = lowest.length - 2; i >= 0; i--) lowest[i] = Math.min(lowest[i]!, lowest[i + 1]!);
  return lowest;
}

/** The greatest of what came so far, for each place. */
function highestSoFar(to: Int32Array): Int32Array {
  const highest = to.slice();
  for (let i = 1; i < highest.length; i++) highest[i] = Math.max(highest[i]!, highest[i - 1]!);
  return highest;
}
