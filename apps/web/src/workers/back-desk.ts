import {
  type KennelOfFacts,
  type SessionBackView,
  type SessionsView,
  sessionBackView,
  sessionsView,
} from '@sedgeline/projections';

/** What Look back asks of the worker. */
export type BackCalls = {
  /** Every session of the record, the newest first. */
  readonly sessions: () => Promise<SessionsView>;
  /** A session and its reps; `null` for one that no fact names. */
  readonly sessionBack: (session: string) => Promise<SessionBackView | null>;
};

/** The desk of Look back: looks up what was done in the open record. Nothing here writes. */
export function backCalls(inUse: () => KennelOfFacts): BackCalls {
  return {
    sessions: async () => sessionsView(inUse().record),
    sessionBack: async (session) => sessionBackView(inUse().record, session),
  };
}
