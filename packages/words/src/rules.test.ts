import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RULE_MEND_CODES, RULE_NAMES, RULE_WHY_CODES, type RuleVerdict } from './rule-codes.ts';
import type { Ask } from './vocabulary.ts';
import { words } from './words.ts';

const not = (why: RuleVerdict['why'], mend: RuleVerdict['mend']): RuleVerdict => ({
  rule: 'one-thing-at-a-time',
  kept: false,
  why,
  mend,
});

describe('rules in words', () => {
  const two = not(
    {
      code: 'raises-too-much',
      reps: [4],
      fields: ['distanceM', 'temptation'],
      to: { distanceM: 50, temptation: 'thrown-dummy' },
    },
    { code: 'keep-one-thing', reps: [4] },
  );

  it('says what is raised, in the dialect', () => {
    expect(words('en-GB').rules.sentence(two)).toBe(
      'Rep 4 raises two things: distance and a thrown dummy. Keep one.',
    );
    expect(words('en-US').rules.sentence(two)).toBe(
      'Rep 4 raises two things: distance and a thrown bumper. Keep one.',
    );
  });

  const said: readonly (readonly [RuleVerdict, string])[] = [
    [
      not(
        { code: 'over-the-time', reps: [], is: 17.2, limit: 15 },
        { code: 'drop-reps', reps: [2, 3], to: 9 },
      ),
      'It takes 17 minutes, longer than the time there is: 15 minutes. Drop some: 9 reps will do.',
    ],
    [
      not({ code: 'over-the-time', reps: [], is: 15.2, limit: 15 }, undefined),
      'It takes 15.2 minutes, longer than the time there is: 15 minutes.',
    ],
    [
      not(
        { code: 'sides-uneven', reps: [2, 3, 5], left: 3, right: 1 },
        { code: 'turn-to-the-other-side', reps: [5], side: 'right' },
      ),
      'The sides are not even: 3 casts to the left, 1 to the right. Cast to the right in rep 5.',
    ],
    [
      not(
        { code: 'out-of-reach', reps: [3, 5], is: 0.6, limit: 0.65 },
        { code: 'take-the-easier', reps: [3, 5] },
      ),
      'Reps 3 and 5 are out of reach: 60 in 100, where 65 is the least. Take the easier way in reps 3 and 5.',
    ],
    [
      not(
        { code: 'too-long-without-break', reps: [13], count: 13, minutes: 11 },
        { code: 'put-in-a-break', reps: [7], to: 3 },
      ),
      '13 reps, 11 minutes without a break by the end of rep 13. Take a break after rep 7, 3 minutes.',
    ],
    [
      not(
        { code: 'too-much-for-the-heat', reps: [9], count: 9, limit: 8 },
        { code: 'drop-reps', reps: [2], to: 8 },
      ),
      'Too much for the heat: 9 reps, 8 at most. None at all may be right. Drop some: 8 reps will do.',
    ],
    [{ rule: 'safe', kept: true }, 'Safe for age and heat.'],
  ];
  it.each(said)('%j', (verdict, sentence) => {
    expect(words().rules.sentence(verdict)).toBe(sentence);
  });

  it('says lengths in the unit that is shown', () => {
    const far = not(
      { code: 'line-too-long-for-age', reps: [3], is: 100, limit: 80 },
      { code: 'shorten-the-line', reps: [3], to: 80 },
    );
    // 100 m are 109.36 yards and 80 m are 87.49 (1 yard is 0.9144 m).
    expect(words('en-US', 'yards').rules.sentence(far)).toBe(
      'Rep 3 runs a dog under a year 109 yards: 87 yards at most. Shorten it to 87 yards or less.',
    );
  });

  it('has a name for every rule and a sentence for every code, whatever figures come with it', () => {
    for (const rule of RULE_NAMES) expect(words().rules.title(rule)).toMatch(/^[A-Z]/);
    const optional = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
    const share = optional(fc.double({ min: 0, max: 1, noNaN: true }));
    const field = fc.constantFrom<keyof Ask>(
      'distanceM',
      'temptation',
      'handlerPlace',
      'obstacle',
      'gapDeg',
      'blind',
    );
    const verdict = fc.record({
      rule: fc.constantFrom(...RULE_NAMES),
      kept: fc.constant(false),
      why: fc.record({
        code: fc.constantFrom(...RULE_WHY_CODES),
        reps: fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 3 }),
        fields: optional(fc.array(field, { maxLength: 3 })),
        is: share,
        limit: share,
        left: optional(fc.nat(9)),
        count: optional(fc.nat(20)),
        minutes: share,
      }),
      mend: fc.record({
        code: fc.constantFrom(...RULE_MEND_CODES),
        reps: fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 3 }),
        fields: optional(fc.array(field, { maxLength: 3 })),
        to: share,
      }),
    });
    for (const dialect of ['en-GB', 'en-US'] as const) {
      const { rules } = words(dialect);
      fc.assert(
        fc.property(verdict, (each) => {
          const text = rules.sentence(each);
          expect(text).toMatch(/^[A-Z0-9].*\.$/);
          expect(text).not.toMatch(/undefined|NaN|null|\[object|:\.| {2}/);
          if (dialect === 'en-US') expect(text).not.toMatch(/dumm(y|ies)|\bmetre/i);
        }),
        { numRuns: 400 },
      );
    }
  });
});
