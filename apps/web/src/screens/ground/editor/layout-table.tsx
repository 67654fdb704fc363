import { memo } from 'react';
import { useWords } from '../../../parts/words-context.tsx';
import type { JudgedDrawing } from './judge-drawing.ts';
import type { EditedLayout } from './layout-edit.ts';
import { figuresOfPart } from './parts-of-layout.ts';

/** Everything on a layout with its figures: what the drawing says, to be read. */
export const LayoutTable = memo(function LayoutTable({
  layout,
  judged,
}: {
  readonly layout: EditedLayout;
  readonly judged: JudgedDrawing;
}) {
  const words = useWords();
  const { table, kind, chosen } = words.ground.editor;
  if (layout.things.length === 0) return <p className="soft">{table.none}</p>;
  return (
    <table className="edit-table">
      <caption className="only-read-out">{table.title}</caption>
      <thead>
        <tr>
          <th scope="col">{table.thing}</th>
          <th scope="col">{table.lies}</th>
          <th scope="col">{table.nearest}</th>
        </tr>
      </thead>
      <tbody>
        {layout.things.map((thing) => {
          const nearest = judged.lines.get(thing.thing)?.nearest;
          const name = judged.names.get(thing.thing) ?? '';
          return (
            <tr key={thing.thing}>
              <th scope="row">
                {name}
                {thing.label && <span className="soft"> {kind(thing.kind).toLowerCase()}</span>}
              </th>
              <td className="figures">
                {figuresOfPart({ part: 'thing', thing: thing.thing }, layout, words)}
              </td>
              <td className="figures">
                {nearest
                  ? chosen.near(judged.names.get(nearest.thing) ?? '', nearest.clearanceM, nearest.gapDeg)
                  : ''}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
});
