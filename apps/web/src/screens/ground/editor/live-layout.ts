import { useSyncExternalStore } from 'react';
import type { EditedLayout } from './layout-edit.ts';

/** The layout at this frame of a drag, for the few that show it: the rest of the screen stands still until the drop. */
export interface LiveLayout {
  readonly get: () => EditedLayout | null;
  readonly set: (layout: EditedLayout | null) => void;
  readonly watch: (changed: () => void) => () => void;
}

export function createLiveLayout(): LiveLayout {
  let now: EditedLayout | null = null;
  const watchers = new Set<() => void>();
  return {
    get: () => now,
    set: (layout) => {
      now = layout;
      for (const changed of watchers) changed();
    },
    watch: (changed) => {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
  };
}

/** What is being dragged as it lies now; `null` while nothing is. */
export const useLiveLayout = (live: LiveLayout): EditedLayout | null =>
  useSyncExternalStore(live.watch, live.get);
