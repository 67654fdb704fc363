import { describe, expect, it } from 'vitest';
import type { ToldForecast } from './season.ts';
import { words } from './words.ts';

const told = (
  p: readonly [number | null, number | null, number | null],
  ready: readonly number[],
  more: Partial<ToldForecast> = {},
): ToldForecast => ({
  perWeek: 2.5,
  isOwnPace: false,
  by: null,
  forecast: {
    weeks: ready.map((probabilityReady) => ({ probabilityReady })),
    readyInWeeks: { p10: p[0], p50: p[1], p90: p[2] },
    first: [],
  },
  ...more,
});
const { season } = words('en-GB', 'metres');
const rising = Array.from({ length: 27 }, (_, week) => week / 30);

describe('a forecast in words', () => {
  it.each([
    [told([3, 7, 15], rising), 'Likely ready in 7 weeks, may be 3 to 15, at 2.5 sessions a week.'],
    [told([0, 1, 4], rising), 'Likely ready in 1 week, may be now to 4, at 2.5 sessions a week.'],
    [
      told([5, 20, null], rising),
      'Likely ready in 20 weeks, may be from 5 on, or not within 26, at 2.5 sessions a week.',
    ],
    [told([4, 4, 4], rising), 'Likely ready in 4 weeks, at 2.5 sessions a week.'],
    [told([0, 0, 3], [0.72, 0.8]), 'May be ready now: 72 in 100.'],
    [told([0, 0, 0], [0.92, 0.95]), 'Looks ready now: 92 in 100.'],
    [
      told([9, null, null], [...rising.slice(0, 26), 0.21], { perWeek: 1, isOwnPace: true }),
      'Not likely ready within 26 weeks: 21 in 100 by then, at the pace of late, 1 session a week.',
    ],
    [
      told([null, null, null], [0, 0], { perWeek: 0 }),
      'Not likely ready within 1 week: under 1 in 100 now or by then, with no session at all.',
    ],
  ])('says when: %#', (one, sentence) => {
    expect(season.when(one)).toBe(sentence);
  });

  it('says the date, and what to proof first where it is worth it', () => {
    const base = told([3, 7, 15], rising);
    const first = [
      { skill: 'stop', factor: 'temptation', gain: 0.124 },
      { skill: 'cast-right', factor: 'distance', gain: 0.04 },
      { skill: 'line', factor: 'cover', gain: 0.03 },
    ] as const;
    const all = season.all({
      ...base,
      by: { date: '2027-02-20', probabilityReady: 0.62 },
      forecast: { ...base.forecast, first },
    });
    expect(all.slice(1)).toEqual([
      'By 20 Feb 2027: 62 in 100.',
      'To proof first: stop on the whistle, what draws (12 in 100 more); cast to the right, how far out (4 in 100 more).',
    ]);
    const tiny = [{ skill: 'stop', factor: 'cover', gain: 0.004 }] as const;
    expect(season.all({ ...base, forecast: { ...base.forecast, first: tiny } })).toHaveLength(1);
  });

  it('says what is not known, and why nothing can be said', () => {
    expect(season.notKnown('cast-back', 0)).toBe('Not known yet: cast back (never worked).');
    expect(season.notKnown('stop', 1)).toBe('Not known yet: stop on the whistle (1 leg).');
    expect(season.cantSay('no-session', 'Sorrel')).toMatch(/^Can’t say yet: Sorrel has no session/);
    expect(season.cantSay('no-asks', 'Sorrel')).toMatch(/asks for nothing/);
  });
});
