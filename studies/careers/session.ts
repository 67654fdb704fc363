import type { Dice } from './dice.ts';
import type { FactWriter } from './fact-writer.ts';
import type { LegTruth, Mind } from './mind.ts';
import type { Trainer } from './trainer.ts';

/** Where a career is written down. */
export interface Life {
  readonly truths: Map<string, LegTruth>;
  readonly expectations: Map<string, ReturnType<Mind['expectation']>>;
  readonly writer: FactWriter;
}

/** How often the person spoils a leg, runs a send clean, does the same again, takes a break; shares of 1. */
export interface Handler {
  readonly spoils: number;
  /** Of stops, beside `spoils`. */
  readonly spoiltStops: number;
  readonly clean: number;
  readonly repeats: number;
  /** Before each rep from the seventh on. */
  readonly breaks: number;
}

export interface Session {
  readonly dog: string;
  readonly mind: Mind;
  readonly trainer: Trainer;
  readonly handler: Handler;
  readonly dice: Dice;
  readonly name: string;
  /** Sessions of this dog before. */
  readonly number: number;
  readonly ground: string;
  readonly visits: number;
  readonly reps: number;
  readonly day: number;
  readonly startMs: number;
  readonly ageMonths: number;
}
