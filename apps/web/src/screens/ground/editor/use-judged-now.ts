import type { Part } from '@sedgeline/drawing';
import { useMemo } from 'react';
import { useWords } from '../../../parts/words-context.tsx';
import { type JudgedDrawing, judgeThing } from './judge-drawing.ts';
import type { EditedLayout } from './layout-edit.ts';
import { type LiveLayout, useLiveLayout } from './live-layout.ts';

/** What is chosen as it lies at this moment, dragged or not, and measured. */
export function useJudgedNow(
  part: Part,
  layout: EditedLayout,
  judged: JudgedDrawing,
  live: LiveLayout,
): { readonly now: EditedLayout; readonly judgedNow: JudgedDrawing } {
  const words = useWords();
  const moving = useLiveLayout(live);
  const judgedNow = useMemo(
    () =>
      moving === null || part.part !== 'thing' ? judged : judgeThing(moving, part.thing, judged.names, words),
    [moving, part, judged, words],
  );
  return { now: moving ?? layout, judgedNow };
}
