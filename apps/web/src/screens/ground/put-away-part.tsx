import type { ReactNode } from 'react';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** Something that was put away, and how it is called. */
export interface PutAwayThing {
  readonly id: string;
  readonly name: string;
  readonly shown: ReactNode;
}

/** What was put away, in a plain list: one tap takes it out again. Nothing where there is none. */
export function PutAwayPart({
  things,
  onBack,
}: {
  readonly things: readonly PutAwayThing[];
  readonly onBack: (id: string) => void;
}) {
  const { ground } = useWords();
  if (things.length === 0) return null;
  return (
    <section className="put-away" aria-labelledby="put-away-title">
      <h2 id="put-away-title">{ground.away.title}</h2>
      <p className="soft">{ground.away.teach}</p>
      <ul>
        {things.map(({ id, name, shown }) => (
          <li key={id}>
            <span>{shown}</span>
            <Button look="plain" aria-label={ground.away.backOf(name)} onClick={() => onBack(id)}>
              {ground.away.back}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
