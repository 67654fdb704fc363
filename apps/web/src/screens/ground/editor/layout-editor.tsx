import { namesOfThings, type Part } from '@sedgeline/drawing';
import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { Announcer } from '../../../parts/announcer.tsx';
import { Button } from '../../../parts/button.tsx';
import { Notice } from '../../../parts/notice.tsx';
import { useWords } from '../../../parts/words-context.tsx';
import { WalkPanel } from '../walk/walk-panel.tsx';
import { ChosenPanel } from './chosen-panel.tsx';
import { CopyPanel } from './copy-panel.tsx';
import { EditTools } from './edit-tools.tsx';
import './editor.css';
import { judgeDrawing } from './judge-drawing.ts';
import { LayoutBoard } from './layout-board.tsx';
import type { EditedLayout } from './layout-edit.ts';
import { LayoutTable } from './layout-table.tsx';
import { createLiveLayout } from './live-layout.ts';
import { LiveLine } from './live-line.tsx';
import { nameOfPart } from './parts-of-layout.ts';
import { TextEntry } from './text-entry.tsx';
import { useBoardBox } from './use-board-box.ts';
import { useBoardScale } from './use-board-scale.ts';
import { useEditorActs } from './use-editor-acts.ts';
import { useLayoutEdit } from './use-layout-edit.ts';
import { WarningsPanel } from './warnings-panel.tsx';
import { WindFields } from './wind-fields.tsx';

export interface LayoutEditorProps {
  /** As it stands in the record, or as it is begun from. */
  readonly saved: EditedLayout;
  /** What was drawn last time and not saved. */
  readonly left: EditedLayout | null;
  readonly isNew: boolean;
  /** A word of care that belongs to what it was begun from. */
  readonly caution: string | null;
  readonly otherGrounds: readonly { readonly ground: string; readonly name: string }[];
  readonly newId: () => string;
  /** After every change: the layout, and whether that is other than what stands in the record. */
  readonly onDrawn: (layout: EditedLayout, isUnsaved: boolean) => void;
  readonly onDropDraft: () => void;
  /** Resolves with whether it is on disk. */
  readonly onSave: (layout: EditedLayout) => Promise<boolean>;
  readonly onCopy: (layout: EditedLayout, ground: string) => Promise<void>;
}

/** Draws a layout: by thumb, by mouse and by keys alone; figures live. */
export function LayoutEditor(props: LayoutEditorProps) {
  const { saved, left, isNew, caution, otherGrounds, newId, onDrawn, onDropDraft, onSave, onCopy } = props;
  const words = useWords();
  const { editor } = words.ground;
  const { layout, chosen, history, step } = useLayoutEdit(left ?? saved);
  const [standing, setStanding] = useState<EditedLayout | null>(isNew || left !== null ? null : saved);
  const [said, setSaid] = useState('');
  const [live] = useState(createLiveLayout);
  const [snaps, setSnaps] = useState(false);
  const box = useBoardBox();
  const { scale, up, fit, widen, turn } = useBoardScale(layout, box);
  // What is read and not felt may come a moment after what is moved.
  const settled = useDeferredValue(layout);
  const judged = useMemo(() => judgeDrawing(settled, words), [settled, words]);
  const names = useMemo(() => namesOfThings(layout, words.picture), [layout, words]);
  const acts = useEditorActs({ layout, chosen, names, scale, snaps, words, newId, step });
  const onChoose = useCallback((part: Part | null) => step({ step: 'choose', part }), [step]);
  const isUnsaved = layout !== standing;
  const isTouched = history.past.length > 0;
  useEffect(() => {
    // What a new layout begins from is there again without being kept.
    if (isTouched) onDrawn(layout, isUnsaved && layout !== saved);
  }, [layout, saved, isTouched, isUnsaved, onDrawn]);
  const save = async () => {
    const isOnDisk = await onSave(layout);
    setStanding(layout);
    setSaid(isOnDisk ? editor.saved : editor.keptInMemory);
  };
  return (
    <div className="edit">
      <Announcer />
      {left !== null && standing === null && (
        <Notice
          action={
            <Button
              onClick={() => {
                step({ step: 'replace', layout: saved });
                setStanding(isNew ? null : saved);
                onDropDraft();
              }}
            >
              {isNew ? editor.beginAfresh : editor.dropDraft}
            </Button>
          }
        >
          {editor.draft}
        </Notice>
      )}
      <div className="edit-main">
        <LayoutBoard
          layout={layout}
          names={names}
          chosen={chosen}
          box={box}
          scale={scale}
          onChoose={onChoose}
          onMove={acts.move}
          onLive={live.set}
          onKey={acts.onKey}
          settle={acts.settle}
        />
        {chosen === null ? (
          <p className="edit-live soft not-printed">{editor.nothingChosen}</p>
        ) : (
          <LiveLine part={chosen} layout={layout} judged={judged} live={live} />
        )}
        <EditTools
          canUndo={history.past.length > 0}
          canRedo={history.future.length > 0}
          snaps={snaps}
          up={up}
          onUndo={() => acts.takeBack('undo')}
          onRedo={() => acts.takeBack('redo')}
          onAdd={acts.add}
          onSnap={setSnaps}
          onTurn={turn}
          onWider={widen}
          onFit={fit}
        />
      </div>
      <div className="edit-side">
        <div className="edit-save not-printed">
          <Button look="main" onClick={() => void save()} disabled={!isUnsaved}>
            {editor.save}
          </Button>
          <Button onClick={() => window.print()}>{editor.print}</Button>
          <p className="soft" role="status">
            {isUnsaved ? editor.unsaved : said || editor.saved}
          </p>
        </div>
        {chosen === null ? (
          <p className="soft edit-panel edit-chosen not-printed">{editor.nothingChosen}</p>
        ) : (
          <ChosenPanel
            key={chosen.part === 'thing' ? chosen.thing : chosen.part}
            part={chosen}
            layout={layout}
            live={live}
            judged={judged}
            upDeg={scale.upDeg}
            step={step}
            onWholePaces={acts.wholePaces}
          />
        )}
        <WarningsPanel judged={judged} caution={caution} />
        <WindFields layout={layout} step={step} />
        <section className="edit-panel not-printed">
          <TextEntry
            label={editor.layoutName}
            value={layout.name ?? ''}
            onEnter={(name) => {
              step({ step: 'edit', edit: { do: 'name', name } });
              return null;
            }}
          />
        </section>
        <section className="edit-panel" aria-labelledby="edit-table">
          <h2 id="edit-table">{editor.table.title}</h2>
          <LayoutTable layout={settled} judged={judged} />
        </section>
        <WalkPanel
          layout={layout}
          chosen={chosen}
          chosenName={chosen === null ? '' : nameOfPart(chosen, names, words)}
          onAdd={acts.add}
          onMove={acts.move}
        />
        <CopyPanel grounds={otherGrounds} onCopy={(ground) => onCopy(layout, ground)} />
        <details className="edit-panel not-printed">
          <summary>{editor.keys.title}</summary>
          <dl className="edit-key-list">
            {editor.keys.list.map(([keys, does]) => (
              <div key={keys}>
                <dt>{keys}</dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </details>
      </div>
    </div>
  );
}
