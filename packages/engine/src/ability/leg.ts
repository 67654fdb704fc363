import type { Ask, Grade, Skill } from './ask.ts';

/** What the program itself knows about the moment of a leg, beside the ask. */
export interface LegContext {
  /** This dog's earlier sessions on this ground; `null` when no ground was named (then nothing is new). */
  readonly earlierSessionsOnGround: number | null;
  /** Reps done before this one since the session began or the last break. */
  readonly repsSinceBreak: number;
  /** Days since this skill was last worked by this dog; 0 when it never was, or was worked today. */
  readonly daysSinceWorked: number;
  /** Stopped sends in a row just before this send, in this session and the ones before. */
  readonly stopsRunning: number;
  /** Age of the dog in months; `null` when its birth date is not known. */
  readonly ageMonths: number | null;
}

/** A leg about to be asked: all that its chance depends on. */
export interface LegQuestion {
  readonly dog: string;
  readonly skill: Skill;
  /** The session the leg belongs to, or `null` for a session yet to come (form of the day unknown). */
  readonly session: string | null;
  readonly atMs: number;
  readonly ask: Ask;
  readonly context: LegContext;
}

/** A leg that was done. `weight` 0 is held against nobody, 0.5 is unsure, 1 counts in full. */
export interface LegResult extends LegQuestion {
  readonly session: string;
  readonly grade: Grade;
  readonly weight: number;
}

/** Chances of the three grades; they add up to 1. */
export interface GradeChances {
  readonly missed: number;
  readonly fair: number;
  readonly good: number;
}

/** [5 %, 95 %] quantiles of a chance. */
export type Interval90 = readonly [number, number];

/** One part of the log-odds of "not missed": `ability`, `told`, `general`, `form`, `odd`, or a demand's name. */
export interface LogitPart {
  readonly factor: string;
  readonly logit: number;
}

/** What the filter states about one leg. */
export interface LegForecast {
  readonly chance: GradeChances;
  /** Includes the form of the day. */
  readonly interval90: { readonly good: Interval90; readonly notMissed: Interval90 };
  /** Log-odds of "not missed": mean and standard deviation. */
  readonly logOdds: { readonly mean: number; readonly sd: number };
}
