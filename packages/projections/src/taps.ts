import type { WorkView } from './views/views.ts';

/** What a tap adds to the journal: kind and body; the device gives identity, time and clock. */
export interface TapFact {
  readonly kind: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/** The facts that take the last tap of a session back; none where there is nothing to undo. */
export function undoFacts(view: WorkView): readonly TapFact[] {
  return view.undo?.facts ?? [];
}
