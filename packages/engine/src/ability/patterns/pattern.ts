import type { LegResult } from '../leg.ts';
import type { Cause } from '../leg-weight.ts';

/** What is looked for over months, in the order in which it is told. */
export const PATTERNS = [
  'expects-the-whistle',
  'one-sided',
  'only-at-home',
  'distance-wall',
  'tires-late',
  'late-whistle',
  'too-big-steps',
] as const;
export type PatternName = (typeof PATTERNS)[number];

/** A leg as patterns are found in it: how it was asked, how it went, and whose it was. */
export interface PatternLeg extends LegResult {
  /** `null` on a good leg. */
  readonly cause: Cause | null;
  /** A stop that was blown later than planned, however it went. Left out: not known to be. */
  readonly wasBlownLate?: boolean;
}

/** Legs (or sends) of one kind, and the share among them that is told of: misses, signs of expectation, late whistles. */
export interface Evidence {
  readonly of: EvidenceKind;
  readonly legs: number;
  /** 0..1; 0 where there are no legs. */
  readonly share: number;
}
export type EvidenceKind =
  | 'after-stops'
  | 'after-clean'
  | 'left'
  | 'right'
  | 'new-ground'
  | 'known-ground'
  | 'short-of-wall'
  | 'past-wall'
  | 'late'
  | 'fresh'
  | 'stops'
  | 'steps'
  | 'big-steps'
  | 'smaller-steps';

/** Why a pattern can't be told yet: what there is too little of. */
export interface TooLittle {
  readonly code: 'too-few';
  readonly of: EvidenceKind | 'clean-sends' | 'far-legs';
  readonly have: number;
  readonly need: number;
}

/**
 * How sure: `looks-like` from a probability over 0.8, `may-be` from 0.5, else `nothing`; `cant-say` where the record is
 * too thin to look, and then probability and strength are those before any record.
 */
export type PatternState = 'looks-like' | 'may-be' | 'nothing' | 'cant-say';

/** One pattern as the record shows it. */
export interface PatternFinding {
  readonly pattern: PatternName;
  readonly state: PatternState;
  /** Size of the effect under a wide prior of its own: logits, or a share where the pattern is one. */
  readonly strength: { readonly mean: number; readonly sd: number };
  /** That the effect is larger than the size that matters, prior odds and all. */
  readonly probability: number;
  readonly evidence: readonly Evidence[];
  /** Where the wall stands. */
  readonly at?: { readonly distanceM: number };
  /** The side that is the weaker one. */
  readonly weaker?: 'left' | 'right';
  readonly tooLittle?: TooLittle;
}

const LOOKS_LIKE = 0.8;
const MAY_BE = 0.5;

/** The word for a probability. */
export function stateOf(probability: number): PatternState {
  if (probability > LOOKS_LIKE) return 'looks-like';
  return probability >= MAY_BE ? 'may-be' : 'nothing';
}

/** Share of legs that are what is told of; 0 for none. */
export function evidenceOf<T>(of: EvidenceKind, legs: readonly T[], is: (leg: T) => boolean): Evidence {
  const count = legs.filter(is).length;
  return { of, legs: legs.length, share: legs.length === 0 ? 0 : count / legs.length };
}
