/** Milliseconds in a day of 24 hours; the engine's days are spans of time, not dates of a calendar. */
export const MS_PER_DAY = 86_400_000;
