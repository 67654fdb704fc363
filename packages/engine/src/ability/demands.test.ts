import { describe, expect, it } from 'vitest';
import { type Ask, SKILLS, type Skill } from './ask.ts';
import { ASK_RANGES, EASY_CONTEXT, easyAsk } from './ask-range.ts';
import { DEMANDS, type DemandName, demandVector } from './demands.ts';
import type { LegContext } from './leg.ts';

/** Demands that are not 0, by name. */
function raised(
  skill: Skill,
  ask: Ask,
  context: Partial<LegContext> = {},
): Partial<Record<DemandName, number>> {
  const x = demandVector(skill, ask, { ...EASY_CONTEXT, ...context });
  return Object.fromEntries(DEMANDS.map((name, j) => [name, x[j]!]).filter(([, value]) => value !== 0));
}

// Worked by hand from the table of demands (common practice, no source).
describe('demands of an ask', () => {
  it.each(SKILLS)('%s: nothing is asked at the easy end, absent or written out', (skill) => {
    expect(raised(skill, {})).toEqual({});
    expect(raised(skill, easyAsk(skill))).toEqual({});
  });
  it.each([
    ['line', { distanceM: 40 }, { distance: 3 }],
    ['line', { distanceM: 2 }, {}],
    ['stop', { wayFraction: 0.4 }, { late: 1 }],
    ['stop', { temptation: 'game' }, { temptation: 3.5 }],
    [
      'stop',
      { wayFraction: 0.7, temptation: 'thrown-dummy' },
      { late: 2, temptation: 2, 'late-temptation': 4 },
    ],
    [
      'line',
      { handlerPlace: 'apart', cover: 2.5, distraction: 1, obstacle: 3 },
      { handler: 1.5, cover: 2.5, distraction: 1, obstacle: 3 },
    ],
    ['cast-left', { turnDeg: 45, castM: 20 }, { turn: 1, cast: 2 }],
    ['cast-right', { turnDeg: 180 }, { turn: 2 }],
    ['cast-back', { turnDeg: 135 }, { turn: 1 }],
    ['line', { turnDeg: 0 }, {}],
    ['mark', { otherDummies: 3, gapDeg: 30 }, { others: 2, narrow: 1 }],
    ['mark', { gapDeg: 60 }, {}],
    [
      'line',
      { blind: true, waitS: 35, windAcrossMPerS: 10, crew: 7 },
      { blind: 1, wait: 3, wind: 2, crew: 3 },
    ],
  ] as const)('%s %o', (skill, ask, want) => {
    const got = raised(skill, ask);
    expect(Object.keys(got).sort()).toEqual(Object.keys(want).sort());
    // Rounding of 0.7 - 0.1 and of a logarithm.
    for (const [name, value] of Object.entries(want)) expect(got[name as DemandName]).toBeCloseTo(value, 12);
  });
  it.each([
    ['line', { earlierSessionsOnGround: 0 }, { newness: 1 }],
    ['line', { earlierSessionsOnGround: 3 }, { newness: 0.25 }],
    ['line', { repsSinceBreak: 8 }, {}],
    ['line', { repsSinceBreak: 14 }, { tired: 1.5 }],
    ['line', { daysSinceWorked: 21 }, { lapse: 2 }],
    ['line', { stopsRunning: 9 }, { 'stops-running': 5 }],
    ['stop', { stopsRunning: 9 }, {}],
    ['stop', { ageMonths: 9 }, { young: 0.5 }],
    ['stop', { ageMonths: 1 }, { young: 1.5 }],
    ['stop', { ageMonths: 12 }, {}],
  ] as const)('%s with %o', (skill, context, want) => {
    expect(raised(skill, {}, context)).toEqual(want);
  });
});

describe('ranges', () => {
  it.each(Object.entries(ASK_RANGES))('%s outside %o is named', (field, [least, greatest]) => {
    for (const value of [least - 0.01, greatest + 0.01, Number.NaN]) {
      expect(() => demandVector('stop', { [field]: value }, EASY_CONTEXT)).toThrow(
        new RegExp(`^${field}: expected`),
      );
    }
    expect(() => demandVector('stop', { [field]: greatest }, EASY_CONTEXT)).not.toThrow();
  });
  it.each(['earlierSessionsOnGround', 'repsSinceBreak', 'daysSinceWorked', 'stopsRunning', 'ageMonths'])(
    '%s below nothing is named',
    (field) => {
      const context = { ...EASY_CONTEXT, [field]: -1 };
      expect(() => demandVector('stop', {}, context)).toThrow(new RegExp(`^${field}: expected`));
    },
  );
  it('fills the vector it is given', () => {
    const out = new Float64Array(DEMANDS.length).fill(9);
    expect(demandVector('line', { distanceM: 10 }, EASY_CONTEXT, out)).toBe(out);
    expect([...out]).toEqual([1, ...Array(20).fill(0)]);
  });
});
