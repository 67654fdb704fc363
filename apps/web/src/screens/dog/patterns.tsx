import type { PatternsView } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

/** What shows over months, each with its figures and counts; one line where nothing does. */
export function Patterns({ view }: { readonly view: PatternsView }) {
  const { patterns: words } = useWords();
  const told = view.patterns.filter(({ state }) => state === 'looks-like' || state === 'may-be');
  return (
    <section className="patterns" aria-labelledby="patterns-title">
      <h2 id="patterns-title">{words.heading}</h2>
      {told.length === 0 ? (
        <p className="soft">{words.nothing(view.legs)}</p>
      ) : (
        <ul className="patterns-told">
          {told.map((found) => (
            <li key={found.pattern}>
              <b>{words.title(found.pattern)}</b>
              <p className="figures">{words.sentence(found)}</p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
