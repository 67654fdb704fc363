import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dialect } from './dialect.ts';
import type { Units } from './tongue.ts';
import { GRADE_CODES, HANDLER_PLACE_CODES, SKILL_CODES, TEMPTATION_CODES } from './vocabulary.ts';
import { type ExplainedLeg, VERDICT_CODES } from './why.ts';
import { FACTOR_CODES } from './why-factors.ts';
import { words } from './words.ts';

const w = words();
const distance = { factor: 'distance', from: 20, to: 32, logit: 0.34, chance: -0.08 } as const;
const late = { factor: 'late', from: 0.4, to: 0.7, logit: 0.45, chance: -0.1 } as const;
const seen = { factor: 'blind', from: true, to: false, logit: -0.7, chance: 0.12 } as const;
const minute = { factor: 'lapse', from: 0, to: 0.0007, logit: 0.00002, chance: 0 } as const;
const miss: Omit<ExplainedLeg, 'step'> = {
  skill: 'stop',
  grade: 'missed',
  verdict: 'too-big-a-step',
  chanceBefore: 0.44,
};

describe('why, in words worked by hand', () => {
  it('says what came of it, the verdict, what changed and the two chances', () => {
    const leg = { ...miss, step: { chanceAtBase: 0.71, changed: [late, distance, minute] } };
    expect(w.why.sentence(leg)).toBe(
      'Stop: ran on. A step too many. Against the last like it that went well: the stop comes later on the line and 12 m farther. The chance of good went from 71 to 44 in 100.',
    );
  });

  it('says what spoke for it as well', () => {
    const against = w.why.against({ ...miss, step: { chanceAtBase: 0.6, changed: [late, distance, seen] } });
    expect(against).toBe(
      'Against the last like it that went well: the stop comes later on the line and 12 m farther. In its favour: the dummy is seen. The chance of good went from 60 to 44 in 100.',
    );
  });

  it('does not call an easier leg harder, and says when there is nothing to hold it against', () => {
    expect(w.why.against({ ...miss, step: { chanceAtBase: 0.4, changed: [distance, seen] } })).toBe(
      'No harder than one that went well. In its favour: the dummy is seen. Against it: 12 m farther. The chance of good went from 40 to 44 in 100.',
    );
    expect(w.why.against({ ...miss, step: { chanceAtBase: 0.443, changed: [minute] } })).toBe(
      'Much the same as one that went well. The chance of good stayed at 44 in 100.',
    );
    expect(w.why.against({ ...miss, step: null })).toBe(
      'Nothing of the kind had gone well before. The chance of good was 44 in 100.',
    );
  });

  it('says parts of a chance as so many in a hundred, and the whole step in words and figures', () => {
    expect([-0.12, 0.03, -0.004, 0].map(w.why.part)).toEqual(['12 less', '3 more', 'under 1', 'under 1']);
    // 1.5 and 1.6449 x 0.25 = 0.41 to each side.
    expect(w.whySheet.step(1.5, 0.25)).toBe('All in all too big a step: 1.5 logits, may be 1.09 to 1.91.');
  });

  it('tells what the moment added', () => {
    const phrase = (factor: 'newness' | 'lapse' | 'tired' | 'stops-running', to: number, logit: number) =>
      w.why.phrase({ factor, from: 3, to, logit, chance: 0 });
    expect(phrase('newness', 0, 0.4)).toBe('the ground is new to the dog');
    expect(phrase('newness', 5, -0.1)).toBe('ground that is better known');
    expect(phrase('lapse', 12.2, 0.2)).toBe('12 days since it was last worked');
    expect(phrase('tired', 11, 0.1)).toBe('11 reps since a break');
    expect(phrase('stops-running', 1, 0.1)).toBe('1 stop in a row before it');
    const calm = { factor: 'wind', from: 4, to: 0, logit: -0.2, chance: 0.02 } as const;
    expect(w.why.phrase(calm)).toBe('no cross-wind');
    expect(w.why.value('lapse', 0.01)).toBe('the same day');
    expect(w.why.value('newness', null)).toBe('not said');
    expect(w.why.value('late', 0.7)).toBe('70 %');
    expect(words('en-US', 'yards').why.value('distance', 18.288)).toBe('20 yd');
  });
});

/** Words that would judge the dog and not the work (screens: "never a verdict on the dog's character"). */
const CHARACTER = /\b(bad dog|stubborn|lazy|stupid|naughty|disobedien|dominan|wilful|hard-headed|soft)\w*/i;

const VALUE = fc.oneof(
  fc.double({ min: 0, max: 400, noNaN: true }),
  fc.boolean(),
  fc.constantFrom(...TEMPTATION_CODES, ...HANDLER_PLACE_CODES),
  fc.constant(null),
);
const CHANGED = fc.record({
  factor: fc.constantFrom(...FACTOR_CODES),
  from: VALUE,
  to: VALUE,
  logit: fc.double({ min: -4, max: 4, noNaN: true }),
  chance: fc.double({ min: -1, max: 1, noNaN: true }),
});
const CHANCE = fc.double({ min: 0, max: 1, noNaN: true });

describe.each(
  (['en-GB', 'en-US'] as const).flatMap((dialect) =>
    (['metres', 'yards'] as const).map((units): [Dialect, Units] => [dialect, units]),
  ),
)('why in %s and %s', (dialect, units) => {
  const { why } = words(dialect, units);
  const isSaid = (text: string) => {
    expect(text.trim()).not.toBe('');
    expect(text).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
    expect(text).not.toMatch(CHARACTER);
    if (dialect === 'en-US') expect(text).not.toMatch(/dumm(y|ies)|\bmetre/i);
  };

  it('has a sentence for every verdict, whatever changed', () => {
    fc.assert(
      fc.property(
        fc.record({
          skill: fc.constantFrom(...SKILL_CODES),
          grade: fc.constantFrom(...GRADE_CODES),
          verdict: fc.constantFrom(...VERDICT_CODES),
          chanceBefore: CHANCE,
          step: fc.option(fc.record({ chanceAtBase: CHANCE, changed: fc.array(CHANGED, { maxLength: 6 }) })),
        }),
        (leg) => {
          isSaid(why.sentence(leg));
          expect(why.sentence(leg)).toMatch(/^[A-Z].*\.$/);
          isSaid(`${why.title(leg.verdict)}. ${why.meaning(leg.verdict)}`);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('has a name and a value for everything that changes', () => {
    expect(new Set(FACTOR_CODES.map(why.factor)).size).toBe(FACTOR_CODES.length);
    fc.assert(
      fc.property(CHANGED, (change) => {
        for (const value of [change.from, change.to]) isSaid(why.value(change.factor, value));
        isSaid(why.phrase(change));
        isSaid(why.part(change.chance));
      }),
    );
  });
});
