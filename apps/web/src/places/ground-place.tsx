import { lazy, Suspense, useCallback, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useWords } from '../parts/words-context.tsx';
import type { EditedLayout } from '../screens/ground/editor/layout-edit.ts';
import { layoutAddress } from '../screens/ground/ground-address.ts';
import { append, groundsOf, newId } from '../state/kennel.ts';
import { useKennel } from '../state/kennel-store.ts';
import { draftKey, dropLayout, layoutLeft, leaveLayout } from '../state/layout-drafts.ts';
import { putGroundAway, putLayoutAway } from '../state/put-away.ts';
import type { GroundsView } from '../workers/ground-desk.ts';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const GroundsScreen = lazy(() =>
  import('../screens/ground/grounds-screen.tsx').then(({ GroundsScreen: screen }) => ({ default: screen })),
);
const GroundScreen = lazy(() =>
  import('../screens/ground/ground-screen.tsx').then(({ GroundScreen: screen }) => ({ default: screen })),
);
const LayoutScreen = lazy(() =>
  import('../screens/ground/layout-screen.tsx').then(({ LayoutScreen: screen }) => ({ default: screen })),
);

/** The grounds as the record has them, asked for again after every change of its facts. */
function useGrounds(): GroundsView | null {
  const isReady = useKennel((s) => s.isReady);
  const facts = useKennel((s) => s.dogs?.facts ?? 0);
  const [view, setView] = useState<GroundsView | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: more facts are the reason to ask again
  useEffect(() => {
    if (!isReady) return;
    let isLeft = false;
    void groundsOf().then((found) => {
      if (!isLeft) setView(found);
    });
    return () => {
      isLeft = true;
    };
  }, [isReady, facts]);
  return view;
}

function Page({
  title,
  children,
}: {
  readonly title: string;
  readonly children: (view: GroundsView) => React.ReactNode;
}) {
  const view = useGrounds();
  useTitle(title);
  return (
    <Framed here="setup">
      {view === null ? <Opening /> : <Suspense fallback={<Opening />}>{children(view)}</Suspense>}
    </Framed>
  );
}

/** Every ground, joined to the record. */
export function GroundsPlace() {
  const { ground } = useWords();
  return (
    <Page title={ground.title}>
      {(view) => (
        <GroundsScreen
          view={view}
          onAdd={(said) => void append([{ kind: 'ground-added', body: { ground: newId(), ...said } }])}
          onAway={(ground, isAway) => void putGroundAway(ground, isAway)}
        />
      )}
    </Page>
  );
}

/** One ground; `null` for what is drawn for none. */
export function GroundPlace({ ground }: { readonly ground: string | null }) {
  const { ground: words } = useWords();
  return (
    <Page title={words.title}>
      {(view) => (
        <GroundScreen
          view={view}
          ground={ground}
          onAway={(id, isAway) => void putGroundAway(id, isAway)}
          onLayoutAway={(layout, isAway) => void putLayoutAway(layout, isAway)}
        />
      )}
    </Page>
  );
}

interface LayoutOf {
  readonly ground: string | null;
  readonly from: { readonly layout: string } | { readonly start: string };
}

/** A layout of a ground: one on record, or a new one, which is at its own address once it is saved. */
export function LayoutPlace(of: LayoutOf) {
  const at = JSON.stringify(of);
  const [inHand, setInHand] = useState({ of, at, savedAt: '' });
  // A new layout that was saved goes on under its new address with every step back; any other address is another layout.
  if (at !== inHand.at && at !== inHand.savedAt) setInHand({ of, at, savedAt: '' });
  return (
    <LayoutInHand
      key={inHand.at}
      {...inHand.of}
      onSavedAs={(layout) =>
        setInHand((last) => ({
          ...last,
          savedAt: JSON.stringify({ ground: last.of.ground, from: { layout } }),
        }))
      }
    />
  );
}

function LayoutInHand({
  ground,
  from,
  onSavedAs,
}: LayoutOf & { readonly onSavedAs: (layout: string) => void }) {
  const { ground: words } = useWords();
  const [, go] = useLocation();
  const record = useKennel((s) => s.record);
  const isNew = 'start' in from;
  const key = draftKey(record, ground, isNew ? `new ${from.start}` : from.layout);
  // Read once: what is drawn from here on is in the editor.
  const [left] = useState(() => layoutLeft(key));
  const id = useRef(isNew ? null : from.layout);
  const onDraft = useCallback((layout: EditedLayout) => leaveLayout(key, layout), [key]);
  const onDropDraft = useCallback(() => dropLayout(key), [key]);
  const write = (layout: EditedLayout, as: string, where: string | null) =>
    append([
      { kind: 'layout-drawn', body: { layout: as, ...(where === null ? {} : { ground: where }), ...layout } },
    ]);
  const onSave = async (layout: EditedLayout): Promise<boolean> => {
    id.current ??= newId();
    const { saved } = await write(layout, id.current, ground);
    dropLayout(key);
    if (isNew) {
      onSavedAs(id.current);
      go(layoutAddress(ground, id.current), { replace: true });
    }
    return saved;
  };
  const onCopy = async (layout: EditedLayout, to: string): Promise<void> => {
    await write(layout, newId(), to);
  };
  return (
    <Page title={words.picture}>
      {(view) => (
        <LayoutScreen
          view={view}
          ground={ground}
          from={from}
          left={left}
          newId={newId}
          onDraft={onDraft}
          onDropDraft={onDropDraft}
          onSave={onSave}
          onCopy={onCopy}
        />
      )}
    </Page>
  );
}
