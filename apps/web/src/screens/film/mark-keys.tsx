import { FILM_MARK_CODES, type FilmMarkName } from '@sedgeline/words';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { MARK_LETTERS, UNDO_LETTER } from './film-keys.ts';
import { MarkSymbol } from './mark-symbol.tsx';

/** One big key for each thing that can be seen, and one to take the last mark back. */
export function MarkKeys({
  canMark,
  canUndo,
  onMark,
  onUndo,
}: {
  readonly canMark: boolean;
  readonly canUndo: boolean;
  readonly onMark: (what: FilmMarkName) => void;
  readonly onUndo: () => void;
}) {
  const { marks: words } = useWords().film;
  return (
    <fieldset className="film-marks-pad" aria-label={words.title}>
      {FILM_MARK_CODES.map((what) => (
        <button
          key={what}
          type="button"
          className="film-mark-key"
          data-what={what}
          disabled={!canMark}
          aria-keyshortcuts={MARK_LETTERS[what]}
          onClick={() => onMark(what)}
        >
          <MarkSymbol what={what} />
          <b>{words.name(what)}</b> <kbd>{MARK_LETTERS[what]}</kbd>
        </button>
      ))}
      <Button
        look="quiet"
        className="film-undo"
        disabled={!canUndo}
        aria-keyshortcuts={UNDO_LETTER}
        onClick={onUndo}
      >
        {words.undo} <kbd>{UNDO_LETTER}</kbd>
      </Button>
    </fieldset>
  );
}
