import { useId, useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { useWords } from '../../../parts/words-context.tsx';

/** Copies what is drawn to another ground, as a layout of its own. */
export function CopyPanel({
  grounds,
  onCopy,
}: {
  readonly grounds: readonly { readonly ground: string; readonly name: string }[];
  readonly onCopy: (ground: string) => Promise<void>;
}) {
  const { copy } = useWords().ground.editor;
  const id = useId();
  const [wanted, setWanted] = useState(grounds[0]?.ground ?? '');
  const [done, setDone] = useState('');
  const isThere = grounds.some(({ ground }) => ground === wanted);
  const to = isThere ? wanted : (grounds[0]?.ground ?? '');
  return (
    <section className="edit-panel not-printed" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{copy.title}</h2>
      {grounds.length === 0 ? (
        <p className="soft">{copy.none}</p>
      ) : (
        <div className="edit-copy field">
          <label htmlFor={`${id}-to`}>{copy.to}</label>
          <select id={`${id}-to`} value={to} onChange={(event) => setWanted(event.target.value)}>
            {grounds.map(({ ground, name }) => (
              <option key={ground} value={ground}>
                {name}
              </option>
            ))}
          </select>
          <Button
            onClick={() =>
              void onCopy(to).then(() =>
                setDone(copy.done(grounds.find(({ ground }) => ground === to)?.name ?? '')),
              )
            }
          >
            {copy.do}
          </Button>
        </div>
      )}
      <p role="status">{done}</p>
    </section>
  );
}
