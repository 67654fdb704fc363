import type { FilmMark } from './film-record.ts';

/** A time between two marks, seconds, and the bounds it lies in. */
export interface TimeBetween {
  readonly s: number;
  readonly lowS: number;
  readonly highS: number;
  /** Both ends were marked by hand. */
  readonly byHand: boolean;
}

/**
 * The time from one mark to another on the same film: `s = to.atS - from.atS`. Each mark may be a frame early or late, so
 * the true time lies in `s ± (from.frameS + to.frameS)`: bounds and no interval of chance. Never below 0. `null` where the second does
 * not come after the first or in the same frame. Expects both marks to be of one film.
 */
export function timeBetween(from: FilmMark | undefined, to: FilmMark | undefined): TimeBetween | null {
  if (from === undefined || to === undefined || to.atS < from.atS) return null;
  const s = to.atS - from.atS;
  const slackS = from.frameS + to.frameS;
  return { s, lowS: Math.max(0, s - slackS), highS: s + slackS, byHand: !from.heard && !to.heard };
}

/** A speed over a distance that was asked, metres a second; the bounds are those of the time alone. */
export interface SpeedBetween {
  readonly mPerS: number;
  readonly lowMPerS: number;
  /** `null` where the time may be nought. */
  readonly highMPerS: number | null;
  /** The distance asked: nobody measured it. */
  readonly overM: number;
  readonly byHand: boolean;
}

/** `overM / s`, with the bounds of the time; `null` without a distance or with a time that is nought. */
export function speedBetween(time: TimeBetween | null, overM: number | undefined): SpeedBetween | null {
  if (time === null || time.s <= 0 || overM === undefined || overM <= 0) return null;
  return {
    mPerS: overM / time.s,
    lowMPerS: overM / time.highS,
    highMPerS: time.lowS > 0 ? overM / time.lowS : null,
    overM,
    byHand: time.byHand,
  };
}
