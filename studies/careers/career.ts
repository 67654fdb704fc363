import type { LegTruth } from './mind.ts';
import type { Planted } from './pattern.ts';
import type { Policy } from './trainer.ts';

export const MECHANISMS = ['linear-operator', 'threshold', 'exemplar', 'practice-curve'] as const;
export type MechanismName = (typeof MECHANISMS)[number];

/** A fact of the journal, as `docs/journal.md` writes it. */
export type CareerFact = {
  readonly id: string;
  readonly kind: string;
  readonly at: string;
  readonly body: Readonly<Record<string, unknown>>;
};

/** What a career is made from; the same spec, the same career. */
export interface CareerSpec {
  readonly mechanism: MechanismName;
  readonly policy: Policy;
  readonly dogs: number;
  /** Sessions of each dog. */
  readonly sessions: number;
  /** Reps of a session, least and most. */
  readonly reps: readonly [least: number, most: number];
  readonly grounds: number;
  readonly seed: number;
  /** Only with `practice-curve`. The same spec with `null` is the matching career without it. */
  readonly planted: Planted | null;
}

/** The working life of one kennel, and what was true of it. */
export interface Career {
  readonly spec: CareerSpec;
  readonly facts: readonly CareerFact[];
  /** Of each leg asked, by `rep/leg`. Of a spoilt leg: what it would have been, properly asked. */
  readonly truths: ReadonlyMap<string, LegTruth>;
  /** Chance of hanging back or stopping unasked, of each clean send, by rep. */
  readonly expectations: ReadonlyMap<string, { readonly given: number; readonly unplanted: number }>;
}
