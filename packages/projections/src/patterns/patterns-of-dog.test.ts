import type { Fact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { patternsAnswer } from '../answers/patterns-answer.ts';
import { foldRecord } from '../record/record-builder.ts';
import { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { patternsOfDog } from './patterns-of-dog.ts';

const fact = (id: string, kind: string, minute: number, body: object): Fact => ({
  id,
  kind,
  at: new Date(Date.parse('2026-03-01T09:00:00Z') + minute * 60_000).toISOString(),
  body: { ...body },
});

/** Forty stops of two dogs in one session each: every other one of Sorrel's is the handler's, none of Teal's. */
const FACTS: readonly Fact[] = [
  ...['sorrel', 'teal'].flatMap((dog) => [
    fact(`${dog} added`, 'dog-added', 0, { dog, name: dog }),
    fact(`${dog} opened`, 'session-opened', 1, { session: `s ${dog}`, dog }),
    ...Array.from({ length: 40 }, (_, n) =>
      fact(`${dog} ${n}`, 'rep-recorded', 2 + n, {
        rep: `${dog} ${n}`,
        session: `s ${dog}`,
        legs: [
          {
            skill: 'stop',
            ask: { distanceM: 20 },
            ...(dog === 'sorrel' && n % 2 === 0 ? { grade: 'missed', cause: 'handler' } : { grade: 'good' }),
          },
        ],
      }),
    ),
    // Three sends straight through, the last with the dog hanging back.
    ...[0, 1, 2].map((n) =>
      fact(`${dog} clean ${n}`, 'rep-recorded', 50 + n, {
        rep: `${dog} clean ${n}`,
        session: `s ${dog}`,
        clean: true,
        ...(n === 2 ? { expectation: 'hangs-back' } : {}),
        legs: [{ skill: 'line', ask: { distanceM: 30 }, grade: 'good' }],
      }),
    ),
  ]),
];

function walked() {
  const record = foldRecord(FACTS);
  const walk = new AbilityTimeline();
  walk.update(record);
  return { record, walk };
}

/** Thirty good stops at 20 m of one dog, planned at these distances in turn. */
function stopsPlannedAt(plannedM: readonly (number | null)[]) {
  const facts = [
    fact('added', 'dog-added', 0, { dog: 'd', name: 'd' }),
    fact('opened', 'session-opened', 1, { session: 's', dog: 'd' }),
    ...Array.from({ length: 30 }, (_, n) => {
      const distanceM = plannedM[n % plannedM.length] ?? null;
      const planned = distanceM === null ? {} : { planned: { distanceM } };
      const legs = [{ skill: 'stop', ask: { distanceM: 20 }, grade: 'good', ...planned }];
      return fact(`rep ${n}`, 'rep-recorded', 2 + n, { rep: `rep ${n}`, session: 's', legs });
    }),
  ];
  const record = foldRecord(facts);
  const walk = new AbilityTimeline();
  walk.update(record);
  const { patterns } = patternsOfDog(record, walk, 'd')!;
  return patterns.find(({ pattern }) => pattern === 'late-whistle')!;
}

describe('the whistle against its plan', () => {
  it('counts as late where the stop came farther out than planned, however it went', () => {
    expect(stopsPlannedAt([14, null, null]).evidence[0]).toMatchObject({ legs: 30, share: 1 / 3 });
    expect(stopsPlannedAt([14]).state).toBe('looks-like');
  });

  it('and not where it came nearer, or as good as there', () => {
    expect(stopsPlannedAt([26, 19.5, null]).evidence[0]).toMatchObject({ legs: 30, share: 0 });
  });
});

describe('patterns of a dog', () => {
  const { record, walk } = walked();

  it('are of that dog alone, causes and clean sends with it', () => {
    const sorrel = patternsOfDog(record, walk, 'sorrel')!;
    const teal = patternsOfDog(record, walk, 'teal')!;
    const late = (view: typeof sorrel) => view.patterns.find(({ pattern }) => pattern === 'late-whistle')!;
    expect([sorrel.legs, teal.legs]).toEqual([43, 43]);
    expect(late(sorrel)).toMatchObject({
      state: 'looks-like',
      evidence: [{ of: 'stops', legs: 40, share: 0.5 }],
    });
    expect(late(teal)).toMatchObject({ state: 'nothing', evidence: [{ of: 'stops', legs: 40, share: 0 }] });
    const expects = sorrel.patterns.find(({ pattern }) => pattern === 'expects-the-whistle')!;
    expect(expects).toMatchObject({ state: 'cant-say', tooLittle: { of: 'clean-sends', have: 3, need: 15 } });
  });

  it('come with the share of clean sends, and the chance of expecting the whistle at it', () => {
    const { clean } = patternsOfDog(record, walk, 'sorrel')!;
    expect(clean.share).toBeGreaterThanOrEqual(0.2);
    expect(clean.share).toBeLessThanOrEqual(0.6);
    expect(clean.expectation.mean).toBeGreaterThan(0);
    expect(clean.expectation.mean).toBeLessThan(1);
  });

  it('answer with the fields of the contract, all seven, and no dog for one that no fact names', () => {
    const answer = patternsAnswer(record, walk, 'sorrel', ({ pattern }) => `said ${pattern}`)!;
    expect(answer.patterns).toHaveLength(7);
    for (const { pattern, strength, probability, evidence, sentence } of answer.patterns) {
      expect(sentence).toBe(`said ${pattern}`);
      expect(Number.isFinite(strength.mean + strength.sd + probability)).toBe(true);
      expect(Array.isArray(evidence)).toBe(true);
    }
    expect(patternsAnswer(record, walk, 'nobody', () => '')).toBeNull();
  });
});
