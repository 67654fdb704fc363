import type { PlanEdit } from '@sedgeline/engine/session';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** The keys under an opened rep. */
export function RepKeys(props: {
  readonly n: number;
  readonly reps: number;
  readonly isLocked: boolean;
  readonly takesBreak: boolean;
  readonly onEasier: () => void;
  readonly onEdit: (edit: PlanEdit) => void;
  readonly onSwap: () => void;
  readonly onAdd: () => void;
  readonly onLock: () => void;
}) {
  const { n, reps, isLocked, takesBreak, onEasier, onEdit, onSwap, onAdd, onLock } = props;
  const { planScreen } = useWords();
  const isLast = n === reps;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a row of keys, not a form: a fieldset would say that something is filled in
    <div className="rep-keys" role="group" aria-label={planScreen.keysOf(n)}>
      <Button look="quiet" disabled={n === 1} onClick={() => onEdit({ do: 'move', n, to: n - 1 })}>
        {planScreen.earlier}
      </Button>
      <Button look="quiet" disabled={isLast} onClick={() => onEdit({ do: 'move', n, to: n + 1 })}>
        {planScreen.later}
      </Button>
      <Button look="quiet" aria-pressed={isLocked} onClick={onLock}>
        {isLocked ? planScreen.locked : planScreen.lock}
      </Button>
      <Button look="quiet" onClick={onSwap}>
        {planScreen.swap}
      </Button>
      <Button look="quiet" onClick={onEasier}>
        {planScreen.easier}
      </Button>
      <Button look="quiet" onClick={() => onEdit({ do: 'drop', n })}>
        {planScreen.drop}
      </Button>
      <Button look="quiet" onClick={onAdd}>
        {planScreen.addAfter}
      </Button>
      {!isLast && (
        <Button
          look="quiet"
          onClick={() => onEdit({ do: 'break', after: n, takes: !takesBreak })}
          className="rep-keys-break"
        >
          {takesBreak ? planScreen.noBreak : planScreen.breakAfter}
        </Button>
      )}
    </div>
  );
}
