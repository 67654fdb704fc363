import type { Grade } from '@sedgeline/engine/ability';
import type { RepSummary } from './views.ts';

/** One session in a line: whose, when, where, and how its legs went. */
export interface SessionRow {
  readonly session: string;
  readonly dog: string;
  readonly dogName: string;
  readonly groundName: string | null;
  readonly openedAtMs: number;
  readonly closedAtMs: number | null;
  readonly reps: number;
  readonly legs: Readonly<Record<Grade, number>>;
}

/** Every session of a record, the newest first. */
export interface SessionsView {
  readonly sessions: readonly SessionRow[];
}

/** One session to look back on: its reps that stand, in order. */
export interface SessionBackView extends SessionRow {
  readonly done: readonly RepSummary[];
}
