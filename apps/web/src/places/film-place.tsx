import { lazy, Suspense } from 'react';
import { useSearchParams } from 'wouter';
import { useWords } from '../parts/words-context.tsx';
import { append, filmBenchOf, newId } from '../state/kennel.ts';
import { saveFile } from '../state/save-file.ts';
import { useRecordView } from '../state/use-record-view.ts';
import { NoSession } from './back-place.tsx';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const FilmScreen = lazy(() =>
  import('../screens/film/film-screen.tsx').then(({ FilmScreen: screen }) => ({ default: screen })),
);

/** A session beside its film, joined to the record. The address may name the rep that is wanted. */
export function FilmPlace({ session }: { readonly session: string }) {
  const { film } = useWords();
  const view = useRecordView(filmBenchOf, session);
  const [search] = useSearchParams();
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
            firstRep={search.get('rep')}
            doors={DOORS}
            onSave={({ name, text, type }) => saveFile(name, text, type)}
          />
        </Suspense>
      )}
    </Framed>
  );
}

const DOORS = { newId, append };
