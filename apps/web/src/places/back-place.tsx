import type { SessionBackView } from '@sedgeline/projections';
import { lazy, Suspense } from 'react';
import { NotHere } from '../parts/not-here.tsx';
import { useWords } from '../parts/words-context.tsx';
import { sessionBackOf, sessionsBack } from '../state/kennel.ts';
import { useRecordView } from '../state/use-record-view.ts';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const BackScreen = lazy(() =>
  import('../screens/back/back-screen.tsx').then(({ BackScreen: screen }) => ({ default: screen })),
);
const SessionBackScreen = lazy(() =>
  import('../screens/back/session-back-screen.tsx').then(({ SessionBackScreen: screen }) => ({
    default: screen,
  })),
);

/** Look back: every session, joined to the record. */
export function BackPlace() {
  const { back } = useWords();
  const view = useRecordView(sessionsBack, null);
  useTitle(back.title);
  return (
    <Framed here="back">
      <Suspense fallback={<Opening />}>
        {view === 'waiting' ? <Opening /> : <BackScreen view={view} nowMs={Date.now()} />}
      </Suspense>
    </Framed>
  );
}

/** A session to look back on; `null` where no fact names it, `waiting` before that is known. */
export function useSessionBack(session: string): SessionBackView | null | 'waiting' {
  return useRecordView(sessionBackOf, session);
}

/** One session, with its entrances to sound and film. */
export function SessionBackPlace({ session }: { readonly session: string }) {
  const { back } = useWords();
  const view = useSessionBack(session);
  const isKnown = view !== 'waiting' && view !== null;
  useTitle(isKnown ? back.session(view.dogName, view.openedAtMs) : back.title);
  return (
    <Framed here="back">
      {view === 'waiting' && <Opening />}
      {view === null && <NoSession />}
      {isKnown && (
        <Suspense fallback={<Opening />}>
          <SessionBackScreen view={view} />
        </Suspense>
      )}
    </Framed>
  );
}

/** Said where an address names a session that is not in the record. */
export function NoSession() {
  const { back } = useWords();
  return <NotHere title={back.notFound} to="/back" onward={back.toAll} />;
}
