import type { AbilityPriors, Interval90, Recalibration } from '../ability/index.ts';
import type { ProofingGain } from './first-to-proof.ts';
import type { GoalAsk, SeasonWork } from './season-goal.ts';

/** What is asked of the forecast. */
export interface SeasonQuestion {
  /** The filter's state (`AbilityFilter.snapshot`), and the priors it was made with. */
  readonly snapshot: unknown;
  readonly priors: AbilityPriors;
  /** The correction that the stated chances are shown with, if any. */
  readonly recalibration: Recalibration | null;
  readonly dog: string;
  readonly asks: readonly GoalAsk[];
  readonly atMs: number;
  readonly work: SeasonWork;
  /** Whole weeks looked ahead. */
  readonly weeks: number;
  /** Futures drawn, an even number. */
  readonly futures?: number;
}

export interface GoalChance {
  /** That all asks are good on one day, the day's form unknown and shared. */
  readonly chance: number;
  readonly interval90: Interval90;
}

export interface SeasonWeek extends GoalChance {
  readonly week: number;
  /** Share of the futures in which the goal was reached in this week or before. */
  readonly probabilityReady: number;
}

export interface SeasonForecast {
  readonly now: GoalChance;
  /** From week 0, which is now. */
  readonly weeks: readonly SeasonWeek[];
  /** First week by which 10, 50, 90 in 100 futures have reached the goal; `null` past the horizon. */
  readonly readyInWeeks: {
    readonly p10: number | null;
    readonly p50: number | null;
    readonly p90: number | null;
  };
  /** Single factors, the most rewarding to proof first; only those that would raise the chance. */
  readonly first: readonly ProofingGain[];
}
