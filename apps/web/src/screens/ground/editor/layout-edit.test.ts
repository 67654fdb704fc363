import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goOn, redo, startHistory, undo } from './edit-history.ts';
import { applyEdit, type Edit, type EditedLayout } from './layout-edit.ts';

const HERE = { eastM: 0, northM: 0 };
const drawn: EditedLayout = {
  handlerAt: HERE,
  things: [
    { thing: 'a', kind: 'post', eastM: 0, northM: 20 },
    { thing: 'b', kind: 'dummy', eastM: 9, northM: 30, how: 'placed' },
  ],
};
const point = fc.record({
  eastM: fc.double({ min: -1e5, max: 1e5, noNaN: true }),
  northM: fc.double({ min: -1e5, max: 1e5, noNaN: true }),
});
const part = fc.constantFrom(
  { part: 'handler' } as const,
  { part: 'send' } as const,
  { part: 'thing', thing: 'a' } as const,
);
const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({ do: fc.constant('move' as const), part, to: point }),
  fc.record({ do: fc.constant('remove' as const), thing: fc.constantFrom('a', 'b', 'gone') }),
  fc.record({ do: fc.constant('send' as const), from: fc.option(point) }),
  fc.record({ do: fc.constant('name' as const), name: fc.string() }),
  fc.record({
    do: fc.constant('change' as const),
    thing: fc.constantFrom('a', 'b'),
    change: fc.record({ label: fc.string(), blind: fc.boolean() }, { requiredKeys: [] }),
  }),
);

describe('edits', () => {
  it('can be taken back one by one to the beginning, and done again to the end', () => {
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 20 }), (edits) => {
        let history = startHistory(drawn);
        const states = [drawn];
        for (const each of edits) {
          history = goOn(history, applyEdit(history.now, each));
          states.push(history.now);
        }
        for (const state of states.toReversed().slice(1)) {
          history = undo(history);
          expect(history.now).toEqual(state);
        }
        expect(undo(history)).toEqual(history);
        for (const state of states.slice(1)) {
          history = redo(history);
          expect(history.now).toEqual(state);
        }
      }),
    );
  });

  it('leave places that the journal takes: to the centimetre, 10 km from the origin at most', () => {
    fc.assert(
      fc.property(point, (to) => {
        const { handlerAt } = applyEdit(drawn, { do: 'move', part: { part: 'handler' }, to });
        for (const value of Object.values(handlerAt)) {
          expect(Math.abs(value)).toBeLessThanOrEqual(10_000);
          // A centimetre in double precision: hundredths are whole to 1e-6 of one.
          expect(Math.abs(value * 100 - Math.round(value * 100))).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('take the dog along with the handler until it is sent from elsewhere, and leave it there then', () => {
    const to = { eastM: 5, northM: -2 };
    const move: Edit = { do: 'move', part: { part: 'handler' }, to };
    expect(applyEdit(drawn, move)).toEqual({ ...drawn, handlerAt: to });
    const apart = applyEdit(drawn, { do: 'send', from: { eastM: 0, northM: 4 } });
    expect(applyEdit(apart, move)).toMatchObject({ handlerAt: to, sendFrom: { eastM: 0, northM: 4 } });
    expect(applyEdit(apart, { do: 'send', from: null })).toEqual(drawn);
  });

  it('a name or a label taken away is not kept as nothing', () => {
    const named = applyEdit(drawn, { do: 'change', thing: 'a', change: { label: 'oak' } });
    expect(named.things[0]).toMatchObject({ label: 'oak' });
    expect(applyEdit(named, { do: 'change', thing: 'a', change: { label: '' } })).toEqual(drawn);
    expect(Object.keys(applyEdit({ ...drawn, name: 'x' }, { do: 'name', name: ' ' }))).not.toContain('name');
  });
});
