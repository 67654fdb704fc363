import type { Cause, Expectation, LegRecord } from './record/training-record.ts';
import type { WorkView } from './views/views.ts';

/** What a tap adds to the journal: kind and body; the device gives identity, time and clock. */
export interface TapFact {
  readonly kind: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/** What the handler saw of one leg. */
export interface SeenLeg {
  readonly grade: LegRecord['grade'];
  readonly cause?: Cause | undefined;
}

/** Identities a tap may need, made by the device. */
export interface NewIds {
  readonly rep: string;
}

export type { Expectation, WorkView };
