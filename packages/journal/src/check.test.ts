import { describe, expect, it } from 'vitest';
import { checkJournal } from './check.ts';
import { readJournal } from './read-lines.ts';
import { setAsideOrphans } from './references.ts';

let ids = 0;
const line = (kind: string, body: object, more: object = {}) => {
  ids += 1;
  return JSON.stringify({ id: `f${ids}`, kind, at: '2026-03-01T09:00:00Z', body, ...more });
};
const dog = (id = 'd1') => line('dog-added', { dog: id, name: 'Wren' });
const session = (id = 's1', more: object = {}) => line('session-opened', { session: id, dog: 'd1', ...more });
const rep = (id = 'r1', more: object = {}) =>
  line('rep-recorded', { rep: id, session: 's1', legs: [], ...more });
const check = (...lines: string[]) => {
  const { facts, kinds, unknown, repeats, warnings, errors } = checkJournal(lines.join('\n'));
  const short = (all: typeof errors) => all.map((one) => `${one.line} ${one.code} ${one.field}`.trim());
  return { facts, kinds, unknown, repeats, warnings: short(warnings), errors: short(errors) };
};

describe('checkJournal', () => {
  it('answers with exactly the fields of the manual', () => {
    expect(checkJournal('')).toEqual({
      facts: 0,
      kinds: {},
      unknown: 0,
      repeats: 0,
      warnings: [],
      errors: [],
    });
  });

  it('counts facts, kinds, unknown kinds and repeats', () => {
    const twice = dog();
    const answer = check(
      twice,
      session(),
      rep('r1'),
      rep('r2'),
      line('moon-seen', {}),
      line('__proto__', {}),
      twice,
    );
    expect(answer).toEqual({
      facts: 6,
      kinds: Object.fromEntries([
        ['__proto__', 1],
        ['dog-added', 1],
        ['moon-seen', 1],
        ['rep-recorded', 2],
        ['session-opened', 1],
      ]),
      unknown: 2,
      repeats: 1,
      warnings: [],
      errors: [],
    });
  });

  it('does not mind in which order the lines stand', () => {
    expect(check(line('rep-struck', { rep: 'r1' }), rep(), session(), dog()).errors).toEqual([]);
  });

  it('tells of a dog, a session and a rep that no fact names, with line and field', () => {
    const answer = check(
      session('s1'),
      rep('r1', { session: 'none' }),
      line('rep-amended', { rep: 'none' }),
      line('rep-struck', { rep: 'none' }),
      line('break-taken', { session: 'none', minutes: 3 }),
      line('session-closed', { session: 'none' }),
      line('goal-set', { goal: 'o1', dog: 'none', name: 'n', asks: [] }),
      line('rep-ended', { rep: 'none' }),
      line('session-focused', { session: 'none', skill: 'stop' }),
      line('break-started', { session: 'none', minutes: 3 }),
    );
    expect(answer.errors).toEqual([
      '1 UNKNOWN_DOG body.dog',
      '2 UNKNOWN_SESSION body.session',
      '3 UNKNOWN_REP body.rep',
      '4 UNKNOWN_REP body.rep',
      '5 UNKNOWN_SESSION body.session',
      '6 UNKNOWN_SESSION body.session',
      '7 UNKNOWN_DOG body.dog',
      '8 UNKNOWN_REP body.rep',
      '9 UNKNOWN_SESSION body.session',
      '10 UNKNOWN_SESSION body.session',
    ]);
    expect(answer.facts).toBe(10);
  });

  it('warns of a ground, a handler and a layout that no fact names, and goes on', () => {
    const answer = check(
      dog(),
      session('s1', { ground: 'none', handler: 'none', layout: 'none' }),
      rep('r1', { layout: 'none' }),
      line('layout-drawn', { layout: 'l1', ground: 'none', handlerAt: { eastM: 0, northM: 0 }, things: [] }),
    );
    expect(answer.errors).toEqual([]);
    expect(answer.warnings).toEqual([
      '2 UNKNOWN_HANDLER body.handler',
      '2 UNKNOWN_GROUND body.ground',
      '2 UNKNOWN_LAYOUT body.layout',
      '3 UNKNOWN_LAYOUT body.layout',
      '4 UNKNOWN_GROUND body.ground',
    ]);
  });

  it('tells one mistake once: what hangs on a bad line that still names its dog is not told again', () => {
    const badDog = line('dog-added', { dog: 'd1', name: 5 });
    expect(check(badDog, session(), rep()).errors).toEqual(['1 FIELD_TYPE body.name']);
  });

  it('gives problems in order of lines, bad lines and unknown names together', () => {
    expect(
      check(dog(), rep('r1', { session: 'none' }), 'xx', session('s9', { dog: 'none' }), '{"id').errors,
    ).toEqual(['2 UNKNOWN_SESSION body.session', '3 LINE_NOT_JSON', '4 UNKNOWN_DOG body.dog', '5 LINE_TORN']);
  });

  it('warns of a text that was not UTF-8', () => {
    expect(check(line('moon-seen', { note: 'H\ufffdndin' })).warnings).toEqual(['1 TEXT_DAMAGED']);
  });
});

describe('setAsideOrphans', () => {
  it('sets aside what hangs on something that is not there, and what hangs on that', () => {
    const text = [
      dog(),
      session('s1'),
      rep('r1'),
      session('s2', { dog: 'none' }),
      rep('r2', { session: 's2' }),
      line('rep-amended', { rep: 'r2', clean: true }),
      line('rep-struck', { rep: 'r1' }),
      line('moon-seen', { session: 'none' }),
    ];
    const { facts } = readJournal(text.join('\n'));
    const parted = setAsideOrphans(facts);
    expect(parted.setAside.map((fact) => fact.body.session ?? fact.body.rep).sort()).toEqual([
      'r2',
      's2',
      's2',
    ]);
    expect(parted.facts.length).toBe(5);
  });

  it('takes them up again once a merge has brought what was missing', () => {
    const { facts } = readJournal([session('s1'), rep('r1')].join('\n'));
    expect(setAsideOrphans(facts).facts).toEqual([]);
    const merged = readJournal([session('s1'), rep('r1'), dog()].join('\n')).facts;
    expect(setAsideOrphans(merged).setAside).toEqual([]);
  });
});
