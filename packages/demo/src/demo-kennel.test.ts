import { checkJournal, type FactBodies, validateFact, writeJournal } from '@sedgeline/journal';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoKennel } from './demo-kennel.ts';
import { bodiesOf, seenReps } from './seen-reps.ts';

const SEEDS = [0, 1, 2, 3, 7, 2026];
const DAY_MS = 86_400_000;

describe('the same seed', () => {
  test('gives the same bytes', () => {
    expect(writeJournal(demoKennel(7))).toBe(writeJournal(demoKennel(7)));
  });
  test('is told apart from another, near or far above 32 bits', () => {
    const journals = [7, 8, 7 + 2 ** 32, 7 + 2 ** 40].map((seed) => writeJournal(demoKennel(seed)));
    const withoutIds = journals.map((text) => text.replaceAll(/demo-\d+-/g, ''));
    expect(new Set(withoutIds).size).toBe(4);
  });
  test.each([-1, 1.5, Number.NaN, 2 ** 53])('%s is no seed', (seed) => {
    expect(() => demoKennel(seed)).toThrow(RangeError);
  });
});

describe('the record is a good journal', () => {
  test('for any seed: no error, no warning, no unknown kind', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const checked = checkJournal(writeJournal(demoKennel(seed)));
        expect(checked).toMatchObject({ errors: [], warnings: [], unknown: 0, repeats: 0 });
      }),
      { numRuns: 25, seed: 1 },
    );
  });
  test('each fact passes its schema and its clock is later than the one before', () => {
    const facts = demoKennel(7);
    for (const [at, fact] of facts.entries()) {
      expect(validateFact(fact)).toMatchObject({ ok: true });
      const before = facts[at - 1];
      if (before?.clock !== undefined) expect(fact.clock! > before.clock).toBe(true);
      expect(Number(fact.clock!.slice(0, 13))).toBe(Date.parse(fact.at));
    }
  });
});

describe.each(SEEDS)('seed %i tells of a kennel', (seed) => {
  const facts = demoKennel(seed);
  const bodies = <Kind extends keyof FactBodies>(kind: Kind) => bodiesOf(facts, kind);
  const timeOf = (kind: string, session: string) =>
    Date.parse(facts.find(({ kind: k, body }) => k === kind && body.session === session)?.at ?? '');

  test('that says it is invented: people, grounds, the first session', () => {
    for (const { name } of bodies('handler-added')) expect(name).toMatch(/invented/);
    for (const { note } of bodies('ground-added')) expect(note).toMatch(/[Ii]nvented/);
    for (const { name } of bodies('goal-set')) expect(name).toMatch(/invented/);
    expect(bodies('session-closed')[0]?.note).toMatch(/invented/);
  });
  test('of three dogs over eight months, to the fixed last day', () => {
    expect(bodies('dog-added')).toHaveLength(3);
    expect(new Set(bodies('session-opened').map(({ dog }) => dog)).size).toBe(3);
    const opened = facts.filter(({ kind }) => kind === 'session-opened').map(({ at }) => at);
    expect(opened.at(-1)?.slice(0, 10)).toBe('2026-11-21');
    expect(Date.parse(opened.at(-1)!) - Date.parse(opened[0]!)).toBeGreaterThan(240 * DAY_MS);
  });
  test('with 1,800 to 3,000 legs, in sessions of 8 to 14 reps and 15 to 25 minutes, each with a break, all closed', () => {
    const reps = seenReps(seed);
    const legs = reps.reduce((sum, { body }) => sum + body.legs.length, 0);
    expect(legs).toBeGreaterThanOrEqual(1800);
    expect(legs).toBeLessThanOrEqual(3000);
    for (const { session } of bodies('session-opened')) {
      const count = reps.filter((rep) => rep.session === session).length;
      expect(count, session).toBeGreaterThanOrEqual(8);
      expect(count, session).toBeLessThanOrEqual(14);
      const minutes = (timeOf('session-closed', session) - timeOf('session-opened', session)) / 60_000;
      expect(minutes, session).toBeGreaterThanOrEqual(15);
      expect(minutes, session).toBeLessThanOrEqual(25);
      expect(bodies('break-taken').filter((taken) => taken.session === session)).toHaveLength(1);
    }
  });
  test('with two to four sessions a week, but for the holiday and the days when dogs were off', () => {
    const weeks = new Map<number, number>();
    for (const { at, kind } of facts) {
      const week = Math.floor((Date.parse(at) - Date.UTC(2026, 2, 21)) / (7 * DAY_MS));
      if (kind === 'session-opened') weeks.set(week, (weeks.get(week) ?? 0) + 1);
    }
    const usual = [...weeks].filter(([week]) => week !== 20 && week !== 35).map(([, count]) => count);
    expect(usual).toHaveLength(34);
    expect(weeks.has(20)).toBe(false);
    expect(Math.min(...usual)).toBeGreaterThanOrEqual(2);
    expect(Math.max(...usual)).toBeLessThanOrEqual(4);
  });
  test('with misses that were not held against the dog, reps struck and put right, lay-offs', () => {
    const excused = seenReps(seed).flatMap(({ body }) =>
      body.legs.filter(
        ({ grade, cause }) => grade === 'missed' && (cause === 'handler' || cause === 'setup'),
      ),
    );
    expect(excused.length).toBeGreaterThan(0);
    expect(bodies('rep-struck').length).toBeGreaterThan(0);
    expect(bodies('rep-amended').length).toBeGreaterThan(0);
    const rookInJuly = facts.filter(
      ({ kind, body, at }) =>
        kind === 'session-opened' && body.dog === 'rook' && at >= '2026-07-06' && at < '2026-07-25',
    );
    expect(rookInJuly).toEqual([]);
  });
});
