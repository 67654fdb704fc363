import type { Part } from '@sedgeline/drawing';
import { useWords } from '../../../parts/words-context.tsx';
import type { JudgedDrawing } from './judge-drawing.ts';
import type { EditedLayout } from './layout-edit.ts';
import { figuresOfPart } from './parts-of-layout.ts';

/** The figures of what is chosen, as it lies at this moment, and what gets in its way. */
export function ChosenFigures({
  part,
  layout,
  judged,
}: {
  readonly part: Part;
  readonly layout: EditedLayout;
  readonly judged: JudgedDrawing;
}) {
  const words = useWords();
  const { chosen } = words.ground.editor;
  const figures = figuresOfPart(part, layout, words);
  if (part.part !== 'thing') return <p>{figures === '' ? chosen.handler : figures}</p>;
  const line = judged.lines.get(part.thing);
  const nearest = line?.nearest;
  const warnings = judged.warnings.filter(({ about }) => about.includes(part.thing));
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
      {warnings.map(({ key, text }) => (
        <p key={key} className="edit-warning">
          {text}
        </p>
      ))}
    </>
  );
}
