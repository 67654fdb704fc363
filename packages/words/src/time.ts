import { fromNow } from './figures.ts';
import type { Tongue } from './tongue.ts';

const DAY_MS = 86_400_000;
const MONTHS_IN_YEAR = 12;

/** Times and ages in words. Moments are epoch milliseconds; `now` is always handed in. */
export function timeWords(t: Tongue) {
  return {
    /** "today", "yesterday", "6 days ago", "3 weeks ago", by calendar day in the zone given (the device's when left out). */
    ago: (atMs: number, nowMs: number, timeZone?: string): string => {
      const days = dayNumber(nowMs, timeZone) - dayNumber(atMs, timeZone);
      if (days < 14) return fromNow(-days, 'day');
      return days < 70 ? fromNow(-Math.round(days / 7), 'week') : fromNow(-Math.round(days / 30.44), 'month');
    },
    /** "8 months", "2 years", "1 year 4 months". */
    age: (months: number): string => {
      const whole = Math.max(0, Math.floor(months));
      const years = Math.floor(whole / MONTHS_IN_YEAR);
      const rest = whole % MONTHS_IN_YEAR;
      const yearPart = t.count(years, 'year', 'years');
      if (years === 0) return t.count(whole, 'month', 'months');
      return rest === 0 || years >= 3 ? yearPart : `${yearPart} ${t.count(rest, 'month', 'months')}`;
    },
    minutes: (n: number): string => t.count(Math.round(n), 'minute', 'minutes'),
    date: (atMs: number, timeZone?: string): string =>
      new Intl.DateTimeFormat(t.dialect, { dateStyle: 'medium', ...(timeZone ? { timeZone } : {}) }).format(
        atMs,
      ),
  };
}

/** Number of the calendar day a moment falls on, in a time zone; the device's own when none is given. */
function dayNumber(atMs: number, timeZone: string | undefined): number {
  if (timeZone === undefined) {
    const here = new Date(atMs);
    return Date.UTC(here.getFullYear(), here.getMonth(), here.getDate()) / DAY_MS;
  }
  const format = new Intl.DateTimeFormat('en-GB', {
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    timeZone,
  });
  const parts = format.formatToParts(atMs);
  const part = (type: 'year' | 'month' | 'day'): number => Number(parts.find((p) => p.type === type)?.value);
  return Date.UTC(part('year'), part('month') - 1, part('day')) / DAY_MS;
}

export type TimeWords = ReturnType<typeof timeWords>;
