import type { DogsView } from '@sedgeline/projections';
import type { WorkScreen } from './kennel-calls.ts';

/** What the first screen shows before the facts are read: the last views, kept as a note beside the journal. */
export interface Checkpoint {
  readonly version: typeof VERSION;
  readonly dogs: DogsView;
  readonly open: { readonly session: string; readonly work: WorkScreen | null } | null;
}

/** Raised when a view changes its shape: a checkpoint of another version is not looked at. */
const VERSION = 3;
export const CHECKPOINT_NOTE = 'checkpoint';

export function makeCheckpoint(dogs: DogsView, work: WorkScreen | null): Checkpoint {
  const session = openSessionOf(dogs);
  const shown = work !== null && work.view.session === session ? work : null;
  return { version: VERSION, dogs, open: session === null ? null : { session, work: shown } };
}

/** Reads a note back; `null` for none, or one of another version. */
export function readCheckpoint(note: unknown): Checkpoint | null {
  if (typeof note !== 'object' || note === null) return null;
  return 'version' in note && note.version === VERSION ? (note as Checkpoint) : null;
}

/** The session that is open, the one of the dog last worked where there are several. */
export function openSessionOf(dogs: DogsView): string | null {
  const open = dogs.dogs.filter((row) => row.openSession !== null);
  open.sort((a, b) => (b.lastWorkedMs ?? 0) - (a.lastWorkedMs ?? 0));
  return open[0]?.openSession ?? null;
}
