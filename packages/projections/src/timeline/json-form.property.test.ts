import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromJsonForm, toJsonForm } from './json-form.ts';

/** Anything a state may hold: text, numbers without an end, arrays of doubles, maps, lists and objects within each other. */
const held = fc.letrec((tie) => ({
  any: fc.oneof(
    { depthSize: 'small' },
    fc.string(),
    fc.boolean(),
    fc.constant(null),
    fc.double({ noDefaultInfinity: false }).map((n) => (Object.is(n, -0) ? 0 : n)),
    fc.array(fc.double().map((n) => (Object.is(n, -0) ? 0 : n))).map((list) => Float64Array.from(list)),
    fc.array(tie('any')),
    fc.array(fc.tuple(fc.string(), tie('any'))).map((entries) => new Map(entries)),
    fc.dictionary(
      fc.string().filter((key) => !key.startsWith('$')),
      tie('any'),
      { noNullPrototype: true },
    ),
  ),
})).any;

test('what was written as JSON is read as it was', () => {
  fc.assert(
    fc.property(held, (value) => {
      expect(fromJsonForm(JSON.parse(JSON.stringify(toJsonForm(value))))).toEqual(value);
    }),
  );
});

test('reading changes nothing of what was read', () => {
  fc.assert(
    fc.property(held, (value) => {
      const form = JSON.stringify(toJsonForm(value));
      const read = JSON.parse(form);
      fromJsonForm(read);
      expect(JSON.stringify(read)).toBe(form);
    }),
  );
});
