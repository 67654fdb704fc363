import type { TapFact } from './tap-fact.ts';
import type { WorkView } from './views/views.ts';

/** The facts that take the last tap of a session back; none where there is nothing to undo. */
export function undoFacts(view: WorkView): readonly TapFact[] {
  return view.undo?.facts ?? [];
}
