import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fact } from './fact.ts';
import { mergeFacts } from './merge.ts';
import { compareFacts, orderFacts } from './order.ts';
import { readJournal, writeJournal } from './read-lines.ts';

/** Few times, counters, devices and ids, so that equal ones are common; `note` makes contents differ at will. */
const clock = fc
  .tuple(
    fc.integer({ min: 1772355600000, max: 1772355600002 }),
    fc.integer({ min: 0, max: 2 }),
    fc.constantFrom('a', 'b', 'a-b'),
  )
  .map(([ms, counter, device]) => `${ms}-${counter.toString(16).padStart(4, '0')}-${device}`);

const factWithId = (id: string, note: fc.Arbitrary<string>): fc.Arbitrary<Fact> =>
  fc
    .record({
      at: fc.constantFrom('2026-03-01T09:00:00Z', '2026-03-01T10:00:00+01:00', '2026-03-01T09:00:00.001Z'),
      clock: fc.option(clock, { nil: undefined }),
      note,
    })
    .map((parts) => ({
      id,
      kind: 'mark-set',
      at: parts.at,
      body: { note: parts.note },
      ...(parts.clock === undefined ? {} : { clock: parts.clock }),
    }));

/** Facts whose ids are all different. */
const distinctFacts = fc
  .uniqueArray(fc.stringMatching(/^[a-z]{1,3}$/), { maxLength: 12 })
  .chain((ids) => fc.tuple(...ids.map((id) => factWithId(id, fc.constant('')))));

/** Facts of which several may have one id and say different things. */
const quarrellingFacts = fc.array(
  fc.constantFrom('x', 'y', 'z').chain((id) => factWithId(id, fc.constantFrom('', 'one', 'two'))),
  { maxLength: 8 },
);

describe('the journal is one, however its facts arrive', () => {
  it('gives the same journal for any order and any split of the facts, equal times included', () => {
    const shuffledAndSplit = distinctFacts.chain((facts) =>
      fc.record({
        facts: fc.constant(facts),
        shuffled: fc.shuffledSubarray(facts, { minLength: facts.length }),
        parts: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: facts.length, maxLength: facts.length }),
      }),
    );
    fc.assert(
      fc.property(shuffledAndSplit, ({ facts, shuffled, parts }) => {
        const lists = [0, 1, 2, 3].map((part) => shuffled.filter((_, i) => parts[i] === part));
        expect(mergeFacts(...lists).facts).toEqual(orderFacts(facts));
        expect(readJournal(writeJournal(shuffled)).facts).toEqual(orderFacts(facts));
      }),
    );
  });

  it('merges commutatively, associatively and idempotently, even where one id says two things', () => {
    fc.assert(
      fc.property(quarrellingFacts, quarrellingFacts, quarrellingFacts, (a, b, c) => {
        const merge = (...lists: (readonly Fact[])[]) => mergeFacts(...lists).facts;
        expect(merge(a, b)).toEqual(merge(b, a));
        expect(merge(merge(a, b), c)).toEqual(merge(a, merge(b, c)));
        expect(merge(merge(a), merge(a))).toEqual(merge(a));
      }),
    );
  });

  it('loses no id and reports every quarrel', () => {
    fc.assert(
      fc.property(quarrellingFacts, quarrellingFacts, (a, b) => {
        const merged = mergeFacts(a, b);
        const ids = new Set([...a, ...b].map((fact) => fact.id));
        expect(new Set(merged.facts.map((fact) => fact.id))).toEqual(ids);
        expect(merged.facts.length).toBe(ids.size);
        for (const id of ids) {
          const contents = new Set(
            [...a, ...b].filter((fact) => fact.id === id).map((fact) => JSON.stringify(fact)),
          );
          const reported = merged.conflicts.some((conflict) => conflict.id === id);
          expect(reported).toBe(contents.size > 1);
        }
      }),
    );
  });

  it('reads the same facts from the lines in any order, even where one id says two things', () => {
    const shuffled = quarrellingFacts.chain((facts) =>
      fc.tuple(fc.constant(facts), fc.shuffledSubarray(facts, { minLength: facts.length })),
    );
    fc.assert(
      fc.property(shuffled, ([facts, others]) => {
        expect(readJournal(writeJournal(others)).facts).toEqual(readJournal(writeJournal(facts)).facts);
      }),
    );
  });
});

describe('the order', () => {
  it('is total: antisymmetric, transitive, and equal only for equal ids', () => {
    fc.assert(
      fc.property(quarrellingFacts, (facts) => {
        for (const a of facts) {
          for (const b of facts) {
            expect(Math.sign(compareFacts(a, b)) + Math.sign(compareFacts(b, a))).toBe(0);
            if (compareFacts(a, b) === 0) expect(a.id).toBe(b.id);
            for (const c of facts) {
              if (compareFacts(a, b) < 0 && compareFacts(b, c) < 0)
                expect(compareFacts(a, c)).toBeLessThan(0);
            }
          }
        }
      }),
    );
  });

  // Written out by hand from the rule: clock (milliseconds, counter, device), then id; no clock is (`at`, 0, '').
  it('puts clock before id, and a fact without a clock at its time with counter 0 and no device', () => {
    const fact = (id: string, clock?: string): Fact => ({
      id,
      kind: 'mark-set',
      at: '2026-03-01T09:00:00Z',
      body: {},
      ...(clock === undefined ? {} : { clock }),
    });
    const inOrder = [
      fact('z', '1772355599999-ffff-b'),
      fact('m'),
      fact('n'),
      fact('y', '1772355600000-0000-a'),
      fact('b', '1772355600000-0000-b'),
      fact('c', '1772355600000-0000-b'),
      fact('a', '1772355600000-000f-a'),
      fact('d', '1772355600000-0010-a'),
      fact('e', '1772355600001-0000-a'),
    ];
    expect(orderFacts(inOrder.toReversed())).toEqual(inOrder);
  });
});
