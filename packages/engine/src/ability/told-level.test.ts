import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRADES } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { createAbilityFilter, restoreAbilityFilter } from './filter.ts';
import type { AbilityFilter } from './forecaster.ts';
import type { LegQuestion, LegResult } from './leg.ts';
import { shippedPriors } from './priors.ts';
import { leftByLeg, TOLD_GROUNDS, type ToldLevel, toldAbility } from './told-level.ts';

const DAY = 86_400_000;
const AT = Date.UTC(2026, 2, 1);

const told = (farthestM: number | null, ground: ToldLevel['ground'] = null): ToldLevel => ({
  farthestM,
  ground,
  ageMonths: null,
});

function asked(distanceM: number, change: Partial<LegQuestion> = {}): LegQuestion {
  return {
    dog: 'a',
    skill: 'stop',
    session: null,
    atMs: AT,
    ask: { distanceM },
    context: EASY_CONTEXT,
    ...change,
  };
}

/** Legs of one dog: so many to a session, a session every third day. */
const legs = fc.array(
  fc.record({
    grade: fc.constantFrom(...GRADES),
    distanceM: fc.integer({ min: 1, max: 150 }),
    skill: fc.constantFrom('stop' as const, 'stop' as const, 'line' as const),
    weight: fc.constantFrom(1, 1, 1, 0.5, 0),
  }),
  { maxLength: 24 },
);
type Made = typeof legs extends fc.Arbitrary<infer T> ? T : never;

function result(made: Made[number], n: number): LegResult {
  const { grade, distanceM, skill, weight } = made;
  const session = Math.floor(n / 7);
  const atMs = AT + session * 3 * DAY + n * 60_000;
  return { ...asked(distanceM, { skill, atMs }), session: `s${session}`, grade, weight };
}

function worked(made: Made, filter: AbilityFilter = createAbilityFilter()): AbilityFilter {
  made.forEach((one, n) => {
    filter.observe(result(one, n));
  });
  return filter;
}

function startedWith(level: ToldLevel, made: Made): AbilityFilter {
  const filter = createAbilityFilter();
  filter.tell('a', 'stop', AT, level);
  return worked(made, filter);
}

const notMissed = (filter: AbilityFilter, distanceM: number) =>
  1 - filter.forecast(asked(distanceM, { atMs: AT + 30 * DAY })).chance.missed;

describe('the ability that a word needs', () => {
  it('is the one worked out by hand', () => {
    // 0.8 + 3 doublings x 0.5 + newness 1 x 0.5; at home 0.8 + 1.5; six months young: + 1 x 0.4; known: a quarter of 0.5.
    expect(toldAbility('stop', told(40, 'new'), shippedPriors)).toBeCloseTo(2.8, 12);
    expect(toldAbility('stop', told(40, 'home'), shippedPriors)).toBeCloseTo(2.3, 12);
    expect(toldAbility('stop', told(40, 'known'), shippedPriors)).toBeCloseTo(2.425, 12);
    expect(toldAbility('stop', { ...told(40), ageMonths: 6 }, shippedPriors)).toBeCloseTo(2.7, 12);
    // Never yet: two logits under a farthest of 5 m; half way, one.
    expect(toldAbility('stop', told(0), shippedPriors)).toBeCloseTo(-1.2, 12);
    expect(toldAbility('stop', told(2.5), shippedPriors)).toBeCloseTo(-0.2, 12);
    // No distance told: the ordinary dog on known ground, 1.8, and 0.5 x 3/4 more on new ground.
    expect(toldAbility('steady', told(null, 'known'), shippedPriors)).toBeCloseTo(1.8, 12);
    expect(toldAbility('steady', told(null, 'new'), shippedPriors)).toBeCloseTo(2.175, 12);
  });

  it('refuses what is out of range, and the filter is as it was', () => {
    const filter = createAbilityFilter();
    const before = filter.snapshot();
    expect(() => filter.tell('a', 'stop', AT, told(401))).toThrow(/^distanceM: /);
    expect(() => filter.tell('a', 'stop', Number.NaN, told(40))).toThrow(/^atMs: /);
    expect(filter.snapshot()).toEqual(before);
  });
});

describe('a start', () => {
  it('moves the mean by V/(V + 4) (z - m) and leaves the spread, by hand', () => {
    const filter = createAbilityFilter();
    const before = filter.ability('a', 'stop', AT);
    filter.tell('a', 'stop', AT, told(40, 'new'));
    const after = filter.ability('a', 'stop', AT);
    // V = 0.25 + 0.36 + 0.49 = 1.1, z - m = 2.8 - 1.8.
    expect(after.mean - before.mean).toBeCloseTo(1.1 / 5.1, 12);
    expect(after.sd).toBe(before.sd);
    expect(filter.because(asked(5))).toContainEqual({ factor: 'told', logit: expect.closeTo(1.1 / 5.1, 12) });
    for (const other of [asked(5, { dog: 'b' }), asked(5, { skill: 'line' })])
      expect(filter.forecast(other)).toEqual(createAbilityFilter().forecast(other));
  });

  it('is at first a shifted prior of that dog and skill, and stays near one leg for leg', () => {
    // One dog, one skill: then moving the mean of every dog is the same thing. Equal before the first leg; after it to first order
    // in the start (0.04 in chance for starts of up to half a logit, over 24 legs: the curve of the logistic).
    const ofStop = legs.map((made) => made.map((one) => ({ ...one, skill: 'stop' as const })));
    fc.assert(
      fc.property(
        ofStop,
        fc.integer({ min: 0, max: 400 }),
        fc.constantFrom(...TOLD_GROUNDS),
        (made, m, ground) => {
          const filter = startedWith(told(m, ground), []);
          const logit = filter.ability('a', 'stop', AT).mean - shippedPriors.abilityMean;
          const twin = createAbilityFilter({
            ...shippedPriors,
            abilityMean: shippedPriors.abilityMean + logit,
          });
          expect(filter.forecast(asked(30)).chance.good).toBeCloseTo(
            twin.forecast(asked(30)).chance.good,
            12,
          );
          made.forEach((one, n) => {
            const stated = filter.observe(result(one, n)).chance.missed;
            expect(Math.abs(stated - twin.observe(result(one, n)).chance.missed)).toBeLessThan(0.04);
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('only the last word counts, at any time, and taken back none, to the bit: legs learn as if nothing had been told', () => {
    const level = fc
      .tuple(fc.option(fc.integer({ min: 0, max: 400 })), fc.option(fc.constantFrom(...TOLD_GROUNDS)))
      .map(([m, ground]) => told(m, ground));
    fc.assert(
      fc.property(legs, fc.array(level, { maxLength: 3 }), level, (made, earlier, last) => {
        const twice = createAbilityFilter();
        for (const one of earlier) twice.tell('a', 'stop', AT, one);
        worked(made, twice);
        twice.tell('a', 'stop', AT + 30 * DAY, last);
        const once = worked(made);
        once.tell('a', 'stop', AT + 30 * DAY, last);
        expect(twice.snapshot()).toEqual(once.snapshot());
        twice.tell('a', 'stop', AT + 30 * DAY, null);
        expect(twice.snapshot()).toEqual(worked(made).snapshot());
      }),
      { numRuns: 60 },
    );
  });

  it('farther, and on stranger ground, is never the less able: no chance is lowered, before any legs and after', () => {
    const distance = fc.integer({ min: 0, max: 400 });
    const ground = fc.constantFrom(...TOLD_GROUNDS);
    fc.assert(
      fc.property(legs, distance, distance, ground, ground, distance, (made, m, n, g, h, askedM) => {
        const grounds = [g, h].sort((a, b) => TOLD_GROUNDS.indexOf(a) - TOLD_GROUNDS.indexOf(b));
        const less = startedWith(told(Math.min(m, n), grounds[0]), made);
        const more = startedWith(told(Math.max(m, n), grounds[1]), made);
        expect(notMissed(more, askedM)).toBeGreaterThanOrEqual(notMissed(less, askedM));
      }),
      { numRuns: 400 },
    );
  });

  it('is outweighed by ten legs, whatever was told: no chance is 8 in 100 from that of "never yet"', () => {
    // The law of docs/told.md, here of any grades at any distances of up to 60 m, 10 legs and more.
    const ten = fc.array(
      fc.record({
        grade: fc.constantFrom(...GRADES),
        distanceM: fc.integer({ min: 5, max: 60 }),
        skill: fc.constant('stop' as const),
        weight: fc.constant(1),
      }),
      { minLength: 10, maxLength: 16 },
    );
    fc.assert(
      fc.property(ten, fc.integer({ min: 5, max: 60 }), (made, askedM) => {
        const least = startedWith(told(0, 'home'), made);
        const most = startedWith(told(400, 'new'), made);
        expect(Math.abs(notMissed(most, askedM) - notMissed(least, askedM))).toBeLessThan(0.08);
        expect(most.toldLeft('a', 'stop')).toBeLessThan(0.6);
      }),
      { numRuns: 200 },
    );
  });

  it('a boast of 100 m is gone when a puppy has failed ten times at 15 m', () => {
    const missed = Array.from({ length: 10 }, () => ({
      grade: 'missed' as const,
      distanceM: 15,
      skill: 'stop' as const,
      weight: 1 as const,
    }));
    const boasted = startedWith(told(100, 'new'), missed);
    const silent = worked(missed);
    expect(
      notMissed(startedWith(told(100, 'new'), []), 15) - notMissed(createAbilityFilter(), 15),
    ).toBeGreaterThan(0.05);
    expect(notMissed(boasted, 15)).toBeLessThan(notMissed(silent, 15) + 0.02);
    expect(boasted.toldLeft('a', 'stop')).toBeLessThan(0.5);
  });

  it('is named among the parts by what is left of it, and the parts add up', () => {
    fc.assert(
      fc.property(legs, fc.integer({ min: 0, max: 400 }), (made, m) => {
        const filter = startedWith(told(m), made);
        const now = asked(25, { atMs: AT + 30 * DAY });
        const parts = filter.because(now);
        const { mean } = filter.forecast(now).logOdds;
        expect(parts.reduce((sum, { logit }) => sum + logit, 0)).toBeCloseTo(mean, 12);
        const silent = worked(made).forecast(now).logOdds.mean;
        expect(parts.find(({ factor }) => factor === 'told')?.logit).toBeCloseTo(mean - silent, 12);
      }),
      { numRuns: 60 },
    );
  });

  it('goes on from a snapshot to the bit', () => {
    const filter = startedWith(told(80, 'new'), [{ grade: 'fair', distanceM: 20, skill: 'stop', weight: 1 }]);
    const restored = restoreAbilityFilter(structuredClone(filter.snapshot()));
    filter.observe(result({ grade: 'good', distanceM: 30, skill: 'stop', weight: 1 }, 3));
    restored.observe(result({ grade: 'good', distanceM: 30, skill: 'stop', weight: 1 }, 3));
    expect(restored.snapshot()).toEqual(filter.snapshot());
  });
});

describe('the share that a leg leaves', () => {
  it('is all of it where nothing was learnt, and v1/v where the leg speaks of the ability alone', () => {
    expect(leftByLeg(1, 1.5, 1.5)).toBe(1);
    expect(leftByLeg(1, 1, 0.4)).toBeCloseTo(0.4, 12);
    // Half the spread is the ability's: half of what was learnt is taken from it.
    expect(leftByLeg(0.5, 1, 0.4)).toBeCloseTo(0.7, 12);
  });
});
