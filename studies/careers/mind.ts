import type { AskFigures, Grade, Skill } from './ask.ts';
import type { Dice } from './dice.ts';

/** Chances of the three grades; they add up to 1. */
export interface Chances {
  readonly missed: number;
  readonly fair: number;
  readonly good: number;
}

/** The moment of a leg, as the dog meets it. */
export interface Situation {
  readonly skill: Skill;
  readonly figures: AskFigures;
  /** Days since the career began. */
  readonly day: number;
  /** Earlier sessions of this dog on this ground. */
  readonly visits: number;
  readonly repsSinceBreak: number;
  readonly ageMonths: number;
}

/** What was true of a leg when it was asked. */
export interface LegTruth {
  /** Given everything of that day. */
  readonly given: Chances;
  /** With the day's form averaged out; the same where the mechanism knows no form of the day. */
  readonly formFree: Chances;
  /** As `given`, had the planted pattern not been there; the same where nothing was planted. */
  readonly unplanted: Chances;
}

/** One invented dog: how likely it does a leg, and what it takes from it. */
export interface Mind {
  /** A session begins: the day's form is drawn. */
  wakes(day: number): void;
  chances(situation: Situation): LegTruth;
  /** A leg that was properly asked. */
  learns(situation: Situation, grade: Grade): void;
  /** A send was run, with a stop whistle or without. */
  sent(stopped: boolean): void;
  /** Chance that the dog hangs back or stops unasked on a send that nobody stops. */
  expectation(): { readonly given: number; readonly unplanted: number };
}

/** Dogs of one kennel: what they share is drawn once, then each dog from its own dice. */
export type Mechanism = (kennel: Dice) => (dog: Dice) => Mind;

/** Chances from that of not missed and, of those, that of good. */
export function chancesOf(notMissed: number, goodOfThose: number): Chances {
  const good = notMissed * goodOfThose;
  return { missed: 1 - notMissed, fair: notMissed - good, good };
}

/** Mean of several chances with weights that add up to 1. */
export function mixed(parts: readonly (readonly [weight: number, chances: Chances])[]): Chances {
  const sum = (of: (chances: Chances) => number) =>
    parts.reduce((total, [weight, chances]) => total + weight * of(chances), 0);
  const good = sum(({ good }) => good);
  const fair = sum(({ fair }) => fair);
  return { missed: 1 - good - fair, fair, good };
}

/** A truth in a mechanism without form of the day and with nothing planted. */
export function plainTruth(given: Chances): LegTruth {
  return { given, formFree: given, unplanted: given };
}

/** Chance of hanging back in dogs that don't expect the whistle (our judgement, 2026). */
export const IDLE_EXPECTATION = 0.025;
