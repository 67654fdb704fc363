import type { Ask, ChangedFactor, Grade, Interval90, Skill, Verdict } from '@sedgeline/engine/ability';
import type { Cause } from '../record/training-record.ts';

/** One leg held against its base: what changed, how much that was, and what became of the chance of good. */
export interface WhyStepView {
  /** The leg that went well and from which this one was the least of a step. */
  readonly since: {
    readonly rep: string;
    readonly leg: number;
    readonly atMs: number;
    readonly ask: Ask;
    /** It was done in this same session; then `repNumber` counts from 1 within it. */
    readonly repNumber: number | null;
  };
  /** Logits; above 0 harder. */
  readonly stretch: { readonly mean: number; readonly sd: number };
  /** What made the leg harder first; the parts in logits add up to the stretch. */
  readonly changed: readonly ChangedFactor[];
  readonly chanceAtBase: number;
  readonly intervalAtBase90: Interval90;
  /** With these the parts in chance add up to the difference of the two chances. */
  readonly odd: { readonly logit: number; readonly chance: number };
  readonly sureness: { readonly chance: number };
}

export interface WhyLegView {
  /** Counts from 0 within its rep. */
  readonly leg: number;
  readonly skill: Skill;
  readonly ask: Ask;
  readonly grade: Grade;
  /** As the handler gave it; `null` on a good leg. */
  readonly cause: Cause | null;
  /** Chance of good, stated from what came strictly before this leg. */
  readonly chanceBefore: number;
  readonly interval90: Interval90;
  /** `null` with no success before. */
  readonly step: WhyStepView | null;
  readonly verdict: Verdict;
}

/** Why a rep went as it did. */
export interface WhyView {
  readonly rep: string;
  readonly session: string;
  readonly dog: string;
  readonly dogName: string;
  readonly atMs: number;
  /** 1-based number within its session. */
  readonly repNumber: number;
  readonly legs: readonly WhyLegView[];
  /** Form of that day, as of the end of the session: the one thing here that later legs may move. */
  readonly form: { readonly mean: number; readonly sd: number; readonly poorProbability: number };
}
