import { type Ends, wilsonInterval } from '../numeric/proportion-interval.ts';

/** A stated chance of good, and whether it came good. */
export interface StatedOutcome {
  readonly stated: number;
  readonly came: boolean;
}

/** Legs whose stated chance lay in [from, to): what was stated on average, what happened. */
export interface CalibrationRow {
  readonly from: number;
  readonly to: number;
  readonly legs: number;
  /** Mean stated chance. */
  readonly stated: number;
  /** Share that came good. */
  readonly happened: number;
  /** 95 % interval of the share (Wilson1927). */
  readonly interval95: Ends;
}

const BINS = 10;
const FEWEST_LEGS = 20;

/**
 * Calibration table of the chance of good: ten bins of equal width, neighbours merged upwards until each row
 * has 20 legs or more (the last takes in what is left over). Fewer than 20 legs in all give one row.
 */
export function calibrationTable(outcomes: readonly StatedOutcome[]): readonly CalibrationRow[] {
  const bins = Array.from({ length: BINS }, () => ({ legs: 0, stated: 0, came: 0 }));
  for (const { stated, came } of outcomes) {
    const bin = bins[Math.min(BINS - 1, Math.floor(stated * BINS))]!;
    bin.legs += 1;
    bin.stated += stated;
    bin.came += came ? 1 : 0;
  }
  const merged: { from: number; to: number; legs: number; stated: number; came: number }[] = [];
  let open = false;
  bins.forEach((bin, k) => {
    const last = merged.at(-1);
    const to = (k + 1) / BINS;
    if (last !== undefined && open) {
      last.to = to;
      last.legs += bin.legs;
      last.stated += bin.stated;
      last.came += bin.came;
    } else merged.push({ from: k / BINS, to, ...bin });
    open = merged.at(-1)!.legs < FEWEST_LEGS;
  });
  const last = merged.at(-1)!;
  if (merged.length > 1 && last.legs < FEWEST_LEGS) {
    merged.pop();
    const before = merged.at(-1)!;
    before.to = last.to;
    before.legs += last.legs;
    before.stated += last.stated;
    before.came += last.came;
  }
  return merged
    .filter((row) => row.legs > 0)
    .map(({ from, to, legs, stated, came }) => ({
      from,
      to,
      legs,
      stated: stated / legs,
      happened: came / legs,
      interval95: wilsonInterval(came, legs),
    }));
}
