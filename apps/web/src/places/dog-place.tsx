import type { PatternsView } from '@sedgeline/projections';
import { useDeferredValue, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { useWords } from '../parts/words-context.tsx';
import { DogScreen } from '../screens/dog/dog-screen.tsx';
import { workAddress } from '../state/begin.ts';
import { patternsOf, watchStanding } from '../state/kennel.ts';
import { useKennel } from '../state/kennel-store.ts';
import { restDog } from '../state/rest-dog.ts';
import { tellLevel } from '../state/tell-level.ts';
import { Framed } from './framed.tsx';
import { useTitle } from './use-title.ts';

/** One dog's standing, joined to the record. */
export function DogPlace({ dog }: { readonly dog: string }) {
  const words = useWords();
  const [, go] = useLocation();
  const isReady = useKennel((s) => s.isReady);
  const standing = useDeferredValue(
    useKennel((s) => (s.standing?.dog === dog ? s.standing : null)),
    null,
  );
  const hasOpenSession = useKennel(
    (s) => s.dogs?.dogs.some((row) => row.dog === dog && row.openSession !== null) ?? false,
  );
  useEffect(() => {
    if (!isReady) return;
    void watchStanding(dog);
    return () => void watchStanding(null);
  }, [dog, isReady]);
  const [patterns, setPatterns] = useState<PatternsView | null>(null);
  const legs = standing?.view?.legs ?? 0;
  // After the standing is on the screen, and again when legs were added: the patterns take the worker a moment.
  useEffect(() => {
    if (legs === 0) return;
    let isLeft = false;
    void patternsOf(dog).then((found) => {
      if (!isLeft) setPatterns(found);
    });
    return () => {
      isLeft = true;
    };
  }, [dog, legs]);
  useTitle(standing?.view ? words.dog.title(standing.view.name) : words.dogs.title);
  return (
    <Framed here="dogs">
      {standing !== null && (
        <DogScreen
          view={standing.view}
          patterns={patterns?.dog === dog ? patterns : null}
          hasOpenSession={hasOpenSession}
          nowMs={Date.now()}
          onWork={(id) => go(workAddress(id))}
          onRest={(id, until) => void restDog(id, until)}
          onTell={(id, skill, answer) => void tellLevel(id, skill, answer)}
        />
      )}
    </Framed>
  );
}
