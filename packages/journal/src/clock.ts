import { FIRST_MS, LAST_MS } from './time.ts';

/**
 * Hybrid logical clock [kulkarni2014]: the wall clock's milliseconds, a counter for what falls into one millisecond,
 * and the device.
 *
 * Why this clock. Phones lie about the time: set by hand, set back by the network, hours wrong after a flat battery. The
 * wall clock alone would put a correction before the thing it corrects. A plain counter (Lamport) never does that, but
 * says nothing about time, and two devices out of contact for a week would be ordered by how busy each was. Version
 * vectors would tell which facts could not have known of each other, but grow with the devices, and nobody would act on
 * the answer: every pair of facts needs one order on every device in the end. This one never runs backwards on a device,
 * is always later than every clock that device has seen, stays near the wall clock, and orders as text.
 *
 * What goes wrong. Two devices with the same id can give the same clock: the fact's id then decides, alike everywhere. A
 * device whose wall clock is ahead by up to a day drags the others ahead, harmlessly; one further ahead is not followed
 * (`receiveClock`), and its facts stand after those of the others until their clocks get there. A wall clock set back
 * leaves the milliseconds standing and counts up; 65,536 facts in one millisecond move it on by one. Order between
 * devices that had no contact is that of their wall clocks, as right or as wrong as those.
 */
export interface Clock {
  readonly ms: number;
  /** 0 to 0xffff. */
  readonly counter: number;
  /** Device id: text that is not empty. */
  readonly device: string;
}

/** What came of reading a clock. */
export type ClockReading =
  | { readonly ok: true; readonly clock: Clock }
  | { readonly ok: false; readonly code: 'CLOCK_FORMAT' | 'CLOCK_RANGE' };

const COUNTER_MAX = 0xffff;
const CLOCK = /^(\d{13})-([0-9a-fA-F]{4})-(.+)$/s;

/** How far ahead of the wall clock another device's clock is still followed, in milliseconds: a day (our judgement). */
export const CLOCK_AHEAD_MAX_MS = 24 * 3_600_000;

/** Reads `MS-CCCC-DEVICE`; the device is everything after the second hyphen. */
export function readClock(text: string): ClockReading {
  const found = CLOCK.exec(text);
  if (found === null) return { ok: false, code: 'CLOCK_FORMAT' };
  const ms = Number(found[1]);
  if (ms < FIRST_MS || ms > LAST_MS) return { ok: false, code: 'CLOCK_RANGE' };
  return { ok: true, clock: { ms, counter: Number.parseInt(found[2]!, 16), device: found[3]! } };
}

/** Writes a clock as `MS-CCCC-DEVICE`. Throws RangeError on what could not be read back. */
export function clockText({ ms, counter, device }: Clock): string {
  if (!Number.isInteger(ms) || ms < FIRST_MS || ms > LAST_MS) {
    throw new RangeError(`ms: expected whole milliseconds in 1980 to 2200, got ${ms}`);
  }
  if (!Number.isInteger(counter) || counter < 0 || counter > COUNTER_MAX) {
    throw new RangeError(`counter: expected a whole number from 0 to ${COUNTER_MAX}, got ${counter}`);
  }
  if (device === '') throw new RangeError('device: expected an id that is not empty');
  return `${String(ms).padStart(13, '0')}-${counter.toString(16).padStart(4, '0')}-${device}`;
}

/** A device's clock before its first fact. */
export function newClock(device: string): Clock {
  return { ms: FIRST_MS, counter: 0, device };
}

/**
 * The clock of this device's next fact: later than `clock`, and at `nowMs` (the wall clock) unless that would be
 * earlier. A wall clock outside 1980 to 2200 counts as the nearer end.
 */
export function tickClock(clock: Clock, nowMs: number): Clock {
  const wallMs = withinYears(nowMs);
  return wallMs > clock.ms ? { ...clock, ms: wallMs, counter: 0 } : oneLater(clock);
}

/**
 * This device's clock after seeing another's: its next tick will be later than both. A clock more than
 * `CLOCK_AHEAD_MAX_MS` ahead of the wall clock is not followed, so that one broken phone cannot push every other to the
 * end of the calendar.
 */
export function receiveClock(clock: Clock, seen: Pick<Clock, 'ms' | 'counter'>, nowMs: number): Clock {
  if (seen.ms > withinYears(nowMs) + CLOCK_AHEAD_MAX_MS) return clock;
  const isLater = seen.ms > clock.ms || (seen.ms === clock.ms && seen.counter > clock.counter);
  return isLater ? { ...clock, ms: seen.ms, counter: seen.counter } : clock;
}

function oneLater(clock: Clock): Clock {
  if (clock.counter < COUNTER_MAX) return { ...clock, counter: clock.counter + 1 };
  return { ...clock, ms: clock.ms + 1, counter: 0 };
}

function withinYears(ms: number): number {
  if (Number.isNaN(ms)) throw new RangeError('nowMs: expected milliseconds, got NaN');
  return Math.min(Math.max(Math.floor(ms), FIRST_MS), LAST_MS);
}
