import type { NextInput } from '../next/session-state.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import type { RepTime } from './duration.ts';
import type { PlanRequest } from './plan.ts';

/** A rep that the handler will have in the plan as it is, at that number or as near to it as can be. */
export interface KeptRep {
  readonly n: number;
  readonly legs: readonly LaidLeg[];
}

/** All that a plan depends on: the request, the seed, and the record before the session. */
export interface PlanInput {
  readonly request: PlanRequest;
  /** A whole number of 0 and more: the same one gives the same plan. */
  readonly seed: number;
  /**
   * The record as the choice of the next rep sees it before the session's first rep. Its `question` is asked for a session yet
   * to come, so that the form of the day is not known.
   */
  readonly known: NextInput;
  /** Rep times of the journal, for the minutes. */
  readonly repTimes: readonly RepTime[];
  /** Sends of the handler's last sessions with this dog in order, oldest session first; `true` for a clean one. */
  readonly lateOrders: readonly (readonly boolean[])[];
  /** Sides of the casts of those sessions, likewise. */
  readonly lateSides: readonly (readonly ('left' | 'right')[])[];
  /** The dog is not to be worked: days that are left of its rest, `null` where no end is set; left out, it may work. */
  readonly rest?: { readonly daysLeft: number | null } | undefined;
  /** Reps locked by the handler, by rising `n`; left out, none. */
  readonly kept?: readonly KeptRep[] | undefined;
}
