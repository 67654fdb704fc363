import type { Random } from '../../numeric/index.ts';
import type { CastSide } from '../order/index.ts';
import { cleanOrder, WAY_SPAN, waySpan } from './claims.ts';
import type { StatedRep } from './draft.ts';
import { medianS, type Pace, timedRep, wholeMinutes } from './duration.ts';
import { BREAK_MINUTES } from './duration-priors.ts';
import { filled, rightsLessLefts, type Stock } from './fill.ts';
import { isHoldingDay } from './holding-day.ts';
import { improved } from './improve.ts';
import { layAfter } from './laying.ts';
import { type Attempt, isRested, mendedSlots } from './mend.ts';
import { givesItselfAway } from './order-given-away.ts';
import { drawnSlots, type FixedRep } from './slots.ts';

export interface Bounds {
  readonly most: { readonly minutes: number; readonly reps: number };
  readonly pace: Pace;
  readonly cleanShare: number;
  readonly lateOrders: readonly (readonly boolean[])[];
  readonly lateSides: readonly (readonly CastSide[])[];
  readonly kept: readonly (FixedRep & { readonly n: number })[];
  /** Chance for the n-th draw of the plan. */
  readonly randomOf: (draw: number) => Random;
}

/** The session that was found, and whether some other was too long for the minutes. */
export interface Found extends Attempt {
  readonly isTooLong: boolean;
}

/** No session. */
export const NOTHING: Found = { reps: [], repMinutes: [], minutes: { p50: 0, p90: 0 }, isTooLong: false };
/** Sessions drawn until one fits its minutes and gives nothing away. */
const MOST_ATTEMPTS = 7;
/** However short the time, something known and a good finish are tried first. */
const FEWEST = 2;
/** Work without a break is planned a little short of the 12 reps and minutes it may be (our judgement, 2026). */
const STRETCH = { reps: 11, minutes: 11 } as const;

/** The longest session within the minutes: drawn, filled, measured, and drawn again shorter or longer; then improved. */
export function attempted(stock: Stock, bounds: Bounds): Found {
  const { most } = bounds;
  if (stock.lines.length === 0) return NOTHING;
  let typical = typicalMinutes(stock, bounds.pace);
  const fewest = Math.max(FEWEST, bounds.kept.length);
  let reps = Math.min(most.reps, Math.max(fewest, countIn(most.minutes, typical)));
  let best: Attempt = NOTHING;
  let isTooLong = false;
  /** So many did not fit. */
  let tooMany = Number.POSITIVE_INFINITY;
  for (let draw = 0; draw < MOST_ATTEMPTS && reps > best.reps.length; draw++) {
    if (reps < bounds.kept.length) break;
    const random = bounds.randomOf(draw);
    const attempt = attemptOf(stock, bounds, reps, typical, random);
    const count = attempt.reps.length;
    if (count === 0) break;
    const fits = attempt.minutes.p50 <= most.minutes;
    isTooLong ||= !fits;
    if (fits && isSound(attempt, bounds) && count > best.reps.length) best = attempt;
    const breaks = attempt.reps.filter(({ slot }) => slot.takesBreak).length;
    typical = (attempt.minutes.p50 - breaks * BREAK_MINUTES) / count;
    const room = countIn(most.minutes, typical);
    if (!fits) {
      tooMany = Math.min(tooMany, count);
      reps = Math.max(best.reps.length, Math.min(count - 1, room));
    } else if (count === reps) reps = Math.max(reps, Math.min(most.reps, reps + 2, room, tooMany - 1));
    if (fits && reps === count && isSound(attempt, bounds)) break;
  }
  return { ...bettered(stock, bounds, best, bounds.randomOf(MOST_ATTEMPTS)), isTooLong };
}

/** Breaks that so many minutes and reps of work call for. */
function breaksFor(minutes: number, reps: number): number {
  return Math.max(Math.ceil(minutes / STRETCH.minutes), Math.ceil(reps / STRETCH.reps)) - 1;
}

/** Reps of a typical length that go into the minutes, breaks taken off. */
function countIn(minutes: number, typical: number): number {
  const reps = Math.floor(minutes / typical);
  const breaks = breaksFor(reps * typical, reps);
  return Math.floor((minutes - breaks * BREAK_MINUTES) / typical);
}

function typicalMinutes({ lines }: Stock, pace: Pace): number {
  const minutes = lines.map(({ candidates, share }) => {
    const few = candidates.slice(0, 6);
    const each = few.map(({ legs }) => medianS(timedRep(legs, layAfter([], legs).laysS, pace), pace) / 60);
    return (share * each.reduce((so, one) => so + one, 0)) / Math.max(1, few.length);
  });
  return minutes.reduce((so, one) => so + one, 0) / lines.reduce((so, { share }) => so + share, 0);
}

/** Reps with the minutes that they take. */
export function measured(reps: readonly StatedRep[], pace: Pace): Attempt {
  const times = reps.map(({ legs, laid }) => timedRep(legs, laid.laysS, pace));
  const breaks = reps.filter(({ slot }) => slot.takesBreak).length;
  return {
    reps,
    repMinutes: times.map((time) => medianS(time, pace) / 60),
    minutes: wholeMinutes(times, pace, breaks * BREAK_MINUTES),
  };
}

/** One session of so many reps; with a break more, or a rep less, where the first way of it breaks a rule. */
function attemptOf(stock: Stock, bounds: Bounds, reps: number, typical: number, random: Random): Attempt {
  const { lines } = stock;
  const { cleanShare, lateOrders, lateSides, kept, pace } = bounds;
  const holds = isHoldingDay(stock.record.known);
  const breaks = breaksFor(reps * typical, reps);
  let slots = drawnSlots({
    reps,
    breaks,
    lines,
    cleanShare,
    lateOrders,
    lateSides,
    kept,
    holds,
    random,
  });
  let attempt = measured(filled(stock, slots), pace);
  for (let n = 0; n < reps; n++) {
    const mended = mendedSlots(stock, attempt);
    if (mended === null) break;
    slots = mended;
    attempt = measured(filled(stock, slots, attempt.reps), pace);
  }
  return attempt;
}

/** What an attempt must be beside short enough: rested, and an order that is not to be read. */
function isSound(attempt: Attempt, { cleanShare, lateOrders }: Bounds): boolean {
  const order = cleanOrder(attempt.reps);
  const isRead = !order.every(Boolean) && givesItselfAway(order, cleanShare, lateOrders);
  return !isRead && isRested(attempt);
}

/** The attempt improved, where that costs it neither its time, its soundness nor its sides. */
function bettered(stock: Stock, bounds: Bounds, attempt: Attempt, random: Random): Attempt {
  const better = measured(improved(stock, attempt.reps, random), bounds.pace);
  const span = waySpan(better.reps);
  const isVaried = span === null || span >= WAY_SPAN;
  const isEven = Math.abs(rightsLessLefts(better.reps)) <= 1;
  const fits = better.minutes.p50 <= bounds.most.minutes;
  return fits && isVaried && isEven && isSound(better, bounds) ? better : attempt;
}
