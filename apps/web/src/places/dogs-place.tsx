import { useDeferredValue } from 'react';
import { useLocation } from 'wouter';
import { useWords } from '../parts/words-context.tsx';
import { DogsScreen } from '../screens/dogs/dogs-screen.tsx';
import { addDog, startFirst, workAddress } from '../state/begin.ts';
import { openRecord } from '../state/kennel.ts';
import { useKennel } from '../state/kennel-store.ts';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

/** Dogs, joined to the record. */
export function DogsPlace() {
  const { dogs: words } = useWords();
  const [, go] = useLocation();
  const dogs = useDeferredValue(
    useKennel((s) => s.dogs),
    null,
  );
  useTitle(words.title);
  return (
    <Framed here="dogs">
      {dogs === null && <Opening />}
      {dogs !== null && (
        <DogsScreen
          view={dogs}
          nowMs={Date.now()}
          onStart={({ name, skill }) =>
            void startFirst(name, skill).then((session) => go(`/work/${session}`))
          }
          onAddDog={(dog) => void addDog(dog)}
          onWork={(dog) => go(workAddress(dog))}
          onLookRound={() => void openRecord('demo')}
        />
      )}
    </Framed>
  );
}
