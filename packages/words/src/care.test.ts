import { describe, expect, it } from 'vitest';
import type { ToldCareCaution } from './care.ts';
import { words } from './words.ts';

const CODES: readonly ToldCareCaution['code'][] = [
  'heat-stop',
  'heat-short',
  'heat-care',
  'heat-signs',
  'heat-after-work',
  'cool-first',
  'mild-days-too',
  'in-the-sun',
  'cold',
  'cold-water',
  'puppy',
  'young-joints',
  'old-dog',
  'age-not-known',
  'load-minutes',
  'load-jumps',
  'water',
  'whistle-at-the-ear',
  'thrown',
  'launched',
  'livestock',
  'roads',
  'law',
];
const whole = { is: 31, limit: 12, reps: 8, minutes: 10, lineM: 80 };

describe('words of care', () => {
  it.each(CODES)('%s: sentences that end, and whose word goes first, with and without figures', (code) => {
    for (const say of [words().care, words('en-US', 'yards').care])
      for (const figures of [whole, {}])
        for (const [defersTo, first] of [
          ['vet', 'Your vet’s word goes first.'],
          ['landowner', 'The landowner’s word goes first.'],
          ['rules', 'The law and local rules go first.'],
        ] as const) {
          const said = say.caution({ code, defersTo, ...figures });
          expect(said).toMatch(/^[A-Z0-9].*[.!]$/);
          expect(said.endsWith(first)).toBe(true);
          expect(said).not.toMatch(/undefined|NaN|null/);
        }
  });

  it('tells figures and lengths in the tongue’s own units and words', () => {
    const young = { code: 'young-joints', defersTo: 'vet', limit: 12, lineM: 80 } as const;
    expect(words().care.caution(young)).toContain('no line over 80 metres');
    // 80 m are 87.49 yards.
    expect(words('en-US', 'yards').care.caution(young)).toContain('no line over 87 yards');
    const launched = { code: 'launched', defersTo: 'rules' } as const;
    expect(words().care.caution(launched)).toMatch(/^Launched dummies: never at or over/);
    expect(words('en-US').care.caution(launched)).toMatch(/^Launched bumpers: never at or over/);
    expect(words().care.caution({ code: 'heat-short', defersTo: 'vet', ...whole })).toContain(
      '31 °C: 8 reps and 10 minutes',
    );
  });
});

describe('words of the weather, the whistle and the layout', () => {
  it('can’t say a wet bulb that is none', () => {
    const felt = { level: 'fine', heatIndexC: -30, wetBulbC: null, wbgtC: -12, apparentC: -34 } as const;
    expect(words().weather.rows(felt)[1]).toEqual(['wet bulb', 'can’t say']);
    for (const level of ['fine', 'care', 'short', 'stop'] as const)
      expect(words().weather.level(level)).toMatch(/^[A-Z].*\.$/);
  });

  it('says a stop in metres and in yards', () => {
    const early = { code: 'too-late', haltsAtM: 9.144 } as const;
    expect(words().whistle.caution(early)).toContain('halts at 9.1 m');
    expect(words('en-GB', 'yards').whistle.caution(early)).toContain('halts at 10 yd');
    const ears = { code: 'ears', levelDb: 105, limitDb: 85, allowedS: 283 } as const;
    expect(words().whistle.caution(ears)).toContain('5 minutes of blowing');
    expect(words().whistle.caution({ ...ears, allowedS: 22 })).toContain('22 seconds of blowing');
  });

  it('says every warning of a layout in a sentence', () => {
    const pair = { to: 'the oak', thing: 'the wire', gapDeg: 7.4, clearanceM: 2.25, downwindM: 12 };
    const warnings = [
      { code: 'hazard-on-line', ...pair },
      { code: 'hazard-near-line', ...pair },
      { code: 'on-the-way', ...pair },
      { code: 'beyond-in-line', ...pair },
      { code: 'narrow-gap', ...pair },
      { code: 'scent-across', ...pair },
      { code: 'passes-handler', to: 'the oak', clearanceM: 2 },
      { code: 'longer-than-an-ask', to: 'the oak', distanceM: 420 },
      { code: 'at-send-point', thing: 'The wire', distanceM: 0.2 },
      { code: 'together', thing: 'The wire', other: 'the oak', distanceM: 0 },
      { code: 'send-apart', distanceM: 12, bearingDeg: 200 },
      { code: 'same-name', thing: 'd1', count: 2 },
      { code: 'wind-half-told', missing: 'windFromDeg' },
      { code: 'wind-half-told', missing: 'windMPerS' },
      { code: 'no-line' },
    ] as const;
    const said = warnings.map((one) => words().layout.warning(one));
    for (const sentence of said) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
    expect(new Set(said).size).toBe(warnings.length);
    expect(said[1]).toContain('2.3 m off it');
    expect(said[4]).toContain('7°');
  });
});
