import type { FilmBenchView } from '@sedgeline/projections';
import { lazy, Suspense, useEffect, useState } from 'react';
import { useWords } from '../parts/words-context.tsx';
import { append, filmBenchOf, newId } from '../state/kennel.ts';
import { useKennel } from '../state/kennel-store.ts';
import { saveFile } from '../state/save-file.ts';
import { NoSession } from './back-place.tsx';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const FilmScreen = lazy(() =>
  import('../screens/film/film-screen.tsx').then(({ FilmScreen: screen }) => ({ default: screen })),
);

/** A session beside its film, joined to the record. */
export function FilmPlace({ session }: { readonly session: string }) {
  const { film } = useWords();
  const isReady = useKennel((s) => s.isReady);
  const facts = useKennel((s) => s.dogs?.facts ?? 0);
  const [view, setView] = useState<FilmBenchView | null | 'waiting'>('waiting');
  // biome-ignore lint/correctness/useExhaustiveDependencies: more facts may be another mark, or another rep
  useEffect(() => {
    if (!isReady) return;
    let isLeft = false;
    void filmBenchOf(session).then((found) => {
      if (!isLeft) setView(found);
    });
    return () => {
      isLeft = true;
    };
  }, [session, isReady, facts]);
  const isKnown = view !== 'waiting' && view !== null;
  useTitle(isKnown ? film.title(view.dogName, view.openedAtMs) : film.name);
  return (
    <Framed here="back">
      {view === 'waiting' && <Opening />}
      {view === null && <NoSession />}
      {isKnown && (
        <Suspense fallback={<Opening />}>
          <FilmScreen
            key={session}
            view={view}
            doors={DOORS}
            onSave={({ name, text, type }) => saveFile(name, text, type)}
          />
        </Suspense>
      )}
    </Framed>
  );
}

const DOORS = { newId, append };
