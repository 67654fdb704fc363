import type { Part } from '@sedgeline/drawing';
import { useWords } from '../../../parts/words-context.tsx';
import type { JudgedDrawing } from './judge-drawing.ts';
import type { EditedLayout } from './layout-edit.ts';
import type { LiveLayout } from './live-layout.ts';
import { figuresOfPart, nameOfPart } from './parts-of-layout.ts';
import { useJudgedNow } from './use-judged-now.ts';

export interface LiveLineProps {
  readonly part: Part;
  readonly layout: EditedLayout;
  readonly judged: JudgedDrawing;
  readonly live: LiveLayout;
}

/** What is chosen in one line under the board, where a thumb that drags can see it; the panel says the same in full. */
export function LiveLine({ part, layout, judged, live }: LiveLineProps) {
  const words = useWords();
  const { now, judgedNow } = useJudgedNow(part, layout, judged, live);
  const warning = judgedNow.warnings.find(({ about }) => part.part === 'thing' && about.includes(part.thing));
  return (
    <div className="edit-live not-printed" aria-hidden="true">
      <p className="figures">
        <b>{nameOfPart(part, judged.names, words)}</b> {figuresOfPart(part, now, words)}
      </p>
      {warning && <p className="edit-warning">{warning.text}</p>}
    </div>
  );
}
