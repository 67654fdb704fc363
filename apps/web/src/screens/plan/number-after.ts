import type { PlanEdit } from '@sedgeline/engine/session';

/** The number that rep `n` has after an edit, `null` where it is gone; the edit is of a plan that has the rep. */
export function numberAfter(edit: PlanEdit, n: number): number | null {
  switch (edit.do) {
    case 'drop':
      if (n === edit.n) return null;
      return n > edit.n ? n - 1 : n;
    case 'move':
      if (n === edit.n) return edit.to;
      if (n > edit.n && n <= edit.to) return n - 1;
      return n < edit.n && n >= edit.to ? n + 1 : n;
    case 'add':
      return n > edit.after ? n + 1 : n;
    case 'swap':
    case 'ask':
    case 'break':
      return n;
  }
}

/** Locks go with their reps; a rep that is swapped or asked otherwise is another, and its lock is gone. */
export function locksAfter(edit: PlanEdit, locked: readonly number[]): number[] {
  const isOther = (n: number): boolean => (edit.do === 'swap' || edit.do === 'ask') && edit.n === n;
  return locked
    .filter((n) => !isOther(n))
    .map((n) => numberAfter(edit, n))
    .filter((n) => n !== null)
    .toSorted((a, b) => a - b);
}
