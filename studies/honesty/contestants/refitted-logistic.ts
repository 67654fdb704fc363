import { choleskyFactor, choleskySolve } from '@sedgeline/engine/numeric';

/** Newton steps at a refit: it starts from the last fit, so few are enough. */
const STEPS = 3;
/** Refitted after every leg at first, then after 5 % more. */
const LEGS_SHARE = 0.05;
const INTERCEPT_SD = 1.5;

/** A row of features: which, and how much of each. Sparse, since a leg has one skill and one dog. */
export interface Row {
  readonly at: readonly number[];
  readonly much: readonly number[];
}

/**
 * Penalised logistic regression refitted from all earlier rows as they come: MAP under independent N(0, `sd`^2) on every
 * feature, by Newton's method with a Cholesky solve. The first feature is the intercept, its prior about `start`.
 */
export class RefittedLogistic {
  readonly #sd: number;
  readonly #start: number;
  readonly #rows: Row[] = [];
  readonly #came: number[] = [];
  #weights: number[] = [];
  #width = 0;
  #fittedAt = 0;

  constructor(sd: number, start: number) {
    this.#sd = sd;
    this.#start = start;
    this.#weights = [start];
  }

  logit({ at, much }: Row): number {
    return at.reduce((sum, j, k) => sum + (this.#weights[j] ?? 0) * much[k]!, 0);
  }

  learns(row: Row, came: number): void {
    this.#rows.push(row);
    this.#came.push(came);
    for (const j of row.at) this.#width = Math.max(this.#width, j + 1);
    const due = this.#fittedAt + Math.max(1, LEGS_SHARE * this.#fittedAt);
    if (this.#rows.length < due) return;
    this.#fittedAt = this.#rows.length;
    for (let step = 0; step < STEPS; step++) this.#newton();
  }

  #newton(): void {
    const p = this.#width;
    while (this.#weights.length < p) this.#weights.push(0);
    const curve = new Float64Array(p * p);
    const slope = new Float64Array(p);
    for (let j = 0; j < p; j++) {
      const precision = 1 / (j === 0 ? INTERCEPT_SD : this.#sd) ** 2;
      curve[j * p + j] = precision;
      slope[j] = precision * ((j === 0 ? this.#start : 0) - this.#weights[j]!);
    }
    this.#rows.forEach((row, n) => {
      const chance = 1 / (1 + Math.exp(-this.logit(row)));
      const away = this.#came[n]! - chance;
      const weight = chance * (1 - chance);
      row.at.forEach((j, a) => {
        slope[j]! += row.much[a]! * away;
        const wx = weight * row.much[a]!;
        row.at.forEach((k, b) => {
          curve[j * p + k]! += wx * row.much[b]!;
        });
      });
    });
    const factor = choleskyFactor(curve, p);
    if (factor === null) throw new RangeError('curve: expected a positive definite matrix, got none');
    const step = choleskySolve(factor, p, slope);
    const longest = step.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
    // A step beyond 5 logits is shortened: Newton's method may overshoot from a cold start.
    const scale = Math.min(1, 5 / Math.max(longest, 1e-12));
    this.#weights = this.#weights.map((w, j) => w + scale * step[j]!);
  }
}
