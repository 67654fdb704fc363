import { memo } from 'react';
import { useWords } from '../../../parts/words-context.tsx';
import type { JudgedDrawing } from './judge-drawing.ts';

/** A crowded field has hundreds: so many are told, the rest counted. */
const SHOWN = 8;

/** What is in the way on a drawing, and the word of care that belongs to what it was begun from. */
export const WarningsPanel = memo(function WarningsPanel({
  judged,
  caution,
}: {
  readonly judged: JudgedDrawing;
  readonly caution: string | null;
}) {
  const { warnings: say } = useWords().ground.editor;
  const { warnings } = judged;
  return (
    <>
      {warnings.length > 0 && (
        <section className="edit-panel" aria-labelledby="edit-warnings">
          <h2 id="edit-warnings">{say.title}</h2>
          <ul className="edit-warnings">
            {warnings.slice(0, SHOWN).map(({ key, text }) => (
              <li key={key} className="edit-warning">
                {text}
              </li>
            ))}
          </ul>
          {warnings.length > SHOWN && <p className="soft">{say.more(warnings.length - SHOWN)}</p>}
        </section>
      )}
      {caution !== null && (
        <section className="edit-panel" aria-labelledby="edit-care">
          <h2 id="edit-care">{say.care}</h2>
          <p className="edit-warning">{caution}</p>
        </section>
      )}
    </>
  );
});
