import { lazy, Suspense } from 'react';
import { useWords } from '../parts/words-context.tsx';
import { NoSession, useSessionBack } from './back-place.tsx';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const ListenScreen = lazy(() =>
  import('../screens/listen/listen-screen.tsx').then(({ ListenScreen: screen }) => ({ default: screen })),
);

/** A session and its sounds, joined to the record. */
export function ListenPlace({ session }: { readonly session: string }) {
  const { listenScreen } = useWords();
  const view = useSessionBack(session);
  const isKnown = view !== 'waiting' && view !== null;
  useTitle(isKnown ? listenScreen.title(view.dogName) : listenScreen.name);
  return (
    <Framed here="back">
      {view === 'waiting' && <Opening />}
      {view === null && <NoSession />}
      {isKnown && (
        <Suspense fallback={<Opening />}>
          <ListenScreen key={session} view={view} />
        </Suspense>
      )}
    </Framed>
  );
}
