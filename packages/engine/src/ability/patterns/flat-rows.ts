import type { Grade } from '../ask.ts';

/** One leg as the regression sees it: the columns that are not 0, and the group whose own level it shares. */
export interface GroupedRow {
  readonly columns: readonly number[];
  readonly values: readonly number[];
  readonly group: number;
  readonly grade: Grade;
  /** 0..1; tempers the likelihood. */
  readonly weight: number;
}

/** Rows in flat arrays: the fit goes over them some hundred times. */
export class FlatRows {
  readonly count: number;
  /** Where each row's columns begin; one more than there are rows. */
  readonly begins: Int32Array;
  readonly columns: Int32Array;
  readonly values: Float64Array;
  readonly groups: Int32Array;
  readonly weights: Float64Array;
  readonly grades: readonly Grade[];

  constructor(rows: readonly GroupedRow[]) {
    this.count = rows.length;
    this.begins = new Int32Array(rows.length + 1);
    rows.forEach(({ columns }, i) => {
      this.begins[i + 1] = this.begins[i]! + columns.length;
    });
    this.columns = new Int32Array(this.begins[rows.length]!);
    this.values = new Float64Array(this.begins[rows.length]!);
    rows.forEach(({ columns, values }, i) => {
      this.columns.set(columns, this.begins[i]);
      this.values.set(values, this.begins[i]);
    });
    this.groups = Int32Array.from(rows, ({ group }) => group);
    this.weights = Float64Array.from(rows, ({ weight }) => weight);
    this.grades = rows.map(({ grade }) => grade);
  }

  /** `eta = x'w + level[group]` of a row. */
  etaOf(row: number, weights: Float64Array, levels: Float64Array): number {
    let eta = levels[this.groups[row]!]!;
    for (let a = this.begins[row]!; a < this.begins[row + 1]!; a++)
      eta += this.values[a]! * weights[this.columns[a]!]!;
    return eta;
  }

  /** Puts other values into a column, in the rows that have it. */
  refill(column: number, newValue: (row: number) => number): void {
    for (let row = 0; row < this.count; row++) {
      for (let a = this.begins[row]!; a < this.begins[row + 1]!; a++)
        if (this.columns[a] === column) this.values[a] = newValue(row);
    }
  }
}
