import type { Part } from '@sedgeline/drawing';
import { useWords } from '../../../parts/words-context.tsx';
import type { JudgedDrawing } from './judge-drawing.ts';
import type { EditedLayout } from './layout-edit.ts';
import type { LiveLayout } from './live-layout.ts';
import { figuresOfPart } from './parts-of-layout.ts';
import { useJudgedNow } from './use-judged-now.ts';

/** So many of what gets in its way are told here; all of them stand in the list. */
const SHOWN = 4;

/** The figures of what is chosen, as it lies at this moment, and what gets in its way. */
export function ChosenFigures({
  part,
  layout,
  judged,
  live,
}: {
  readonly part: Part;
  readonly layout: EditedLayout;
  readonly judged: JudgedDrawing;
  readonly live: LiveLayout;
}) {
  const words = useWords();
  const { chosen } = words.ground.editor;
  const { now, judgedNow } = useJudgedNow(part, layout, judged, live);
  const figures = figuresOfPart(part, now, words);
  if (part.part !== 'thing') return <p>{figures === '' ? chosen.handler : figures}</p>;
  const line = judgedNow.lines.get(part.thing);
  const nearest = line?.nearest;
  const warnings = judgedNow.warnings.filter(({ about }) => about.includes(part.thing));
  return (
    <>
      <p className="figures edit-figures">{figures}</p>
      {line?.fromSend && <p className="figures">{chosen.fromYou(line.distanceM, line.bearingDeg)}</p>}
      {line && (
        <p className="figures soft">
          {nearest
            ? chosen.nearest(judged.names.get(nearest.thing) ?? '', nearest.clearanceM, nearest.gapDeg)
            : chosen.alone}
        </p>
      )}
      {line?.windAcrossMPerS !== undefined && (
        <p className="figures soft">{chosen.wind(line.windAcrossMPerS)}</p>
      )}
      {warnings.slice(0, SHOWN).map(({ key, text }) => (
        <p key={key} className="edit-warning">
          {text}
        </p>
      ))}
    </>
  );
}
