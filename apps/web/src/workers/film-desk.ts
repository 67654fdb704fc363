import { type FilmBenchView, filmBenchView, type KennelOfFacts } from '@sedgeline/projections';

/** What the film bench asks of the worker. What is marked goes down by `append`. */
export type FilmCalls = {
  /** A session beside its films; `null` for one that no fact names. */
  readonly filmBench: (session: string) => Promise<FilmBenchView | null>;
};

/** The film desk: looks up films and marks in the open record. Nothing here writes, and no film ever comes here. */
export function filmCalls(inUse: () => KennelOfFacts): FilmCalls {
  return { filmBench: async (session) => filmBenchView(inUse().record, session) };
}
