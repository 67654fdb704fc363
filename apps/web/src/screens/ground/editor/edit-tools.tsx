import type { UpWish } from '@sedgeline/drawing';
import type { Thing } from '@sedgeline/engine/ground';
import { Button } from '../../../parts/button.tsx';
import { useWords } from '../../../parts/words-context.tsx';

export interface EditToolsProps {
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly snaps: boolean;
  readonly up: UpWish;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onAdd: (what: Pick<Thing, 'kind' | 'blind'>) => void;
  readonly onSnap: (snaps: boolean) => void;
  readonly onTurn: () => void;
  readonly onWider: () => void;
  readonly onFit: () => void;
}

const ADDS = ['post', 'dummy', 'blind', 'hazard', 'jump', 'other'] as const;

/** What can be put down, steps back, and how the drawing lies. */
export function EditTools(props: EditToolsProps) {
  const { editor } = useWords().ground;
  const { canUndo, canRedo, snaps, up, onUndo, onRedo, onAdd, onSnap, onTurn, onWider, onFit } = props;
  return (
    <div className="edit-tools not-printed">
      <fieldset className="edit-add">
        <legend>{editor.add}</legend>
        <div className="edit-tool-row">
          {ADDS.map((what) => (
            <Button
              key={what}
              onClick={() => onAdd(what === 'blind' ? { kind: 'dummy', blind: true } : { kind: what })}
            >
              {what === 'blind' ? editor.blind : editor.kind(what)}
            </Button>
          ))}
        </div>
      </fieldset>
      <div className="edit-tool-row" role="toolbar" aria-label={editor.toolsLabel}>
        <Button look="quiet" onClick={onUndo} disabled={!canUndo}>
          {editor.undo}
        </Button>
        <Button look="quiet" onClick={onRedo} disabled={!canRedo}>
          {editor.redo}
        </Button>
        <Button look="quiet" aria-pressed={snaps} onClick={() => onSnap(!snaps)}>
          {editor.snap}
        </Button>
        <Button look="quiet" onClick={onTurn}>
          {up === 'send' ? editor.northUp : editor.sendUp}
        </Button>
        <Button look="quiet" onClick={onWider}>
          {editor.wider}
        </Button>
        <Button look="quiet" onClick={onFit}>
          {editor.fit}
        </Button>
      </div>
    </div>
  );
}
