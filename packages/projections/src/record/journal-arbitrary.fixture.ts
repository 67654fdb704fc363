import type { Fact } from '@sedgeline/journal';
import fc from 'fast-check';

const DOGS = ['d1', 'd2'] as const;
const SESSIONS = ['s1', 's2', 's3'] as const;
const REPS = ['r1', 'r2', 'r3', 'r4', 'r5', 'r6'] as const;
const GRADES = ['good', 'fair', 'missed'] as const;
const SKILLS = ['line', 'stop', 'cast-left', 'recall'] as const;

const leg = fc
  .record({
    skill: fc.constantFrom(...SKILLS),
    ask: fc.record({ distanceM: fc.integer({ min: 0, max: 80 }) }, { requiredKeys: [] }),
    grade: fc.constantFrom(...GRADES),
  })
  .chain((made) =>
    made.grade === 'good'
      ? fc.constant(made)
      : fc.record({ ...constants(made), cause: fc.constantFrom('dog', 'handler', 'setup', 'unsure') }),
  );

function constants<T extends object>(made: T): { [K in keyof T]: fc.Arbitrary<T[K]> } {
  return Object.fromEntries(Object.entries(made).map(([key, value]) => [key, fc.constant(value)])) as {
    [K in keyof T]: fc.Arbitrary<T[K]>;
  };
}

const legs = fc.array(leg, { maxLength: 4 });
const rep = fc.constantFrom(...REPS);
const session = fc.constantFrom(...SESSIONS);
const dog = fc.constantFrom(...DOGS);
const film = fc.constantFrom('m1', 'm2', 'm3');
const hash = fc.constantFrom('aa', 'bb');
const mark = fc.constantFrom('k1', 'k2', 'k3', 'k4');
const sound = fc.constantFrom('n1', 'n2', 'n3');
const frame = fc.constantFrom(0.02, 0.04);

const something: fc.Arbitrary<{ kind: string; body: Record<string, unknown> }> = fc.oneof(
  fc.record({
    kind: fc.constant('dog-added'),
    body: fc.record({ dog, name: fc.constantFrom('Bracken', 'Sorrel') }),
  }),
  fc.record({
    kind: fc.constant('session-opened'),
    body: fc.record({ session, dog, ground: fc.constantFrom('g1', 'g2') }),
  }),
  fc.record({
    kind: fc.constant('rep-recorded'),
    body: fc.record({ rep, session, legs, clean: fc.boolean() }),
  }),
  fc.record({ kind: fc.constant('rep-amended'), body: fc.record({ rep, legs }) }),
  fc.record({ kind: fc.constant('rep-struck'), body: fc.record({ rep }) }),
  fc.record({ kind: fc.constant('rep-ended'), body: fc.record({ rep, ended: fc.boolean() }) }),
  fc.record({ kind: fc.constant('break-taken'), body: fc.record({ session, minutes: fc.nat(9) }) }),
  fc.record({ kind: fc.constant('session-closed'), body: fc.record({ session }) }),
  fc.record({
    kind: fc.constant('film-linked'),
    body: fc.record(
      { film, session, name: fc.constantFrom('a.mp4', 'b.webm'), bytes: fc.nat(3), contentHash: hash },
      { requiredKeys: ['film', 'session', 'name', 'bytes'] },
    ),
  }),
  fc.record({
    kind: fc.constant('film-unlinked'),
    body: fc.record({ film, session, stands: fc.boolean() }, { requiredKeys: ['film', 'session'] }),
  }),
  fc.record({
    kind: fc.constant('film-marked'),
    body: fc.record({
      mark,
      film,
      rep,
      what: fc.constantFrom('sent', 'halt'),
      atS: fc.nat(2),
      frameS: frame,
    }),
  }),
  fc.record({
    kind: fc.constant('film-unmarked'),
    body: fc.record({ mark, film, rep, stands: fc.boolean() }, { requiredKeys: ['mark', 'film', 'rep'] }),
  }),
  fc.record({
    kind: fc.constant('sound-heard'),
    body: fc.record({
      sound,
      session,
      from: fc.constantFrom('file', 'microphone'),
      name: fc.constant('a.wav'),
      lengthS: fc.nat(9),
      whistles: fc.constant([]),
      clicks: fc.array(fc.record({ timeS: fc.nat(9) }), { maxLength: 2 }),
    }),
  }),
  fc.record({
    kind: fc.constant('sound-joined'),
    body: fc.record({
      sound,
      session,
      joins: fc.array(fc.record({ rep, atS: fc.nat(9), by: fc.constant('handler') }), { maxLength: 2 }),
    }),
  }),
  fc.record({
    kind: fc.constant('sound-dropped'),
    body: fc.record({ sound, session, stands: fc.boolean() }, { requiredKeys: ['sound', 'session'] }),
  }),
  fc.record({
    kind: fc.constant('level-stated'),
    body: fc.record(
      {
        dog,
        skill: fc.constantFrom(...SKILLS),
        farthestM: fc.integer({ min: 0, max: 400 }),
        ground: fc.constantFrom('home', 'known', 'new'),
        withdrawn: fc.boolean(),
      },
      { requiredKeys: ['dog', 'skill'] },
    ),
  }),
  fc.record({
    kind: fc.constant('ground-added'),
    body: fc.record({ ground: fc.constantFrom('g1', 'g2'), name: fc.constant('Long Acre') }),
  }),
  fc.record({
    kind: fc.constant('ground-put-away'),
    body: fc.record({ ground: fc.constantFrom('g1', 'g2'), back: fc.boolean() }),
  }),
  fc.record({ kind: fc.constant('of-another-kind'), body: fc.record({ anything: fc.nat() }) }),
);

/**
 * Journals as merges may leave them: a few dogs, sessions and reps named again and again, in no order, many at the
 * very same time, some with a clock and some without, some about reps and sessions that nobody recorded.
 */
export const journalArbitrary: fc.Arbitrary<Fact[]> = fc
  .array(fc.tuple(something, fc.nat(5), fc.option(fc.nat(2))), { maxLength: 40 })
  .map((made) =>
    made.map(([{ kind, body }, minute, counter], n) => ({
      id: `${n}/${kind}/${JSON.stringify(body)}/${minute}/${counter}`,
      kind,
      at: `2026-03-01T09:0${minute}:00Z`,
      body,
      ...(counter === null
        ? {}
        : { clock: `${Date.parse(`2026-03-01T09:0${minute}:00Z`)}-000${counter}-phone` }),
    })),
  );
