import { STARTING_LAYOUT_CODES } from '@sedgeline/engine/ground';
import { useCallback, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';
import type { GroundsView } from '../../workers/ground-desk.ts';
import type { EditedLayout } from './editor/layout-edit.ts';
import { LayoutEditor } from './editor/layout-editor.tsx';
import './ground.css';
import { groundAddress } from './ground-address.ts';
import { startingDrawing } from './starting-drawing.ts';

export interface LayoutScreenProps {
  readonly view: GroundsView;
  readonly ground: string | null;
  /** A layout on record, or the code of one to begin from. */
  readonly from: { readonly layout: string } | { readonly start: string };
  readonly left: EditedLayout | null;
  readonly newId: () => string;
  readonly onDraft: (layout: EditedLayout) => void;
  readonly onDropDraft: () => void;
  readonly onSave: (layout: EditedLayout) => Promise<boolean>;
  readonly onCopy: (layout: EditedLayout, ground: string) => Promise<void>;
}

/** One layout of a ground, to look at, to draw on and to print. */
export function LayoutScreen(props: LayoutScreenProps) {
  const { view, ground, from, left, newId, onDraft, onDropDraft, onSave, onCopy } = props;
  const words = useWords();
  const { ground: say } = words;
  const here = view.grounds.find((one) => one.ground === ground);
  const onRecord = 'layout' in from ? view.layouts.find(({ layout }) => layout === from.layout) : undefined;
  const start = 'start' in from ? from.start : null;
  // The editor holds what is drawn from here on; a later look at the record must not begin it anew.
  const saved = useMemo((): EditedLayout | null => {
    if (start !== null) return startingDrawing(start, words);
    if (onRecord === undefined) return null;
    const { layout: _, ground: __, drawnAtMs: ___, name, ...drawn } = onRecord;
    return name === null ? drawn : { ...drawn, name };
  }, [start, onRecord, words]);
  const [name, setName] = useState((left ?? saved)?.name);
  const keep = useCallback(
    (layout: EditedLayout, isUnsaved: boolean) => {
      setName(layout.name);
      if (isUnsaved) onDraft(layout);
      else onDropDraft();
    },
    [onDraft, onDropDraft],
  );
  const code = STARTING_LAYOUT_CODES.find((each) => each === start);
  return (
    <section className="grounds layout-screen" aria-labelledby="layout-title">
      <div className="screen-head">
        <h1 id="layout-title">{name ?? say.nameless}</h1>
        <p className="soft">
          <Link className="ground-back" href={groundAddress(ground)}>
            {here?.name ?? say.noGround}
          </Link>
        </p>
      </div>
      {saved === null ? (
        <p>{say.notFound}</p>
      ) : (
        <LayoutEditor
          saved={saved}
          left={left}
          isNew={start !== null}
          caution={code === undefined ? null : say.starting(code).caution}
          otherGrounds={view.grounds.filter((one) => one.ground !== ground)}
          newId={newId}
          onDrawn={keep}
          onDropDraft={onDropDraft}
          onSave={onSave}
          onCopy={onCopy}
        />
      )}
    </section>
  );
}
