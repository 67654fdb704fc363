import { describe, expect, it } from 'vitest';
import { words } from '../words.ts';

const DAY_MS = 86_400_000;
const NOON_MS = Date.UTC(2026, 2, 22, 12);
const uk = words();
const us = words('en-US', 'yards');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('progress in words', () => {
  const told = (points: number) => ({
    name: 'Teal',
    skill: 'stop' as const,
    ask: { distanceM: 20, wayFraction: 0.5, temptation: 'placed-dummy' as const },
    points: [0.61, 0.84].slice(0, points).map((chance, n) => ({
      atMs: NOON_MS + 30 * n * DAY_MS,
      smoothed: { chance, interval90: [chance - 0.1, chance + 0.1] as const },
    })),
    legs: [1, 2, 3],
  });

  it('says where it began and where it is, with the interval of now', () => {
    expect(uk.progress.said(told(2))).toBe(
      'Chance of good at the usual ask (20 m, half-way out, a placed dummy): 61 in 100 on 22 Mar 2026; 84 in 100, may be 74 to 94, by 21 Apr 2026. 2 sessions, 3 legs.',
    );
    expect(us.progress.said(told(1))).toBe(
      'Chance of good at the usual ask (22 yd, half-way out, a placed bumper): 61 in 100, may be 51 to 71, as of Mar 22, 2026. 1 session, 3 legs.',
    );
    expect(uk.progress.said({ ...told(0), legs: [] })).toBe('Teal has not been worked at this yet.');
  });

  it('counts legs by grade and leaves out what did not come', () => {
    expect(uk.progress.counts({ good: 9, fair: 0, missed: 1, excused: 2 })).toBe(
      '9 good, 1 missed, 2 not held against the dog',
    );
  });
});

describe('the map in words', () => {
  const bands = [
    { to: 15, at: 10 },
    { to: 30, at: 20 },
    { to: null, at: 45 },
  ];
  const never = {
    counts: { good: 0, fair: 0, missed: 0, excused: 0 },
    tried: 'never' as const,
    lastWorkedMs: null,
    now: { chance: 0.54, interval90: [0.3, 0.76] as const },
    beyond: true,
  };

  it('names its columns, lengths in the tongue’s unit', () => {
    expect([0, 1, 2].map((n) => plain(uk.proofing.band('distance', bands, n)))).toEqual([
      'to 15 m',
      '15 to 30 m',
      'beyond 30 m',
    ]);
    // 15 m is 16.4 yards, 30 m 32.8.
    expect([0, 1, 2].map((n) => plain(us.proofing.band('distance', bands, n)))).toEqual([
      'to 16 yd',
      '16 to 33 yd',
      'beyond 33 yd',
    ]);
    expect(plain(uk.proofing.band('wait', bands, 1))).toBe('15 to 30 s');
    const about = [
      { to: 0.5, at: 0 },
      { to: 1.5, at: 1 },
      { to: null, at: 2 },
    ];
    expect([0, 1, 2].map((n) => uk.proofing.band('distraction', about, n))).toEqual([
      'nobody about',
      'one quiet person or dog',
      'a working group, or more',
    ]);
  });

  it('says of a place never tried what we would say, and whether that reaches beyond the record', () => {
    const said = (cell: typeof never) =>
      plain(uk.proofing.sentence('Game', 'distance', bands, 2, cell, NOON_MS));
    expect(said(never)).toBe(
      'Game, beyond 30 m: never tried. We would say 54 in 100, may be 30 to 76 at 45 m, but that is beyond what has gone well so far, and such figures come out a little too hopeful.',
    );
    expect(said({ ...never, beyond: false })).toBe(
      'Game, beyond 30 m: never tried, though something as hard has gone well. We would say 54 in 100, may be 30 to 76 at 45 m.',
    );
  });

  it('says of a place that was tried how it went, when last, and the chance now', () => {
    const tried = {
      ...never,
      counts: { good: 4, fair: 1, missed: 0, excused: 1 },
      tried: 'yes' as const,
      lastWorkedMs: NOON_MS - 3 * DAY_MS,
      beyond: false,
    };
    expect(plain(uk.proofing.sentence('A post', 'distance', bands, 0, tried, NOON_MS))).toBe(
      'A post, to 15 m: 4 good, 1 fair, 1 not held against the dog, last 3 days ago. Good now: 54 in 100, may be 30 to 76 at 10 m.',
    );
  });

  it('sums a map up', () => {
    expect(uk.proofing.summary(7, 18)).toBe('7 of 18 tried; 11 never.');
    expect(uk.proofing.summary(18, 18)).toBe('All 18 tried.');
    expect(us.proofing.temptation('placed-dummy')).toBe('A placed bumper');
  });
});
