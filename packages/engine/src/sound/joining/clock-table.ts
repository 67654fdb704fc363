import type { OwnWhistle } from '../own-whistle.ts';
import { createAlignment } from './align-in-order.ts';
import { createLateness, createTapsOverlap } from './lateness.ts';
import { pitchesToTry, pitchWeight } from './own-pitch.ts';
import type { CallKind, SoundCall } from './sound-calls.ts';
import { cueSpreadOf, heardAs, missOf, spreadOf, type WantedCall } from './wanted-call.ts';

/** A call farther than this from where it is expected is not looked at: even a late thumb's law gives it next to nothing. */
const WINDOW_S = 180;

/** In this share of the reps with two taps both were made afterwards, and the first tells nothing of its own (our judgement, 2026). */
const ONE_TAP_ONLY = 0.2;

interface ToPair {
  readonly wants: readonly WantedCall[];
  readonly calls: readonly SoundCall[];
  readonly lengthS: number;
  readonly own: OwnWhistle | null;
}

/**
 * The pairings of wants with calls at one clock, one thumb and one pitch, weighed against calls that come from nowhere, `perS` of each kind a
 * second. Made once for many clocks; what the last `logSum` was of is what `addShares` adds.
 */
export function createClockTable({ wants, calls, lengthS, own }: ToPair, perS: Record<CallKind, number>) {
  const pitches = pitchesToTry(calls, own);
  const weights = pitches.map((pitch) => calls.map((call) => pitchWeight(pitch, call)));
  const logOthers = weights.map((all) => all.reduce((log, { other }) => log + Math.log(other), 0));
  const ratios = weights.map((all) =>
    Float64Array.from(all, ({ wanted, other }, j) => wanted / (other * perS[calls[j]!.kind])),
  );
  const columns = calls.length;
  const startsS = Float64Array.from(calls, ({ startS }) => startS);
  const latenessAlong = createLateness(startsS);
  const taken = {
    long: Float64Array.from(calls, ({ kind }) => heardAs('long', kind)),
    pips: Float64Array.from(calls, ({ kind }) => heardAs('pips', kind)),
    click: Float64Array.from(calls, ({ kind }) => heardAs('click', kind)),
  };
  const fits = new Float64Array(wants.length * columns);
  const byCue = new Float64Array(columns);
  const overlapOf = overlapsOf(wants);
  const table = {
    columns,
    misses: new Float64Array(wants.length),
    from: new Int32Array(wants.length),
    to: new Int32Array(wants.length),
    gains: new Float64Array(wants.length * columns),
  };
  const { misses, from, to, gains } = table;
  const alignment = createAlignment(table);
  let fitted = { shiftS: Number.NaN, thumbS: Number.NaN };

  /** The pitch is tried innermost: what does not hang on it is worked out once. */
  function fit(shiftS: number, thumbS: number): void {
    if (fitted.shiftS === shiftS && fitted.thumbS === thumbS) return;
    fitted = { shiftS, thumbS };
    for (const [i, want] of wants.entries()) {
      misses[i] = missOf(want, lengthS, shiftS, thumbS);
      const expectedS = want.tappedAtS - want.lagS - shiftS;
      const first = firstFrom(startsS, expectedS - WINDOW_S);
      const last = firstFrom(startsS, expectedS + WINDOW_S);
      from[i] = first;
      to[i] = last;
      const row = i * columns;
      latenessAlong(fits, row + first, first, last, expectedS, spreadOf(want, thumbS));
      if (want.cueTappedAtS !== null) {
        latenessAlong(byCue, first, first, last, want.cueTappedAtS - shiftS, cueSpreadOf(thumbS));
        const overlap = overlapOf(i, thumbS);
        for (let j = first; j < last; j++)
          fits[row + j] = fits[row + j]! * (ONE_TAP_ONLY + ((1 - ONE_TAP_ONLY) * byCue[j]!) / overlap);
      }
      const as = taken[want.kind];
      for (let j = first; j < last; j++) fits[row + j] = fits[row + j]! * as[j]!;
    }
  }

  return {
    pitches,
    /** Logarithm of the weight of all pairings. */
    logSum(shiftS: number, thumbS: number, pitch: number): number {
      fit(shiftS, thumbS);
      const ratio = ratios[pitch]!;
      for (let i = 0; i < wants.length; i++) {
        const row = i * columns;
        for (let j = from[i]!; j < to[i]!; j++) gains[row + j] = fits[row + j]! * ratio[j]!;
      }
      return alignment.sum() + logOthers[pitch]!;
    },
    addShares: alignment.addShares,
  };
}

/** For a want with two taps how likely they are to lie as they do, whatever the clock: worked out once for each thumb. */
function overlapsOf(wants: readonly WantedCall[]): (want: number, thumbS: number) => number {
  const overlap = createTapsOverlap();
  const byThumb = new Map<number, Float64Array>();
  return (want, thumbS) => {
    let all = byThumb.get(thumbS);
    if (all === undefined) {
      all = Float64Array.from(wants, (one) =>
        one.cueTappedAtS === null
          ? 1
          : overlap(one.tappedAtS - one.lagS - one.cueTappedAtS, cueSpreadOf(thumbS), spreadOf(one, thumbS)),
      );
      byThumb.set(thumbS, all);
    }
    return all[want]!;
  };
}

/** Place of the first start at a time or later. */
function firstFrom(startsS: Float64Array, atS: number): number {
  let [low, high] = [0, startsS.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (startsS[middle]! < atS) low = middle + 1;
    else high = middle;
  }
  return low;
}
