import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dialect } from './dialect.ts';
import { figure, fromNow, listed, spanOfTime } from './figures.ts';
import { timeWords } from './time.ts';
import { tongue } from './tongue.ts';

/** What the platform's language tables (Unicode CLDR, through Intl) say is what we say. */
describe('figures against the platform', () => {
  const dialects: readonly Dialect[] = ['en-GB', 'en-US'];
  // Halves are left out: Intl rounds the binary number, we round as Math.round does; both are right.
  const value = fc.double({ min: -99_999, max: 99_999, noNaN: true }).filter((v) => {
    const at = Math.abs(v * 1000) % 1;
    return Math.abs(at - 0.5) > 0.01 && Math.abs((Math.abs(v * 10) % 1) - 0.5) > 0.01 && Math.abs(at) > 0;
  });

  it('writes numbers', () => {
    fc.assert(
      fc.property(value, fc.constantFrom(...dialects), (v, dialect) => {
        const intl = new Intl.NumberFormat(dialect, { maximumFractionDigits: 1 }).format(v);
        expect(figure(v, 1)).toBe(intl === '-0' ? '0' : intl);
      }),
    );
    for (const dialect of dialects) {
      for (const n of [0, 1, 7, 999, 1000, 12_345, 1_234_567, -4321]) {
        expect(figure(n, 0)).toBe(new Intl.NumberFormat(dialect).format(n));
      }
    }
  });

  it('writes lengths and winds', () => {
    for (const dialect of dialects) {
      const metres = tongue(dialect, 'metres');
      const yards = tongue(dialect, 'yards');
      for (const n of [0, 1, 5, 18, 400, 1500]) {
        const intl = (unit: string, unitDisplay: 'short' | 'long') =>
          new Intl.NumberFormat(dialect, { style: 'unit', unit, unitDisplay }).format(n);
        expect(metres.length(n)).toBe(intl('meter', 'short'));
        expect(metres.lengthInWords(n)).toBe(intl('meter', 'long'));
        expect(yards.length(n * 0.9144)).toBe(intl('yard', 'short'));
        expect(yards.lengthInWords(n * 0.9144)).toBe(intl('yard', 'long'));
        expect(metres.wind(n)).toBe(intl('meter-per-second', 'short'));
        expect(yards.wind(n * 0.44704)).toBe(intl('mile-per-hour', 'short'));
      }
    }
  });

  it('writes lists', () => {
    const words = ['stop', 'left', 'right', 'hunt'];
    for (const dialect of dialects) {
      const intl = new Intl.ListFormat(dialect, { type: 'conjunction' });
      for (let n = 0; n <= words.length; n++)
        expect(listed(words.slice(0, n), dialect)).toBe(intl.format(words.slice(0, n)));
    }
  });

  it('writes times from now', () => {
    for (const dialect of dialects) {
      const intl = new Intl.RelativeTimeFormat(dialect, { numeric: 'auto' });
      for (const unit of ['day', 'week', 'month'] as const) {
        for (let n = -40; n <= 40; n++) expect(fromNow(n, unit)).toBe(intl.format(n, unit));
      }
    }
  });

  it('counts calendar days on the clock of the device', () => {
    const { ago } = timeWords(tongue('en-GB', 'metres'));
    const here = new Intl.DateTimeFormat().resolvedOptions().timeZone;
    const nowMs = Date.parse('2026-03-29T12:00:00Z');
    for (let hours = 0; hours < 400; hours += 5) {
      const atMs = nowMs - hours * 3_600_000;
      expect(ago(atMs, nowMs)).toBe(ago(atMs, nowMs, here));
    }
  });
});

describe('a stretch of time, worked by hand', () => {
  it('carries its units, and leaves out what is nought', () => {
    expect([0, 6.4, 40, 160, 180, 3599, 3780, 3792.4].map((s) => spanOfTime(s))).toEqual([
      '0 s',
      '6 s',
      '40 s',
      '2 min 40 s',
      '3 min',
      '59 min 59 s',
      '1 h 3 min',
      '1 h 3 min 12 s',
    ]);
  });

  it('tells parts of a second where they are wanted, and never sixty of them', () => {
    expect([127.433, 0.5, 59.9996].map((s) => spanOfTime(s, 3))).toEqual([
      '2 min 7.433 s',
      '0.500 s',
      '1 min 0.000 s',
    ]);
    expect(spanOfTime(-3)).toBe('0 s');
  });

  it('says the same as what it was made of', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (s) => {
        const units = { h: 3600, min: 60, s: 1 } as Readonly<Record<string, number>>;
        const pairs = [...spanOfTime(s).matchAll(/(\d+) (h|min|s)/g)];
        expect(pairs.reduce((sum, [, n, unit]) => sum + Number(n) * units[unit ?? '']!, 0)).toBe(s);
      }),
    );
  });
});
