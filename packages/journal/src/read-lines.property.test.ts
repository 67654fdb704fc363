import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkJournal } from './check.ts';
import { readJournal } from './read-lines.ts';

const goodLine = (n: number) =>
  `{"id":"good-${n}","kind":"dog-added","at":"2026-03-01T09:00:00Z","body":{"dog":"d${n}","name":"Wren"}}`;

/** Lines of anything: bytes, JSON of any shape, good lines cut, doubled or with a piece replaced. */
const anyBytes = fc
  .uint8Array({ maxLength: 60 })
  .map((bytes) => new TextDecoder().decode(bytes).replaceAll('\n', ' '));
const anyJson = fc.json({ maxDepth: 4 }).map((json) => json.replaceAll('\n', ' '));
const likeAFact = fc
  .record({
    id: fc.oneof(fc.string(), fc.jsonValue()),
    kind: fc.oneof(
      fc.constantFrom('dog-added', 'rep-recorded', 'layout-drawn', 'goal-set', '__proto__'),
      fc.jsonValue(),
    ),
    at: fc.oneof(fc.constant('2026-03-01T09:00:00Z'), fc.jsonValue()),
    body: fc.oneof(
      fc.jsonValue(),
      fc.dictionary(
        fc.constantFrom('dog', 'rep', 'session', 'legs', 'things', 'asks', 'name', 'born'),
        fc.jsonValue(),
      ),
    ),
    clock: fc.jsonValue(),
  })
  .map((value) => JSON.stringify(value));
const spoiled = fc
  .tuple(fc.integer({ min: 1000, max: 1100 }), fc.nat(120), fc.nat(120), fc.string({ maxLength: 5 }))
  .map(([n, from, to, put]) => goodLine(n).slice(0, from) + put.replaceAll('\n', '') + goodLine(n).slice(to));
const hostileLine = fc.oneof(anyBytes, anyJson, likeAFact, spoiled);

describe('hostile lines', () => {
  it('never throw and never lose a good line', () => {
    fc.assert(
      fc.property(fc.array(fc.option(hostileLine, { nil: null }), { maxLength: 30 }), (lines) => {
        const text = lines.map((hostile, n) => hostile ?? goodLine(n)).join('\n');
        const ids = new Set(readJournal(text).facts.map((fact) => fact.id));
        const good = lines.flatMap((hostile, n) => (hostile === null ? [`good-${n}`] : []));
        expect(good.filter((id) => !ids.has(id))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('are told each with its line and a code, or are facts', () => {
    fc.assert(
      fc.property(fc.array(hostileLine, { maxLength: 20 }), (lines) => {
        const { facts, repeats, errors, badLines } = readJournal(lines.join('\n'));
        const spoken = lines.filter((line) => line.trim() !== '').length;
        expect(facts.length + repeats + badLines.length).toBe(spoken);
        const told = new Set(errors.map((error) => error.line));
        expect([...told]).toEqual(badLines.map((bad) => bad.line));
      }),
      { numRuns: 300 },
    );
  });

  it('make no check fail to answer', () => {
    fc.assert(
      fc.property(fc.array(hostileLine, { maxLength: 20 }), (lines) => {
        const answer = checkJournal(lines.join('\n'));
        const counted = Object.values(answer.kinds).reduce((sum, count) => sum + count, 0);
        expect(counted).toBe(answer.facts);
      }),
    );
  });
});
