import type { SessionsView } from '@sedgeline/projections';
import { useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import './back.css';
import { SessionCard } from './session-card.tsx';

/** So many sessions are shown at once: some months of a dog's. */
const SHOWN = 40;

/** The sessions of the record as field cards, the newest first. */
export function BackScreen({ view, nowMs }: { readonly view: SessionsView; readonly nowMs: number }) {
  const { back } = useWords();
  const [shown, setShown] = useState(SHOWN);
  const { sessions } = view;
  const left = sessions.length - shown;
  return (
    <section className="back" aria-labelledby="back-title">
      <h1 id="back-title">{back.title}</h1>
      {sessions.length === 0 && (
        <>
          <p>{back.empty}</p>
          <Link className="button button-plain back-key" href="/work">
            {back.toWork}
          </Link>
        </>
      )}
      <ol className="back-list">
        {sessions.slice(0, shown).map((row) => (
          <SessionCard key={row.session} row={row} nowMs={nowMs} />
        ))}
      </ol>
      {left > 0 && (
        <Button className="back-key" onClick={() => setShown(shown + SHOWN)}>
          {back.earlier(Math.min(left, SHOWN))}
        </Button>
      )}
    </section>
  );
}
