import { describe, expect, it } from 'vitest';
import { readDate, readTime, timeText } from './time.ts';

// Seconds since 1970 from GNU coreutils 9.1, `date -u -d TEXT +%s`.
const SECONDS: readonly (readonly [string, number])[] = [
  ['2026-03-01T09:00:00Z', 1772355600],
  ['2096-02-29T23:59:59Z', 3981398399],
  ['1980-01-01T00:00:00Z', 315532800],
  ['2200-12-31T23:59:59Z', 7289654399],
];

describe('readTime', () => {
  it.each(SECONDS)('reads %s', (text, seconds) => {
    expect(readTime(text)).toEqual({ ok: true, ms: seconds * 1000 });
  });

  // One moment in the forms that ISO 8601 allows for it.
  it.each([
    '2026-03-01T09:00Z',
    '2026-03-01T09:00:00.000Z',
    '2026-03-01T09:00:00,0Z',
    '2026-03-01T10:00:00+01:00',
    '2026-03-01T10:00:00+01',
    '2026-03-01T04:30:00-0430',
    '2026-03-02T00:00:00+15:00',
    '2026-03-01T09:00:00.0009Z',
  ])('reads %s as the same moment', (text) => {
    expect(readTime(text)).toEqual({ ok: true, ms: 1772355600000 });
  });

  it('keeps milliseconds and cuts off what is finer', () => {
    expect(readTime('2026-03-01T09:00:00.12Z')).toEqual({ ok: true, ms: 1772355600120 });
    expect(readTime('2026-03-01T09:00:00.123999Z')).toEqual({ ok: true, ms: 1772355600123 });
  });

  it.each([
    '',
    'yesterday',
    '2026-03-01',
    '2026-03-01T09:00:00',
    '2026-03-01 09:00:00Z',
    '2026-3-1T09:00:00Z',
    '20260301T090000Z',
    '1772355600000',
    '2026-03-01T09:00:00Z\n',
    '+002026-03-01T09:00:00Z',
  ])('refuses the form of %j', (text) => {
    expect(readTime(text)).toEqual({ ok: false, code: 'TIME_FORMAT' });
  });

  it.each([
    ['1979-12-31T23:59:59Z', 'before 1980'],
    ['2201-01-01T00:00:00Z', 'after 2200'],
    ['2026-02-29T09:00:00Z', 'not a leap year'],
    ['2100-02-29T09:00:00Z', 'a century that is not a leap year'],
    ['2026-04-31T09:00:00Z', 'April has 30 days'],
    ['2026-13-01T09:00:00Z', 'no 13th month'],
    ['2026-00-01T09:00:00Z', 'no month 0'],
    ['2026-01-00T09:00:00Z', 'no day 0'],
    ['2016-12-31T23:59:60Z', 'a leap second that really was'],
    ['2026-03-01T24:00:00Z', 'no 24th hour'],
    ['2026-03-01T09:60:00Z', 'no 60th minute'],
    ['2026-03-01T09:00:00+24:00', 'no such offset'],
  ])('refuses %s: %s', (text) => {
    expect(readTime(text)).toEqual({ ok: false, code: 'TIME_RANGE' });
  });

  it('knows that 2000 was a leap year and 2200 is not', () => {
    expect(readTime('2000-02-29T00:00:00Z').ok).toBe(true);
    expect(readTime('2200-02-29T00:00:00Z').ok).toBe(false);
  });
});

describe('readDate and timeText', () => {
  it('reads a date as midnight UTC', () => {
    expect(readDate('2026-03-01')).toEqual({ ok: true, ms: 1772323200000 });
    expect(readDate('2026-03-01T00:00:00Z')).toEqual({ ok: false, code: 'TIME_FORMAT' });
    expect(readDate('2026-02-30')).toEqual({ ok: false, code: 'TIME_RANGE' });
  });

  it('writes what it reads', () => {
    expect(timeText(1772355600000)).toBe('2026-03-01T09:00:00.000Z');
    expect(() => timeText(0)).toThrow(RangeError);
    expect(() => timeText(Number.NaN)).toThrow(RangeError);
  });
});
