/** Kinds of rep that take their own time. */
export const REP_KINDS = ['still', 'recall', 'straight', 'stopped', 'cast'] as const;
export type RepKind = (typeof REP_KINDS)[number];

/**
 * Seconds of a rep beside its laying and walking, before any record: settling the dog, the rep itself, the reward and the
 * note. (J): our judgement, 2026, common practice, no source; the journal's own rep times move them.
 */
export const USUAL_REP_S: Readonly<Record<RepKind, number>> = {
  still: 40,
  recall: 45,
  straight: 45,
  stopped: 55,
  cast: 55,
};

/** How far one handler's pace may lie from the usual, and one rep from the next, in logs; (J), as above. */
export const PACE_PRIOR = { sd: 0.35, repSd: 0.35, repSdReps: 6 } as const;

/** What laying out takes; (J), as above. A throw carries so far; what is to fall farther off is thrown from nearer. */
export const LAYING = { walkMPerS: 1.3, placeS: 5, liftS: 4, throwS: 8, throwM: 25 } as const;

/** Times between two reps outside these are no rep's: an entry made later, or a talk with somebody; (J), as above. */
export const REP_TIME_S = { least: 15, most: 360 } as const;

/** No rep is done in less (contract, "Fits"). */
export const SHORTEST_REP_S = 25;

/** A break, minutes; (J), as above. */
export const BREAK_MINUTES = 3;
