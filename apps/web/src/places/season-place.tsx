import type { SeasonView } from '@sedgeline/projections';
import { lazy, Suspense, useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useWords } from '../parts/words-context.tsx';
import { seasonOf } from '../state/kennel.ts';
import { useKennel } from '../state/kennel-store.ts';
import { setGoal } from '../state/set-goal.ts';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const SeasonScreen = lazy(() =>
  import('../screens/season/season-screen.tsx').then(({ SeasonScreen: screen }) => ({ default: screen })),
);

/** A dog's goals and the weeks to come, joined to the record. */
export function SeasonPlace({ dog }: { readonly dog: string }) {
  const { seasonScreen, dogs: dogsWords, planScreen } = useWords();
  const isReady = useKennel((s) => s.isReady);
  const facts = useKennel((s) => s.dogs?.facts ?? 0);
  const [view, setView] = useState<SeasonView | null | 'waiting'>('waiting');
  // biome-ignore lint/correctness/useExhaustiveDependencies: more facts may be another goal, or another standing
  useEffect(() => {
    if (!isReady) return;
    let isLeft = false;
    void seasonOf(dog).then((found) => {
      if (!isLeft) setView(found);
    });
    return () => {
      isLeft = true;
    };
  }, [dog, isReady, facts]);
  const isKnown = view !== 'waiting' && view !== null;
  useTitle(isKnown ? seasonScreen.title(view.dogName) : planScreen.season);
  return (
    <Framed here="dogs">
      {view === 'waiting' && <Opening />}
      {view === null && (
        <section className="dog">
          <h1>{seasonScreen.notFound}</h1>
          <Link href="/">{dogsWords.title}</Link>
        </section>
      )}
      {isKnown && (
        <Suspense fallback={<Opening />}>
          <SeasonScreen view={view} nowMs={Date.now()} onSet={(goal) => void setGoal(dog, goal)} />
        </Suspense>
      )}
    </Framed>
  );
}
