import type { Dialect } from './dialect.ts';

/**
 * Figures as English writes them. By hand and not by `Intl`: a page's first `Intl.NumberFormat` loads the language's tables, 40 to
 * 130 ms of the screens' thread at the moment when the first screen is drawn (measured, 2026). `figures.test.ts` compares
 * every form with `Intl`.
 */

/** A number rounded to so many decimals at most, thousands parted by commas; never "-0". */
export function figure(value: number, decimals: number): string {
  const [whole = '', part] = tidy(value, decimals).toFixed(decimals).split('.');
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const rest = part?.replace(/0+$/, '') ?? '';
  return rest === '' ? parted : `${parted}.${rest}`;
}

/** Rounds first, so that -0.2 never prints as "-0". */
function tidy(value: number, decimals: number): number {
  const ten = 10 ** decimals;
  return Math.round(value * ten) / ten + 0;
}

/** "a", "a and b", "a, b and c"; American English has the comma before "and". */
export function listed(items: readonly string[], dialect: Dialect): string {
  const last = items.at(-1) ?? '';
  if (items.length < 3) return items.join(' and ');
  return `${items.slice(0, -1).join(', ')}${dialect === 'en-US' ? ',' : ''} and ${last}`;
}

/** "today", "yesterday", "6 days ago", "in 3 weeks": `n` units from now, the past below 0. */
export function fromNow(n: number, unit: 'day' | 'week' | 'month'): string {
  if (n === 0) return unit === 'day' ? 'today' : `this ${unit}`;
  if (unit === 'day' && n === -1) return 'yesterday';
  if (unit === 'day' && n === 1) return 'tomorrow';
  if (n === -1) return `last ${unit}`;
  if (n === 1) return `next ${unit}`;
  const many = `${figure(Math.abs(n), 0)} ${unit}s`;
  return n < 0 ? `${many} ago` : `in ${many}`;
}

const S_IN_MINUTE = 60;
const S_IN_HOUR = 3600;

/**
 * A stretch of time, or a moment of a sound or a film, seconds: "40 s", "2 min 40 s", "1 h 3 min". With its units, so that nobody
 * reads it as a time of day. Whole minutes have no seconds unless parts of one are told. Rounded to so many decimals of a second; below 0 counts as 0.
 */
export function spanOfTime(s: number, decimals = 0): string {
  const ten = 10 ** decimals;
  const ticks = Math.round(Math.max(0, s) * ten);
  const whole = Math.floor(ticks / ten);
  const hours = Math.floor(whole / S_IN_HOUR);
  const minutes = Math.floor((whole % S_IN_HOUR) / S_IN_MINUTE);
  const restS = (ticks - (hours * S_IN_HOUR + minutes * S_IN_MINUTE) * ten) / ten;
  const parts = [hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : ''].filter(
    (part) => part !== '',
  );
  if (restS > 0 || decimals > 0 || parts.length === 0) parts.push(`${restS.toFixed(decimals)} s`);
  return parts.join(' ');
}
