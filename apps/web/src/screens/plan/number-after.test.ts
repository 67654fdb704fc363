import type { PlanEdit } from '@sedgeline/engine/session';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { locksAfter, numberAfter } from './number-after.ts';

/** The edit done to a list by hand: what every rep's new number must agree with. */
function edited(names: readonly string[], edit: PlanEdit): string[] {
  const list = [...names];
  if (edit.do === 'drop') list.splice(edit.n - 1, 1);
  if (edit.do === 'move') list.splice(edit.to - 1, 0, ...list.splice(edit.n - 1, 1));
  if (edit.do === 'add') list.splice(edit.after, 0, 'new');
  return list;
}

const REPS = 6;
const number = fc.integer({ min: 1, max: REPS });
const edits: fc.Arbitrary<PlanEdit> = fc.oneof(
  fc.record({ do: fc.constant('drop' as const), n: number }),
  fc.record({ do: fc.constant('move' as const), n: number, to: number }),
  fc.record({ do: fc.constant('swap' as const), n: number, turn: fc.nat(3) }),
  fc.record({ do: fc.constant('add' as const), after: fc.integer({ min: 0, max: REPS }), turn: fc.nat(3) }),
  fc.record({ do: fc.constant('break' as const), after: number, takes: fc.boolean() }),
);

describe('numberAfter', () => {
  it('is where the rep lies once a list is edited the same way', () => {
    const names = Array.from({ length: REPS }, (_, i) => `rep ${i + 1}`);
    fc.assert(
      fc.property(edits, number, (edit, n) => {
        const at = edited(names, edit).indexOf(`rep ${n}`);
        expect(numberAfter(edit, n)).toBe(at < 0 ? null : at + 1);
      }),
    );
  });
});

describe('locksAfter', () => {
  it('lets a lock go with its rep, and when its rep is made another', () => {
    expect(locksAfter({ do: 'move', n: 5, to: 2 }, [2, 5])).toEqual([2, 3]);
    expect(locksAfter({ do: 'drop', n: 2 }, [2, 5])).toEqual([4]);
    expect(locksAfter({ do: 'swap', n: 5, turn: 0 }, [2, 5])).toEqual([2]);
    expect(locksAfter({ do: 'ask', n: 2, legs: [] }, [2, 5])).toEqual([5]);
    expect(locksAfter({ do: 'break', after: 2, takes: true }, [2, 5])).toEqual([2, 5]);
  });
});
