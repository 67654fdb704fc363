/** Everything that was drawn, one state after another, and where in it one stands. */
export interface History<State> {
  readonly past: readonly State[];
  readonly now: State;
  readonly future: readonly State[];
}

/** So many steps can be taken back: an afternoon of drawing (our judgement, 2026). */
const LONGEST = 500;

export const startHistory = <State>(now: State): History<State> => ({ past: [], now, future: [] });

/** A new state; what was undone is gone. The same history where nothing changed. */
export function goOn<State>(history: History<State>, next: State): History<State> {
  if (next === history.now) return history;
  return { past: [...history.past, history.now].slice(-LONGEST), now: next, future: [] };
}

/** One step back; the same history at its beginning. */
export function undo<State>({ past, now, future }: History<State>): History<State> {
  const before = past.at(-1);
  if (before === undefined) return { past, now, future };
  return { past: past.slice(0, -1), now: before, future: [now, ...future] };
}

/** One undone step again; the same history where none was undone. */
export function redo<State>({ past, now, future }: History<State>): History<State> {
  const [after, ...rest] = future;
  if (after === undefined) return { past, now, future };
  return { past: [...past, now], now: after, future: rest };
}
