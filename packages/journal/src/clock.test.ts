import { describe, expect, it } from 'vitest';
import {
  CLOCK_AHEAD_MAX_MS,
  type Clock,
  clockText,
  newClock,
  readClock,
  receiveClock,
  tickClock,
} from './clock.ts';

const NOW_MS = 1772355600000;
const at = (ms: number, counter: number, device = 'phone'): Clock => ({ ms, counter, device });

describe('clock text', () => {
  it('has 13 digits, 4 hex digits and the device', () => {
    expect(clockText(at(NOW_MS, 175, 'field-phone'))).toBe('1772355600000-00af-field-phone');
    expect(clockText(at(315532800000, 0))).toBe('0315532800000-0000-phone');
  });

  it('reads either case of hex and everything after the second hyphen', () => {
    expect(readClock('1772355600000-00AF-field-phone')).toEqual({
      ok: true,
      clock: at(NOW_MS, 175, 'field-phone'),
    });
  });

  it.each([
    '',
    'garbage',
    '1772355600000',
    '1772355600000-0000-',
    '177235560000-0000-a',
    '1772355600000-000-a',
    '1772355600000-00g0-a',
  ])('refuses the form of %j', (text) => {
    expect(readClock(text)).toEqual({ ok: false, code: 'CLOCK_FORMAT' });
  });

  it.each(['0000000000000-0000-a', '0315532799999-0000-a', '7289654400000-0000-a', '9999999999999-0000-a'])(
    'refuses %s, outside the years',
    (text) => {
      expect(readClock(text)).toEqual({ ok: false, code: 'CLOCK_RANGE' });
    },
  );

  it('never writes what it would not read', () => {
    expect(() => clockText(at(Number.NaN, 0))).toThrow(RangeError);
    expect(() => clockText(at(NOW_MS + 0.5, 0))).toThrow(RangeError);
    expect(() => clockText(at(NOW_MS, 65536))).toThrow(RangeError);
    expect(() => clockText(at(NOW_MS, 0, ''))).toThrow(RangeError);
  });
});

describe('tickClock', () => {
  it('follows the wall clock', () => {
    expect(tickClock(at(NOW_MS, 7), NOW_MS + 1)).toEqual(at(NOW_MS + 1, 0));
  });

  it('counts within one millisecond', () => {
    expect(tickClock(at(NOW_MS, 7), NOW_MS)).toEqual(at(NOW_MS, 8));
  });

  it('goes on counting when the wall clock is set back', () => {
    expect(tickClock(at(NOW_MS, 7), NOW_MS - 3_600_000)).toEqual(at(NOW_MS, 8));
  });

  it('moves on by a millisecond when the counter is full', () => {
    expect(tickClock(at(NOW_MS, 0xffff), NOW_MS)).toEqual(at(NOW_MS + 1, 0));
  });

  it('takes a wall clock outside the years as the nearer end', () => {
    expect(tickClock(newClock('phone'), 0)).toEqual(at(315532800000, 1));
    expect(tickClock(newClock('phone'), 1e15).ms).toBe(7289654399999);
    expect(() => tickClock(newClock('phone'), Number.NaN)).toThrow(RangeError);
  });
});

describe('receiveClock', () => {
  it('follows a later clock and keeps its own device', () => {
    expect(receiveClock(at(NOW_MS, 1), at(NOW_MS, 9, 'tablet'), NOW_MS)).toEqual(at(NOW_MS, 9));
    expect(receiveClock(at(NOW_MS, 1), at(NOW_MS + 5000, 0, 'tablet'), NOW_MS)).toEqual(at(NOW_MS + 5000, 0));
  });

  it('is not moved by an earlier clock', () => {
    expect(receiveClock(at(NOW_MS, 1), at(NOW_MS - 1, 9), NOW_MS)).toEqual(at(NOW_MS, 1));
  });

  it('follows up to a day ahead of the wall clock, no further', () => {
    const edge = at(NOW_MS + CLOCK_AHEAD_MAX_MS, 0);
    expect(receiveClock(at(NOW_MS, 1), edge, NOW_MS)).toEqual(edge);
    expect(receiveClock(at(NOW_MS, 1), at(edge.ms + 1, 0), NOW_MS)).toEqual(at(NOW_MS, 1));
  });
});
