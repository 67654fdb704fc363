import { useWords } from '../../parts/words-context.tsx';
import { keepFocus } from './keep-focus.ts';

interface TurnRowProps {
  readonly canUndo: boolean;
  /** False in the middle of a chain: what was begun is finished as it was asked. */
  readonly canTurn: boolean;
  readonly isClean: boolean;
  readonly onUndo: () => void;
  readonly onTurn: (turn: 'easier' | 'harder' | 'clean') => void;
  readonly onMore: () => void;
}

/** The small keys under the pad: the last tap back, the rep turned another way, and everything else. */
export function TurnRow({ canUndo, canTurn, isClean, onUndo, onTurn, onMore }: TurnRowProps) {
  const { work } = useWords();
  return (
    <div className="work-turns">
      <button
        type="button"
        aria-disabled={!canUndo}
        aria-keyshortcuts="0"
        onMouseDown={keepFocus}
        onClick={onUndo}
      >
        {work.undo}
      </button>
      <button
        type="button"
        aria-disabled={!canTurn}
        aria-keyshortcuts="E"
        onMouseDown={keepFocus}
        onClick={() => onTurn('easier')}
      >
        {work.easier}
      </button>
      <button
        type="button"
        aria-disabled={!canTurn}
        aria-keyshortcuts="H"
        onMouseDown={keepFocus}
        onClick={() => onTurn('harder')}
      >
        {work.harder}
      </button>
      <button
        type="button"
        aria-disabled={!canTurn}
        aria-pressed={isClean}
        aria-keyshortcuts="C"
        title={work.letRunInWords}
        onMouseDown={keepFocus}
        onClick={() => onTurn('clean')}
      >
        {work.letRun}
      </button>
      <button
        type="button"
        aria-keyshortcuts="M"
        aria-haspopup="dialog"
        onMouseDown={keepFocus}
        onClick={onMore}
      >
        {work.more}
      </button>
    </div>
  );
}
