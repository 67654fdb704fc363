import { lazy, Suspense } from 'react';
import { NotHere } from '../parts/not-here.tsx';
import { useWords } from '../parts/words-context.tsx';
import { seasonOf } from '../state/kennel.ts';
import { setGoal } from '../state/set-goal.ts';
import { useRecordView } from '../state/use-record-view.ts';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const SeasonScreen = lazy(() =>
  import('../screens/season/season-screen.tsx').then(({ SeasonScreen: screen }) => ({ default: screen })),
);

/** A dog's goals and the weeks to come, joined to the record. */
export function SeasonPlace({ dog }: { readonly dog: string }) {
  const { seasonScreen, dogs: dogsWords, planScreen } = useWords();
  const view = useRecordView(seasonOf, dog);
  const isKnown = view !== 'waiting' && view !== null;
  useTitle(isKnown ? seasonScreen.title(view.dogName) : planScreen.season);
  return (
    <Framed here="dogs">
      {view === 'waiting' && <Opening />}
      {view === null && <NotHere title={seasonScreen.notFound} to="/" onward={dogsWords.title} />}
      {isKnown && (
        <Suspense fallback={<Opening />}>
          <SeasonScreen view={view} nowMs={Date.now()} onSet={(goal) => void setGoal(dog, goal)} />
        </Suspense>
      )}
    </Framed>
  );
}
