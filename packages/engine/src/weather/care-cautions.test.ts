import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CARE_CODES, type CareInput, careCautions } from './care-cautions.ts';

const codes = (input: CareInput) => careCautions(input).map(({ code }) => code);
const ALWAYS = ['water', 'whistle-at-the-ear', 'thrown', 'launched', 'livestock', 'roads', 'law'];

describe('cautions of a day', () => {
  it('on a fine day for a grown dog has what holds on every day', () => {
    expect(codes({ airC: 8, humidityPct: 60, ageMonths: 40 })).toEqual(ALWAYS);
  });

  it('says on a mild day that dogs were ill on such days', () => {
    expect(codes({ airC: 17, humidityPct: 60, ageMonths: 40 })[0]).toBe('mild-days-too');
  });

  it('a hot day: stop first, then the signs, cooling and the rise after work', () => {
    expect(codes({ airC: 34, humidityPct: 40, sun: 1, ageMonths: 40 }).slice(0, 5)).toEqual([
      'heat-stop',
      'in-the-sun',
      'heat-signs',
      'cool-first',
      'heat-after-work',
    ]);
    expect(careCautions({ airC: 30, ageMonths: 40 })[0]).toEqual({
      code: 'heat-short',
      defersTo: 'vet',
      source: 'Matwichuk1999',
      is: 30,
      // Contract, "A plan": at most 8 reps and 10 minutes.
      reps: 8,
      minutes: 10,
    });
    expect(codes({ airC: 25, humidityPct: 40, ageMonths: 40 })[0]).toBe('heat-care');
  });

  it('cold, cold water, age and load with their figures', () => {
    expect(codes({ airC: -3, waterC: 6, ageMonths: 40 }).slice(0, 2)).toEqual(['cold', 'cold-water']);
    expect(codes({ airC: 8, ageMonths: 5 }).slice(0, 2)).toEqual(['puppy', 'young-joints']);
    expect(codes({ airC: 8, ageMonths: 11 })[0]).toBe('young-joints');
    expect(codes({ airC: 8, ageMonths: 12 })).toEqual(ALWAYS);
    expect(codes({ airC: 8, ageMonths: 110 })[0]).toBe('old-dog');
    expect(codes({ airC: 8 })[0]).toBe('age-not-known');
    expect(
      careCautions({ airC: 8, ageMonths: 40, minutesThisWeek: 200, jumpsThisWeek: 41 }).slice(0, 2),
    ).toMatchObject([
      { code: 'load-minutes', is: 200, limit: 150 },
      { code: 'load-jumps', is: 41, limit: 40 },
    ]);
  });

  it('every caution names whose word goes first and its source, which the bibliography holds', () => {
    const bibliography = readFileSync(new URL('../../../../REFERENCES.bib', import.meta.url), 'utf8');
    const seen = new Set<string>();
    const days: CareInput[] = [
      { airC: 34, sun: 1, waterC: 4, minutesThisWeek: 999, jumpsThisWeek: 999, ageMonths: 3 },
      { airC: 30, ageMonths: 200 },
      { airC: 25 },
      { airC: 17 },
      { airC: -20 },
    ];
    for (const one of days.flatMap(careCautions)) {
      seen.add(one.code);
      expect(['vet', 'landowner', 'rules']).toContain(one.defersTo);
      if (one.source !== 'common practice') expect(bibliography).toContain(`{${one.source},`);
    }
    expect([...seen].sort()).toEqual([...CARE_CODES].sort());
  });
});
