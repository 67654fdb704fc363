/** Whole steps of a time line's scale, seconds. */
const STEPS_S = [10, 30, 60, 120, 300, 600] as const;
/** A mark of time needs so much room on the narrowest line, where this many stand side by side. */
const SIDE_BY_SIDE = 4.5;
/** A longer line is pushed sideways: one mark for each so many seconds there. */
const EACH_S = 76;
/** Numbers nearer than this share of the line would run into each other; on a line that is pushed, so many seconds. */
const CLOSE = { share: 0.094, seconds: 33 } as const;

/** Whole marks of time on a line of that length, seconds, no more than stand beside each other on a phone 320 px wide. */
export function timeMarks(lengthS: number): number[] {
  const most = Math.max(SIDE_BY_SIDE, lengthS / EACH_S);
  const step = STEPS_S.find((one) => lengthS / one <= most) ?? STEPS_S[STEPS_S.length - 1]!;
  return Array.from({ length: Math.floor(lengthS / step) + 1 }, (_, n) => n * step);
}

/**
 * For each number that stands at a moment, the row it is written in: the first where it runs into none before it.
 * Moments rise, in seconds.
 */
export function numberRows(atS: readonly number[], lengthS: number): number[] {
  const apartS = Math.min(CLOSE.share * lengthS, CLOSE.seconds);
  const lastInRow: number[] = [];
  return atS.map((at) => {
    const found = lastInRow.findIndex((before) => at - before >= apartS);
    const row = found === -1 ? lastInRow.length : found;
    lastInRow[row] = at;
    return row;
  });
}
