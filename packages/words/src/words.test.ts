import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dialect } from './dialect.ts';
import { STORE_FAILURE_CODES } from './failures.ts';
import { REASON_CODES } from './reasons.ts';
import type { Units } from './tongue.ts';
import {
  type Ask,
  CAUSE_CODES,
  GRADE_CODES,
  HANDLER_PLACE_CODES,
  SKILL_CODES,
  TEMPTATION_CODES,
} from './vocabulary.ts';
import { words } from './words.ts';

const TONGUES = (['en-GB', 'en-US'] as const).flatMap((dialect) =>
  (['metres', 'yards'] as const).map((units): [Dialect, Units] => [dialect, units]),
);

/** What a sentence must never show: a figure that was not there, a bare code, the other dialect's word. */
function expectSaid(text: string, dialect: Dialect): void {
  expect(text.trim().length).toBeGreaterThan(0);
  expect(text).not.toMatch(/undefined|NaN|null|Infinity|\[object|\$\{/);
  if (dialect === 'en-US') expect(text).not.toMatch(/dumm(y|ies)|\bmetre/i);
}

const optional = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
const finite = (min: number, max: number) => optional(fc.double({ min, max, noNaN: true }));

/** Ranges as the journal's contract gives them. */
const ASK: fc.Arbitrary<Ask> = fc.record({
  distanceM: finite(0, 400),
  wayFraction: finite(0, 1),
  temptation: optional(fc.constantFrom(...TEMPTATION_CODES)),
  handlerPlace: optional(fc.constantFrom(...HANDLER_PLACE_CODES)),
  cover: finite(0, 3),
  distraction: finite(0, 3),
  turnDeg: finite(0, 180),
  castM: finite(0, 150),
  otherDummies: optional(fc.nat(6)),
  gapDeg: finite(0, 180),
  blind: optional(fc.boolean()),
  waitS: finite(0, 300),
  obstacle: finite(0, 3),
  windAcrossMPerS: finite(0, 15),
  crew: optional(fc.nat(12)),
});
const VALUE = fc.oneof(
  fc.double({ min: -400, max: 400, noNaN: true }),
  fc.boolean(),
  fc.constantFrom(...TEMPTATION_CODES, ...HANDLER_PLACE_CODES, 'something-new'),
  fc.constant(undefined),
);
const FIELD = optional(
  fc.constantFrom(
    ...([
      'distanceM',
      'wayFraction',
      'temptation',
      'handlerPlace',
      'cover',
      'distraction',
      'turnDeg',
    ] as const),
    ...([
      'castM',
      'otherDummies',
      'gapDeg',
      'blind',
      'waitS',
      'obstacle',
      'windAcrossMPerS',
      'crew',
      'new',
    ] as const),
  ),
);

describe.each(TONGUES)('%s in %s', (dialect, units) => {
  const w = words(dialect, units);

  it('has a sentence for every reason, whatever figures come with it', () => {
    for (const code of REASON_CODES) {
      fc.assert(
        fc.property(
          fc.record({
            skill: optional(fc.constantFrom(...SKILL_CODES)),
            field: FIELD,
            from: VALUE,
            to: VALUE,
            chanceBefore: finite(0, 1),
            chanceNow: finite(0, 1),
            count: optional(fc.nat(40)),
            minutes: finite(0, 60),
            share: finite(0, 1),
          }),
          (figures) => {
            const text = w.reasons.sentence({ code, ...figures });
            expectSaid(text, dialect);
            expect(text).toMatch(/^[A-Z0-9].*[.]$/);
          },
        ),
        { numRuns: 40 },
      );
    }
  });

  it('has a sentence for every failure: what happened, what was saved, what to do', () => {
    for (const code of STORE_FAILURE_CODES) {
      const said = w.failures.store(code);
      for (const part of [said.what, said.saved, said.todo]) {
        expectSaid(part, dialect);
        expect(part).toMatch(/^[A-Z].*\.$/);
      }
      expect(w.failures.sentence(code)).toBe(`${said.what} ${said.saved} ${said.todo}`);
    }
  });

  it('says every ask, and a rep of any legs', () => {
    const leg = fc.record({ skill: fc.constantFrom(...SKILL_CODES), ask: ASK });
    fc.assert(
      fc.property(fc.array(leg, { maxLength: 6 }), (legs) => {
        const text = w.ask.rep(legs);
        expectSaid(text, dialect);
        expect(text.endsWith('.')).toBe(true);
        for (const each of legs) {
          expectSaid(w.ask.leg(each), dialect);
          expectSaid(w.ask.figures(each.skill, each.ask), dialect);
        }
      }),
    );
  });

  it('has the trade words of every skill, grade, cause, temptation and place', () => {
    for (const skill of SKILL_CODES) {
      expectSaid(w.trade.skill(skill), dialect);
      expectSaid(w.trade.skillInWords(skill), dialect);
      for (const grade of GRADE_CODES) {
        expectSaid(w.trade.gradeAt(skill, grade), dialect);
        expectSaid(w.trade.gradeOnKey(skill, grade), dialect);
      }
      for (const cause of CAUSE_CODES) expectSaid(w.trade.causeHint(cause, skill), dialect);
    }
    for (const temptation of TEMPTATION_CODES) expectSaid(w.trade.temptation(temptation), dialect);
    for (const place of HANDLER_PLACE_CODES) expectSaid(w.trade.handlerPlace(place), dialect);
    for (const level of [0, 0.4, 1, 1.6, 2, 3]) {
      expectSaid(w.trade.cover(level), dialect);
      expectSaid(w.trade.distraction(level), dialect);
      expectSaid(w.trade.obstacle(level), dialect);
    }
  });

  it('speaks one dialect on the card, in the cautions, and in what was never proved', () => {
    for (const role of ['asked', 'other', 'scenery'] as const) {
      for (const kind of ['post', 'dummy', 'hazard', 'jump', 'other'] as const)
        expectSaid(w.picture.thing(kind, role), dialect);
    }
    for (const caution of w.cautions.list) expectSaid(`${caution.title} ${caution.text}`, dialect);
    for (const code of ['new-ground', 'dummy-out', 'thrown', 'far', 'cover', 'blind', 'one-of-tomorrow']) {
      expectSaid(w.dog.unproved(code), dialect);
      expectSaid(w.dog.unproved(code, 40), dialect);
    }
    expectSaid(
      w.setup.units.metres + w.setup.units.hint + w.setup.dialect.hint.replace(/American calls.*/, 'x'),
      dialect,
    );
  });
});

describe('words worked by hand', () => {
  const w = words();
  const line = { skill: 'line', ask: { distanceM: 29, temptation: 'placed-dummy' } } as const;
  const stop = { skill: 'stop', ask: { distanceM: 18 } } as const;
  const left = { skill: 'cast-left', ask: { castM: 14, blind: true } } as const;
  const home = [
    { skill: 'pickup', ask: {} },
    { skill: 'delivery', ask: {} },
  ] as const;

  it('tells a rep as it is told on the ground (wording of the design)', () => {
    expect(w.ask.rep([line, stop, left, ...home])).toBe('Line to the memory, stop, left to the blind.');
    expect(w.ask.legs([stop, left])).toBe('Stop at 18 m, then left 14 m to the blind');
    expect(w.ask.rep(home)).toBe('Pick up, to hand.');
  });

  it('says a chance in a hundred with what it may be (wording of the design)', () => {
    expect(w.chances.withInterval(0.84, [0.72, 0.92])).toBe('84 in 100, may be 72 to 92');
    expect(w.chances.withInterval(0.999, [0.97, 1])).toBe('over 99 in 100, may be 97 to over 99');
    expect(w.chances.withInterval(0.001, [0, 0.02])).toBe('under 1 in 100, may be under 1 to 2');
  });

  it('never says 0 or 100 of a chance, and refuses what is none', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        (p) => !['0', '100'].includes(w.chances.inHundred(p)),
      ),
    );
    for (const none of [-0.01, 1.01, Number.NaN]) expect(() => w.chances.inHundred(none)).toThrow(RangeError);
  });

  it('calls steps small, medium, big and too big (thresholds: our judgement, 2026)', () => {
    expect([0.29, 0.3, 0.69, 0.7, 1.2, 1.21].map(w.steps.size)).toEqual([
      'small',
      'medium',
      'medium',
      'big',
      'big',
      'too-big',
    ]);
    for (const stretch of [null, -1, 0.1, 0.5, 1, 2])
      expect(w.steps.phrase(stretch)).not.toMatch(/fair|good|missed/);
  });

  it('turns metres into yards by the exact 0.9144', () => {
    expect(words('en-US', 'yards').tongue.length(18.288)).toBe('20 yd');
    expect(words('en-GB', 'yards').tongue.lengthInWords(0.9144)).toBe('1 yard');
    expect(w.tongue.length(18.4)).toBe('18 m');
    expect(w.tongue.length(1.94)).toBe('1.9 m');
    expect(words('en-US').tongue.lengthInWords(18)).toBe('18 meters');
    expect(w.tongue.length(-0.01)).toBe('0 m');
  });

  it('says wind in metres a second, or miles an hour: 10 m/s is 22.37 mph', () => {
    expect(w.tongue.wind(10)).toBe('10 m/s');
    expect(words('en-GB', 'yards').tongue.wind(10)).toMatch(/^22\s?mph$/);
  });

  it('tells days by the calendar and not by 24 hours', () => {
    const at = Date.UTC(2026, 5, 1, 22);
    expect(w.time.ago(at, Date.UTC(2026, 5, 2, 1), 'UTC')).toBe('yesterday');
    expect(w.time.ago(at, Date.UTC(2026, 5, 1, 23), 'UTC')).toBe('today');
    expect(w.time.ago(at, Date.UTC(2026, 5, 15, 1), 'UTC')).toBe('2 weeks ago');
  });

  it('tells an age the way it is said of a dog', () => {
    expect([0, 1, 8.9, 12, 19, 40].map((months) => w.time.age(months))).toEqual([
      '0 months',
      '1 month',
      '8 months',
      '1 year',
      '1 year 7 months',
      '3 years',
    ]);
  });

  it('never calls no time at all long, nor what was worked not worked', () => {
    const { reasons, dogs } = words();
    const long = (minutes: number) => reasons.sentence({ code: 'long-enough', count: 14, minutes });
    expect(long(15)).toBe('15 minutes is long enough.');
    expect(long(0)).toBe('14 reps is enough.');
    expect(reasons.sentence({ code: 'break-due', count: 10, minutes: 0 })).toBe(
      'Time for a break: 10 reps without one.',
    );
    expect(dogs.row.week(0.4)).toBe('under a minute this week');
  });

  it('keeps the grades to good, fair and missed', () => {
    expect(GRADE_CODES.map(w.trade.grade)).toEqual(['missed', 'fair', 'good']);
    expect(w.trade.gradeAt('stop', 'fair')).toBe('slow, or a second whistle');
    expect(w.trade.gradeAt('cast-back', 'missed')).toBe('refused');
  });
});
