import type { Part } from '@sedgeline/drawing';
import { useCallback, useEffect, useState } from 'react';
import type { EditedLayout } from './layout-edit.ts';

/** So long after the last arrow key a run of them is over: longer than a held key repeats. */
const RUN_MS = 250;

/** A run of arrow keys on one part, and what stood when it began. */
export interface KeyRun {
  readonly part: Part;
  readonly before: EditedLayout;
  readonly names: ReadonlyMap<string, string>;
}

/** Arrow keys that follow each other closely are one run: while it lasts only what it moves is drawn anew. */
export function useKeyRun(layout: EditedLayout, names: ReadonlyMap<string, string>, chosen: Part | null) {
  const [run, setRun] = useState<KeyRun | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every move puts the end of the run off
  useEffect(() => {
    if (run === null) return;
    const over = setTimeout(() => setRun(null), RUN_MS);
    return () => clearTimeout(over);
  }, [run, layout]);
  const begin = useCallback(() => {
    if (chosen !== null) setRun((now) => now ?? { part: chosen, before: layout, names });
  }, [chosen, layout, names]);
  const end = useCallback(() => setRun(null), []);
  return { run, begin, end };
}
