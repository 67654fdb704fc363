/**
 * How many days of walk a block has had: all of them while it is worked, at most `atMostDays` in one stretch without work, as the
 * filter counts them. What was never worked does not walk.
 */
export class WalkClock {
  readonly #atMostDays: number;
  #lastDay: number | null;
  #before = 0;
  #told: number;

  /** `daysSinceLearned`: days from the last learning to now (day 0); `null` for never. */
  constructor(daysSinceLearned: number | null, atMostDays: number) {
    this.#atMostDays = atMostDays;
    this.#lastDay = daysSinceLearned === null ? null : -daysSinceLearned;
    this.#told = this.#total(0);
  }

  #total(day: number): number {
    return this.#lastDay === null ? 0 : this.#before + Math.min(day - this.#lastDay, this.#atMostDays);
  }

  /** The block is worked on that day, which is no earlier than any day named before. */
  worked(day: number): void {
    this.#before = this.#total(day);
    this.#lastDay = day;
  }

  /** Days of walk since this was last asked. */
  advance(day: number): number {
    const total = this.#total(day);
    const days = Math.max(0, total - this.#told);
    this.#told = total;
    return days;
  }
}
