import { mergeFacts } from '@sedgeline/journal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { journalArbitrary } from './journal-arbitrary.fixture.ts';
import { foldRecord, RecordBuilder } from './record-builder.ts';

/** The record as plain data: maps as entries, so that any difference shows, their order included. */
function plain(record: ReturnType<typeof foldRecord>) {
  return JSON.stringify(record, (_key, value) => (value instanceof Map ? [...value] : value));
}

describe('folding facts to the record: laws', () => {
  it('any order of the same facts, equal times included, folds to the same record', () => {
    fc.assert(
      fc.property(
        journalArbitrary.chain((facts) =>
          fc.record({
            facts: fc.constant(facts),
            shuffled: fc.shuffledSubarray(facts, { minLength: facts.length }),
          }),
        ),
        ({ facts, shuffled }) => plain(foldRecord(shuffled)) === plain(foldRecord(facts)),
      ),
      { numRuns: 300 },
    );
  });

  it('any split, with records looked at in between and facts said again, folds to the same record', () => {
    fc.assert(
      fc.property(journalArbitrary, fc.array(fc.nat(40), { maxLength: 5 }), (facts, cuts) => {
        const builder = new RecordBuilder();
        let from = 0;
        for (const cut of [...cuts].sort((a, b) => a - b)) {
          builder.add(facts.slice(from, cut));
          builder.add(facts.slice(0, from));
          builder.record();
          from = Math.max(from, cut);
        }
        builder.add(facts);
        return plain(builder.record()) === plain(foldRecord(facts));
      }),
      { numRuns: 300 },
    );
  });

  it('a struck rep stays struck, whatever is merged before or after', () => {
    fc.assert(
      fc.property(journalArbitrary, journalArbitrary, (mine, theirs) => {
        const struck = new Set(
          [...mine, ...theirs].filter((fact) => fact.kind === 'rep-struck').map((fact) => fact.body.rep),
        );
        const { facts } = mergeFacts(mine, theirs);
        for (const record of [foldRecord(facts), foldRecord([...facts].reverse())]) {
          const standing = record.sessions.flatMap((session) => session.reps.map(({ rep }) => rep));
          if (standing.some((rep) => struck.has(rep))) return false;
        }
        return true;
      }),
      { numRuns: 300 },
    );
  });

  it('counts every fact once: those that stand, those of unknown kinds and those set aside', () => {
    const facts = [
      {
        id: 'a',
        kind: 'rep-recorded',
        at: '2026-03-01T09:00:00Z',
        body: { rep: 'r', session: 's', legs: [] },
      },
      { id: 'b', kind: 'rep-amended', at: '2026-03-01T09:01:00Z', body: { rep: 'r', clean: true } },
      { id: 'c', kind: 'moon-seen', at: '2026-03-01T09:02:00Z', body: {} },
    ];
    expect(foldRecord(facts)).toMatchObject({ facts: 3, unknown: 1, setAside: 2, sessions: [] });
    const whole = foldRecord([
      ...facts,
      { id: 'd', kind: 'session-opened', at: '2026-03-01T08:59:00Z', body: { session: 's', dog: 'x' } },
      { id: 'e', kind: 'dog-added', at: '2026-03-01T08:58:00Z', body: { dog: 'x', name: 'Bracken' } },
    ]);
    expect(whole).toMatchObject({ facts: 5, unknown: 1, setAside: 0 });
    expect(whole.sessions[0]?.reps[0]).toMatchObject({ rep: 'r', clean: true, amendments: 1 });
  });
});
