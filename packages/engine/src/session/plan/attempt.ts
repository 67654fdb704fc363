import type { Random } from '../../numeric/index.ts';
import { stopWay } from './candidates.ts';
import { cleanOrder, longestStretch, waySpan } from './claims.ts';
import type { StatedRep } from './draft.ts';
import { medianS, type Pace, repKind, type TimedRep, usualS, wholeMinutes } from './duration.ts';
import { BREAK_MINUTES } from './duration-priors.ts';
import { filled, rightsLessLefts, type Stock } from './fill.ts';
import { improved } from './improve.ts';
import { layAfter } from './laying.ts';
import { givesItselfAway } from './order-given-away.ts';
import { drawnSlots, type Slot } from './slots.ts';

export interface Bounds {
  readonly most: { readonly minutes: number; readonly reps: number };
  readonly pace: Pace;
  readonly cleanShare: number;
  readonly lateOrders: readonly (readonly boolean[])[];
  /** Chance for the n-th draw of the plan. */
  readonly randomOf: (draw: number) => Random;
}

/** A session that was filled, with its minutes. */
export interface Attempt {
  readonly reps: readonly StatedRep[];
  readonly repMinutes: readonly number[];
  readonly minutes: { readonly p50: number; readonly p90: number };
}

const NOTHING: Attempt = { reps: [], repMinutes: [], minutes: { p50: 0, p90: 0 } };
/** Sessions drawn until one fits its minutes and gives nothing away. */
const MOST_ATTEMPTS = 7;
/** However short the time, something known and a good finish are tried first. */
const FEWEST = 2;
/** Work without a break is planned a little short of the 12 reps and minutes it may be (our judgement, 2026). */
const STRETCH = { reps: 11, minutes: 11 } as const;
/** What it may be at most (contract). */
const STRETCH_MOST = { reps: 12, minutes: 12 } as const;
const WAY_SPAN = 0.25;

/** The longest session within the minutes: drawn, filled, measured, and drawn again shorter or longer; then improved. */
export function attempted(stock: Stock, bounds: Bounds): Attempt {
  const { most } = bounds;
  if (stock.lines.length === 0) return NOTHING;
  let typical = typicalMinutes(stock, bounds.pace);
  let reps = Math.min(most.reps, Math.max(FEWEST, countIn(most.minutes, typical)));
  let best = NOTHING;
  for (let draw = 0; draw < MOST_ATTEMPTS && reps > best.reps.length; draw++) {
    const random = bounds.randomOf(draw);
    const attempt = attemptOf(stock, bounds, reps, typical, random);
    const count = attempt.reps.length;
    if (count === 0) break;
    const fits = attempt.minutes.p50 <= most.minutes;
    if (fits && isSound(attempt, bounds) && count > best.reps.length)
      best = bettered(stock, bounds, attempt, random);
    typical = attempt.repMinutes.reduce((so, minutes) => so + minutes, 0) / count;
    if (!fits) reps = Math.max(best.reps.length, Math.min(count - 1, countIn(most.minutes, typical)));
    else if (count < reps) break;
    else reps = Math.min(most.reps, Math.max(reps, Math.min(reps + 2, countIn(most.minutes, typical))));
    if (fits && reps === count && isSound(attempt, bounds)) break;
  }
  return best;
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
    const each = few.map(({ legs }) => medianS(timed(legs, layAfter([], legs).laysS), pace) / 60);
    return (share * each.reduce((so, one) => so + one, 0)) / Math.max(1, few.length);
  });
  return minutes.reduce((so, one) => so + one, 0) / lines.reduce((so, { share }) => so + share, 0);
}

const timed = (legs: StatedRep['legs'], laysS: number): TimedRep => ({
  kind: repKind(legs),
  usualS: usualS(legs, laysS),
});

function measured(reps: readonly StatedRep[], pace: Pace): Attempt {
  const times = reps.map(({ legs, laid }) => timed(legs, laid.laysS));
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
  const { cleanShare, lateOrders, pace } = bounds;
  const breaks = breaksFor(reps * typical, reps);
  let slots = drawnSlots({ reps, breaks, lines, cleanShare, lateOrders, random });
  let attempt = measured(filled(stock, slots), pace);
  for (let n = 0; n < reps; n++) {
    const mended = mendedSlots(attempt);
    if (mended === null) break;
    slots = mended;
    attempt = measured(filled(stock, slots), pace);
  }
  return attempt;
}

/** Slots that mend what a filling broke: too long without a break, sides that came out uneven, stops too near each other. */
function mendedSlots({ reps, repMinutes }: Attempt): Slot[] | null {
  if (!isRested(reps, repMinutes)) return restedSlots(reps, repMinutes);
  const works = reps.filter(({ slot }) => slot.role === 'work');
  const apart = rightsLessLefts(reps);
  if (Math.abs(apart) > 1) {
    const surplus = works.findLast(({ slot }) => slot.side === (apart > 0 ? 'right' : 'left'));
    return surplus === undefined ? null : without(reps, surplus);
  }
  const span = waySpan(reps);
  if (span === null || span >= WAY_SPAN) return null;
  const surplus = works.findLast(({ legs }) => stopWay(legs) !== null);
  return surplus === undefined ? null : without(reps, surplus);
}

function isRested(reps: readonly StatedRep[], repMinutes: readonly number[]): boolean {
  const stretch = longestStretch(reps, repMinutes);
  return stretch.reps <= STRETCH_MOST.reps && stretch.minutes <= STRETCH_MOST.minutes;
}

/** The same slots with their breaks where they part the minutes evenly; one break more where they did so already. */
function restedSlots(reps: readonly StatedRep[], repMinutes: readonly number[]): Slot[] | null {
  const now = reps.filter(({ slot }) => slot.takesBreak).length;
  for (const breaks of [now, now + 1]) {
    const after = evenBreaks(repMinutes, breaks);
    const slots = reps.map(({ slot }, n) => ({ ...slot, takesBreak: after.has(n) }));
    if (slots.some(({ takesBreak }, n) => takesBreak !== reps[n]?.slot.takesBreak)) return slots;
  }
  return null;
}

/** Places (from 0) of the reps that a break follows, so that the stretches between are as even in minutes as they can be. */
function evenBreaks(repMinutes: readonly number[], breaks: number): Set<number> {
  const total = repMinutes.reduce((so, minutes) => so + minutes, 0);
  const after = new Set<number>();
  let sum = 0;
  for (const [n, minutes] of repMinutes.slice(0, -1).entries()) {
    sum += minutes;
    const next = repMinutes[n + 1] ?? 0;
    const wanted = (total * (after.size + 1)) / (breaks + 1);
    if (after.size < breaks && sum + next / 2 >= wanted) after.add(n);
  }
  return after;
}

/** The slots that were filled, but for one; a break that followed it goes to the rep before. */
function without(reps: readonly StatedRep[], gone: StatedRep): Slot[] {
  const left = reps.filter((rep) => rep !== gone);
  const before = reps[reps.indexOf(gone) - 1];
  return left.map((rep) =>
    rep === before && gone.slot.takesBreak ? { ...rep.slot, takesBreak: true } : rep.slot,
  );
}

/** What an attempt must be beside short enough: rested, and an order that is not to be read. */
function isSound({ reps, repMinutes }: Attempt, { cleanShare, lateOrders }: Bounds): boolean {
  const order = cleanOrder(reps);
  const isRead = !order.every(Boolean) && givesItselfAway(order, cleanShare, lateOrders);
  return !isRead && isRested(reps, repMinutes);
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
