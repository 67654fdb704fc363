import type { Skill } from './ask.ts';
import type { DemandName } from './demands.ts';
import type { Interval90, LegForecast, LegQuestion, LegResult, LogitPart } from './leg.ts';
import type { ToldLevel } from './told-level.ts';

/** A whole ability or a stretch: posterior mean and standard deviation, in logits. */
export interface LogitEstimate {
  readonly mean: number;
  readonly sd: number;
}

/** The part of a stretch that one demand makes. */
export interface DemandPart extends LogitPart {
  readonly factor: DemandName;
}

/** What is known of every dog, learnt one leg after another, in time order. */
export interface AbilityFilter {
  /** States the chances of a leg from what was observed so far. Changes nothing. */
  forecast(question: LegQuestion): LegForecast;
  /** The parts of the log-odds of "not missed"; they add up to `forecast(question).logOdds.mean`. */
  because(question: LegQuestion): readonly LogitPart[];
  /** States the leg's chances, then learns from its grade with its weight. */
  observe(leg: LegResult): LegForecast;
  /**
   * Takes what is told of a dog at a skill for a start (`told-level.ts`) in place of what was told of it before; `null`: nothing is told any more.
   * @throws RangeError for a level outside its range; nothing is changed then
   */
  tell(dog: string, skill: Skill, atMs: number, level: ToldLevel | null): void;
  /** What is left of what was told of a dog at a skill, as a share of it, 1 before any leg; `null` where nothing was. */
  toldLeft(dog: string, skill: Skill): number | null;
  /** Whole ability at the skill's easy reference ask (kennel + dog + general), as of `atMs`. */
  ability(dog: string, skill: Skill, atMs: number): LogitEstimate;
  /** Form of the day in a session, as learned so far; mean 0 with the prior sd for a session not seen. */
  form(dog: string, session: string): LogitEstimate;
  /** What lies between "not missed" and good for a dog: posterior mean and sd of its gap, in logits. */
  gap(dog: string): LogitEstimate;
  /** How much harder `now` is than `then`: `sum_j w_j (x_j now - x_j then)`, in logits. */
  stretch(now: LegQuestion, then: LegQuestion): LogitEstimate & { readonly parts: readonly DemandPart[] };
  /** Chance that no leg of a chain is missed, and that all are good: one form of the day shared by all legs. */
  chain(questions: readonly LegQuestion[]): {
    readonly noneMissed: number;
    readonly allGood: number;
    readonly interval90: Interval90;
  };
  /** The whole state as plain data that can be cloned and stored. */
  snapshot(): unknown;
}
