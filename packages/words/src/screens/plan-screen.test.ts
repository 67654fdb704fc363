import { describe, expect, it } from 'vitest';
import { words } from '../words.ts';

const { planScreen } = words();
const strip = {
  minutes: { p50: 11.4, p90: 13.2, of: 15 },
  breaksAfter: [6],
  casts: { left: 2, right: 1 },
  weaker: 'left',
  sends: { clean: 3, all: 11 },
  cleanShareWanted: 0.25,
  stops: { count: 3, distancesM: [24, 8, 12], ways: [0.8, 0.2, 0.5] },
  most: { n: 9, skill: 'cast-back', stretch: 0.5 },
} as const;

describe('the figures over a plan', () => {
  it('say each figure, and what it is held against', () => {
    expect(planScreen.strip.minutes(strip)).toEqual({
      figure: '11 to 13 min',
      beside: 'of 15, break after 6',
    });
    expect(planScreen.strip.sides(strip)).toEqual({ figure: '2 left, 1 right', beside: 'left is weaker' });
    expect(planScreen.strip.clean(strip)).toEqual({ figure: '3 let run of 11', beside: '1 in 4 is wanted' });
    expect(planScreen.strip.stops(strip)).toEqual({
      figure: 'Stops 8 to 24 m',
      beside: 'early, half-way out and late',
    });
    expect(planScreen.strip.most(strip)).toEqual({ figure: 'A medium step', beside: 'rep 9, cast back' });
  });

  it('say lengths in yards and dummies as bumpers where that is the tongue', () => {
    // 8 m is 8.75 yd, 24 m is 26.2 yd (a yard is 0.9144 m exactly).
    expect(words('en-US', 'yards').planScreen.strip.stops(strip).figure).toBe('Stops 9 to 26 yd');
    expect(words('en-US').planScreen.wished('Long bank', { posts: 1, dummies: 2 }, {}, null)).toBe(
      'Long bank · 2 bumpers and 1 post',
    );
  });

  it('have words for nothing', () => {
    const none = {
      ...strip,
      breaksAfter: [],
      casts: { left: 0, right: 0 },
      weaker: null,
      sends: { clean: 0, all: 0 },
      stops: { count: 0, distancesM: [], ways: [] },
      most: null,
    };
    const all = (['minutes', 'sides', 'clean', 'stops', 'most'] as const).map((cell) =>
      planScreen.strip[cell](none),
    );
    expect(all.map(({ figure }) => figure)).toEqual([
      '11 to 13 min',
      'No side casts',
      'No sends',
      'No stops',
      'Nothing asked',
    ]);
    expect(JSON.stringify(all)).not.toMatch(/NaN|Infinity|undefined|null/);
    const oneStop = { ...strip, stops: { count: 1, distancesM: [12], ways: [0.5] } };
    expect(planScreen.strip.stops(oneStop).figure).toBe('Stop at 12 m');
    expect(planScreen.strip.clean({ ...strip, cleanShareWanted: 0 }).beside).toBe('none is wanted');
    expect(planScreen.strip.most({ ...strip, most: { n: 1, skill: 'heel', stretch: 0 } })).toEqual({
      figure: 'No step up',
      beside: 'all of it known',
    });
    expect(planScreen.strip.most({ ...strip, most: { n: 1, skill: 'heel', stretch: null } }).figure).toBe(
      'The first of its kind',
    );
  });
});

describe('what is wanted of a plan, in one line', () => {
  it('leaves out what is not told', () => {
    expect(planScreen.wished(null, undefined, undefined, null)).toBe('Ground not said · any kit');
    expect(
      planScreen.wished('Long bank', { posts: 0, dummies: 0 }, { airC: 14, windMPerS: 3 }, 'Recall'),
    ).toBe('Long bank · nothing to put out · 14 °C · wind 3 m/s · recall');
  });
});
