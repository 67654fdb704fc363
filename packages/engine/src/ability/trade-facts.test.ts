import { describe, expect, it } from 'vitest';
import type { Ask } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { createAbilityFilter } from './filter.ts';
import type { LegContext, LegQuestion } from './leg.ts';
import { legWeight } from './leg-weight.ts';

/** What handlers know before any record (common practice, no source): the shipped priors must say so too. */
const filter = createAbilityFilter();
const asked = (ask: Ask, context: Partial<LegContext> = {}): LegQuestion => ({
  dog: 'a',
  skill: 'stop',
  session: null,
  atMs: 0,
  ask,
  context: { ...EASY_CONTEXT, ...context },
});
const chance = (ask: Ask, context: Partial<LegContext> = {}) =>
  filter.forecast(asked(ask, context)).chance.good;
const falling = (chances: readonly number[]) => chances.every((c, k) => k === 0 || c < chances[k - 1]!);

const stop: Ask = { distanceM: 30, wayFraction: 0.4, temptation: 'placed-dummy', handlerPlace: 'beside' };

describe('trade facts (common practice, no source)', () => {
  it('a stop is harder along the way out', () => {
    expect(falling([0.1, 0.3, 0.5, 0.7, 0.9].map((wayFraction) => chance({ ...stop, wayFraction })))).toBe(
      true,
    );
    expect(falling([10, 20, 40, 80].map((distanceM) => chance({ ...stop, distanceM })))).toBe(true);
  });
  it('and with what lies at its end: post, placed, thrown, shot, game', () => {
    const ends = ['none', 'post', 'placed-dummy', 'thrown-dummy', 'shot-and-dummy', 'game'] as const;
    expect(falling(ends.map((temptation) => chance({ ...stop, temptation })))).toBe(true);
  });
  it('what lies at its end matters more far out', () => {
    const step = (wayFraction: number) =>
      filter.stretch(asked({ ...stop, wayFraction, temptation: 'game' }), asked({ ...stop, wayFraction }))
        .mean;
    expect(step(0.8)).toBeGreaterThan(step(0.2));
  });
  it('the handler between dog and prize takes some of it away', () => {
    expect(
      falling(
        (['between', 'beside', 'apart'] as const).map((handlerPlace) => chance({ ...stop, handlerPlace })),
      ),
    ).toBe(true);
  });
  it('another dummy out, nearer in angle, adds some', () => {
    const out = { ...stop, otherDummies: 1 };
    expect(
      falling([chance(stop), chance(out), chance({ ...out, gapDeg: 45 }), chance({ ...out, gapDeg: 20 })]),
    ).toBe(true);
  });
  it('new ground takes a step down, less each time', () => {
    expect(
      falling([9, 3, 1, 0].map((earlierSessionsOnGround) => chance(stop, { earlierSessionsOnGround }))),
    ).toBe(true);
  });
  it('a long wait, the ninth rep, weeks of rest and a young dog make it harder', () => {
    expect(chance({ ...stop, waitS: 60 })).toBeLessThan(chance(stop));
    expect(chance(stop, { repsSinceBreak: 12 })).toBeLessThan(chance(stop, { repsSinceBreak: 8 }));
    expect(chance(stop, { daysSinceWorked: 28 })).toBeLessThan(chance(stop));
    expect(chance(stop, { ageMonths: 7 })).toBeLessThan(chance(stop, { ageMonths: 30 }));
  });
});

describe('what is held against the dog', () => {
  // The whole table, from the rules of the trade (common practice, no source).
  it.each([
    ['missed', undefined, 1, 1],
    ['missed', 'dog', 1, 1],
    ['fair', 'unsure', 0.5, 1],
    ['missed', 'handler', 0, 1],
    ['fair', 'setup', 0, 1],
    ['good', undefined, 1, 1],
    ['good', 'handler', 1, 1],
  ] as const)('%s, %s', (grade, cause, excused, everything) => {
    expect(legWeight(grade, cause, 'excused')).toBe(excused);
    expect(legWeight(grade, cause, 'everything')).toBe(everything);
  });
});

describe('stretch', () => {
  it('is the sum of its parts, in the table s weights before any record', () => {
    const { mean, sd, parts } = filter.stretch(asked({ ...stop, distanceM: 60, cover: 1 }), asked(stop));
    // One doubling at 0.5, one step of cover at 0.45; each weight's variance 0.0225 + 0.0196.
    expect(mean).toBeCloseTo(0.95, 12);
    expect(sd).toBeCloseTo(Math.sqrt(2 * 0.0421), 12);
    expect(parts.map(({ factor }) => factor)).toEqual(['distance', 'cover']);
    expect(filter.stretch(asked(stop), asked(stop))).toEqual({ mean: 0, sd: 0, parts: [] });
  });
});
