import { describe, expect, it } from 'vitest';
import { ASK_RANGES, BODIES, BROKEN_BODIES } from './bodies.fixture.ts';
import { KNOWN_KINDS } from './kinds.ts';
import { factProblems, validateFact } from './validate-fact.ts';

const fact = (kind: string, body: unknown, more: object = {}) => ({
  id: 'f1',
  kind,
  at: '2026-03-01T09:00:00Z',
  body,
  ...more,
});
const problem = (value: unknown) => {
  const result = validateFact(value);
  return result.ok ? 'ok' : `${result.code} ${result.field}`;
};
const leg = (more: object) =>
  fact('rep-recorded', {
    rep: 'r1',
    session: 's1',
    legs: [{ skill: 'stop', ask: {}, grade: 'fair', ...more }],
  });

describe('validateFact takes every kind of the manual', () => {
  it('with an example of each kind', () => {
    expect(Object.keys(BODIES).sort()).toEqual([...KNOWN_KINDS].sort());
  });

  it.each(Object.entries(BODIES))('%s: least and fullest body', (kind, { least, full }) => {
    expect(problem(fact(kind, least))).toBe('ok');
    expect(problem(fact(kind, full))).toBe('ok');
  });

  it.each(Object.entries(BODIES))('%s: every required field is missed by name', (kind, { least }) => {
    for (const key of Object.keys(least)) {
      const { [key as keyof typeof least]: _, ...rest } = least;
      expect(problem(fact(kind, rest))).toBe(`FIELD_MISSING body.${key}`);
    }
  });

  it.each(Object.entries(BODIES))('%s: every field with a wrong type is told by name', (kind, { full }) => {
    for (const key of Object.keys(full)) {
      for (const wrong of [null, [7]]) {
        const field = factProblems(fact(kind, { ...full, [key]: wrong }))[0]?.field ?? 'ok';
        expect(field.startsWith(`body.${key}`)).toBe(true);
      }
    }
  });

  it('keeps the value itself, unknown fields and kinds included', () => {
    const value = fact('kind-of-another-program', { anything: [1, null] }, { zeal: 3 });
    expect(validateFact(value)).toEqual({ ok: true, fact: value });
    const known = fact('dog-added', { dog: 'd1', name: 'Wren', collar: 'red' });
    const result = validateFact(known);
    expect(result.ok && result.fact).toBe(known);
  });

  it.each(['constructor', 'toString', '__proto__', 'hasOwnProperty'])(
    'takes %s for an unknown kind',
    (kind) => {
      expect(problem(fact(kind, {}))).toBe('ok');
    },
  );
});

describe('validateFact refuses, naming code and field', () => {
  it.each(BROKEN_BODIES)('$kind $field: $code', ({ kind, body, code, field }) => {
    expect(problem(fact(kind, body))).toBe(`${code} ${field}`);
  });

  it.each([
    [null, 'LINE_NOT_OBJECT '],
    [[], 'LINE_NOT_OBJECT '],
    ['text', 'LINE_NOT_OBJECT '],
    [{}, 'FIELD_MISSING id'],
    [fact('x', {}, { id: '' }), 'FIELD_RANGE id'],
    [fact('x', {}, { id: 7 }), 'FIELD_TYPE id'],
    [fact('x', {}, { kind: null }), 'FIELD_TYPE kind'],
    [fact('x', []), 'FIELD_TYPE body'],
    [fact('x', 'text'), 'FIELD_TYPE body'],
    [fact('x', {}, { at: 1772355600000 }), 'FIELD_TYPE at'],
    [fact('x', {}, { at: 'yesterday' }), 'TIME_FORMAT at'],
    [fact('x', {}, { at: '1979-06-01T00:00:00Z' }), 'TIME_RANGE at'],
    [fact('x', {}, { at: '2016-12-31T23:59:60Z' }), 'TIME_RANGE at'],
    [fact('x', {}, { clock: 1 }), 'FIELD_TYPE clock'],
    [fact('x', {}, { clock: '12' }), 'CLOCK_FORMAT clock'],
    [fact('x', {}, { clock: '0000000000001-0000-a' }), 'CLOCK_RANGE clock'],
    [fact('x', {}, { device: 1 }), 'FIELD_TYPE device'],
    [fact('x', {}, { by: {} }), 'FIELD_TYPE by'],
  ])('envelope %j: %s', (value, expected) => {
    expect(problem(value)).toBe(expected);
  });

  it.each(Object.entries(ASK_RANGES))(
    'ask.%s: takes both ends, refuses what is beyond',
    (name, [low, high]) => {
      for (const end of [low, high, (low + high) / 2])
        expect(problem(leg({ ask: { [name]: end } }))).toBe('ok');
      for (const beyond of [low - 0.001, high + 0.001, Number.POSITIVE_INFINITY]) {
        expect(problem(leg({ ask: { [name]: beyond } }))).toBe(`FIELD_RANGE body.legs[0].ask.${name}`);
      }
      expect(problem(leg({ ask: { [name]: String(low) } }))).toBe(`FIELD_TYPE body.legs[0].ask.${name}`);
      expect(problem(leg({ planned: { [name]: high + 1 } }))).toBe(
        `FIELD_RANGE body.legs[0].planned.${name}`,
      );
    },
  );

  it('says what was expected, what was there, and what to do', () => {
    const result = validateFact(leg({ ask: { distanceM: 900 } }));
    expect(result.ok ? '' : result.message).toBe(
      'body.legs[0].ask.distanceM: expected a number from 0 to 400, got 900; correct the value; mind the unit in the name of the field',
    );
  });

  it('tells everything that is wrong with a fact', () => {
    const broken = fact(
      'rep-recorded',
      { rep: 5, legs: [{ skill: 'sit', ask: {}, grade: 'good' }] },
      { at: 'x' },
    );
    expect(
      factProblems(broken)
        .map(({ code, field }) => `${code} ${field}`)
        .sort(),
    ).toEqual([
      'FIELD_MISSING body.session',
      'FIELD_TYPE body.rep',
      'FIELD_VALUE body.legs[0].skill',
      'TIME_FORMAT at',
    ]);
  });
});
