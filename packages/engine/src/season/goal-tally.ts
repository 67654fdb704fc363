import type { FormAverage } from './form-average.ts';
import type { GoalChance } from './season-forecast.ts';
import type { Future, TwinFutures } from './twin-futures.ts';

/** A factor whose proofing is tried: whose skill (its place in the dog's belief), and which demands go with it. */
interface TriedFactor {
  readonly skill: number;
  readonly demands: readonly number[];
}

/** Quantile of an ascending sample, between the two nearest. */
function quantile(sorted: Float64Array, p: number): number {
  const at = p * (sorted.length - 1);
  const below = sorted[Math.floor(at)]!;
  return below + (at - Math.floor(at)) * (sorted[Math.ceil(at)]! - below);
}

/** Counts over futures, week by week: the goal's chance, when it was first reached, and what proofing a factor would do today. */
export class GoalTally {
  readonly #average: FormAverage;
  readonly #wanted: readonly number[];
  readonly #futures: number;
  readonly #chanceSum: Float64Array;
  readonly #onDays: readonly Float64Array[];
  /** Futures by the week in which they reached the goal. */
  readonly reachedIn: Float64Array;
  readonly #tried: readonly TriedFactor[];
  readonly #triedSum: Float64Array;
  readonly #logOdds: Float64Array;
  readonly #easier: Float64Array;

  constructor(
    average: FormAverage,
    wanted: readonly number[],
    weeks: number,
    futures: number,
    tried: readonly TriedFactor[],
  ) {
    this.#average = average;
    this.#wanted = wanted;
    this.#futures = futures;
    this.#chanceSum = new Float64Array(weeks + 1);
    this.#onDays = Array.from({ length: weeks + 1 }, () => new Float64Array(futures));
    this.reachedIn = new Float64Array(weeks + 1);
    this.#tried = tried;
    this.#triedSum = new Float64Array(tried.length);
    this.#logOdds = new Float64Array(wanted.length);
    this.#easier = new Float64Array(wanted.length);
  }

  /** Looks at future number `n` at the end of a week, and on one day of known form; whether the goal stands reached there. */
  look(pair: TwinFutures, future: Future, n: number, week: number, form: number): boolean {
    const average = this.#average;
    const logOdds = pair.logOddsOfGood(future, this.#logOdds);
    this.#chanceSum[week]! += average.allOf(logOdds);
    this.#onDays[week]![n] = average.allOn(logOdds, form);
    let reached = true;
    for (let l = 0; l < this.#wanted.length; l++)
      if (!(average.each[l]! >= this.#wanted[l]!)) reached = false;
    if (week > 0) return reached;
    for (let k = 0; k < this.#tried.length; k++) {
      const { skill, demands } = this.#tried[k]!;
      this.#triedSum[k]! += average.allOf(pair.without(future, skill, demands, logOdds, this.#easier));
    }
    return reached;
  }

  chance(week: number): GoalChance {
    const sorted = this.#onDays[week]!.sort();
    const chance = Math.min(1, this.#chanceSum[week]! / this.#futures);
    return { chance, interval90: [quantile(sorted, 0.05), quantile(sorted, 0.95)] };
  }

  /** The goal's chance today, were a tried factor at its easy end. */
  chanceWithout(tried: number): number {
    return Math.min(1, this.#triedSum[tried]! / this.#futures);
  }
}
