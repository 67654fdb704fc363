import type { Skill } from '@sedgeline/engine/ability';
import type { DogsView } from '@sedgeline/projections';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { AddDogForm } from './add-dog-form.tsx';
import type { NewDog } from './check-dog.ts';
import { DogRow } from './dog-row.tsx';
import './dogs.css';
import { FirstOpen } from './first-open.tsx';

export interface DogsScreenProps {
  readonly view: DogsView;
  readonly nowMs: number;
  /** First open: adds the dog, opens a session on the skill and goes to Work. */
  readonly onStart: (start: { readonly name: string; readonly skill: Skill }) => void;
  readonly onAddDog: (dog: NewDog) => void;
  /** Opens a session with the dog, or carries on with the open one. */
  readonly onWork: (dog: string) => void;
  readonly onLookRound: () => void;
}

/** Who needs what today. */
export function DogsScreen({ view, nowMs, onStart, onAddDog, onWork, onLookRound }: DogsScreenProps) {
  const words = useWords();
  const [adding, setAdding] = useState(false);
  if (view.dogs.length === 0 && !adding) {
    return <FirstOpen nowMs={nowMs} onStart={onStart} onLookRound={onLookRound} />;
  }
  return (
    <section className="dogs" aria-labelledby="dogs-title">
      <div className="screen-head">
        <h1 id="dogs-title">{words.dogs.title}</h1>
        <p className="soft">{words.dogs.counted(view.dogs.length)}</p>
      </div>
      {view.setAside > 0 && <Notice>{words.dogs.setAside(view.setAside)}</Notice>}
      <ul className="dog-rows">
        {view.dogs.map((dog) => (
          <DogRow key={dog.dog} dog={dog} nowMs={nowMs} onWork={onWork} />
        ))}
      </ul>
      {adding ? (
        <AddDogForm
          taken={view.dogs.map((dog) => dog.name)}
          nowMs={nowMs}
          onAdd={(dog) => {
            setAdding(false);
            onAddDog(dog);
          }}
          onCancel={() => setAdding(false)}
        />
      ) : (
        <Button className="dogs-add" onClick={() => setAdding(true)}>
          {words.dogs.add.title}
        </Button>
      )}
    </section>
  );
}
