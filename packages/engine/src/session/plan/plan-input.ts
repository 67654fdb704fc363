import type { NextInput } from '../next/session-state.ts';
import type { RepTime } from './duration.ts';
import type { PlanRequest } from './plan.ts';

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
}
