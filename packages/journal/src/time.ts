/** First millisecond of 1980 and last of 2200, UTC: the years a journal may speak of. */
export const FIRST_MS = Date.UTC(1980, 0, 1);
export const LAST_MS = Date.UTC(2201, 0, 1) - 1;

/** What came of reading a time: milliseconds since 1970 UTC, or why not. */
export type TimeReading =
  | { readonly ok: true; readonly ms: number }
  | { readonly ok: false; readonly code: 'TIME_FORMAT' | 'TIME_RANGE' };

const DATE = /^(\d{4})-(\d\d)-(\d\d)$/;
const TIME = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:[.,](\d+))?)?(?:Z|([+-])(\d\d)(?::?(\d\d))?)$/;
const WRONG_FORM: TimeReading = { ok: false, code: 'TIME_FORMAT' };
const OUT_OF_RANGE: TimeReading = { ok: false, code: 'TIME_RANGE' };

/**
 * Reads an ISO 8601 date and time in the extended form, with `Z` or an offset (`+01:00`, `+0100`, `+01`); seconds and
 * their fraction may be left out, digits beyond the millisecond are cut off. The written year must lie in 1980..2200
 * and the day in the calendar; a 60th second or a 24th hour is out of range.
 */
export function readTime(text: string): TimeReading {
  const found = TIME.exec(text);
  if (found === null) return WRONG_FORM;
  const day = readDay(found[1]!, found[2]!, found[3]!);
  if (!day.ok) return day;
  const hour = Number(found[4]);
  const minute = Number(found[5]);
  const second = Number(found[6] ?? 0);
  const offsetHour = Number(found[9] ?? 0);
  const offsetMinute = Number(found[10] ?? 0);
  if (hour > 23 || minute > 59 || second > 59 || offsetHour > 23 || offsetMinute > 59) return OUT_OF_RANGE;
  const millisecond = Number((found[7] ?? '').slice(0, 3).padEnd(3, '0'));
  const offsetMin = (found[8] === '-' ? -1 : 1) * (offsetHour * 60 + offsetMinute);
  const ms = day.ms + ((hour * 60 + minute - offsetMin) * 60 + second) * 1000 + millisecond;
  return { ok: true, ms };
}

/** Reads a calendar date `YYYY-MM-DD`, 1980 to 2200, as the milliseconds of its midnight UTC. */
export function readDate(text: string): TimeReading {
  const found = DATE.exec(text);
  return found === null ? WRONG_FORM : readDay(found[1]!, found[2]!, found[3]!);
}

/** Milliseconds of a fact's `at`. Throws RangeError where `at` cannot be read: facts are validated on the way in. */
export function atMsOf(fact: { readonly at: string }): number {
  const reading = readTime(fact.at);
  if (!reading.ok) throw new RangeError(`at: expected an ISO 8601 time, got ${JSON.stringify(fact.at)}`);
  return reading.ms;
}

/** The ISO 8601 text of a moment, in UTC with milliseconds. Throws RangeError outside 1980..2200. */
export function timeText(ms: number): string {
  if (!(ms >= FIRST_MS && ms <= LAST_MS)) throw new RangeError(`ms: expected years 1980 to 2200, got ${ms}`);
  return new Date(ms).toISOString();
}

function readDay(yearText: string, monthText: string, dayText: string): TimeReading {
  const year = Number(yearText);
  const month = Number(monthText);
  const day = Number(dayText);
  if (year < 1980 || year > 2200 || month < 1 || month > 12 || day < 1) return OUT_OF_RANGE;
  if (day > daysInMonth(year, month)) return OUT_OF_RANGE;
  return { ok: true, ms: Date.UTC(year, month - 1, day) };
}

function daysInMonth(year: number, month: number): number {
  if (month !== 2) return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
}
