import { GRADES, type Grade } from './ask.ts';
import type { GradeChances } from './leg.ts';

/** Mean scores of stated chances; each is better when smaller. */
export interface Scores {
  /** How many legs were scored. */
  readonly legs: number;
  /** `-ln P(the grade that came)`, natural logarithm, of the three grades. 1.0986 is knowing nothing. */
  readonly logLoss: number;
  /** `sum over the three grades of (chance - came)^2`, 0..2 (Brier1950). */
  readonly brier: number;
  /** `sum over the two cuts of (P(at most this grade) - came)^2`, 0..2, not divided (Epstein1969). */
  readonly rankedProbability: number;
}

/** Least chance a score lets pass: a stated 0 that comes true costs 34.5 nats, not infinity. */
const LEAST_CHANCE = 1e-15;

/** Adds up scores one stated chance after another. */
export class ScoreSum {
  #legs = 0;
  #logLoss = 0;
  #brier = 0;
  #ranked = 0;

  add(chance: GradeChances, grade: Grade): void {
    this.#legs += 1;
    this.#logLoss -= Math.log(Math.max(chance[grade], LEAST_CHANCE));
    let atMost = 0;
    GRADES.forEach((name, k) => {
      const away = chance[name] - (name === grade ? 1 : 0);
      this.#brier += away * away;
      atMost += away;
      if (k < GRADES.length - 1) this.#ranked += atMost * atMost;
    });
  }

  /** Means so far; `null` when nothing was scored. */
  scores(): Scores | null {
    if (this.#legs === 0) return null;
    const n = this.#legs;
    return {
      legs: n,
      logLoss: this.#logLoss / n,
      brier: this.#brier / n,
      rankedProbability: this.#ranked / n,
    };
  }
}
