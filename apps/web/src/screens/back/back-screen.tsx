import type { SessionsView } from '@sedgeline/projections';
import { useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import './back.css';

/** So many sessions are shown at once: some months of a dog's. */
const SHOWN = 40;

/** The sessions of the record in one line each, the newest first. */
export function BackScreen({ view, nowMs }: { readonly view: SessionsView; readonly nowMs: number }) {
  const { back, time } = useWords();
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
          <li key={row.session}>
            <Link href={`/back/${encodeURIComponent(row.session)}`}>
              <span className="back-head">
                <b>{row.dogName}</b>
                <time dateTime={new Date(row.openedAtMs).toISOString()}>
                  {time.date(row.openedAtMs)}, {time.ago(row.openedAtMs, nowMs)}
                </time>
              </span>
              <span className="back-went">
                {[
                  row.groundName ?? '',
                  back.reps(row.reps),
                  back.went(row.legs),
                  row.closedAtMs === null ? back.open : '',
                ]
                  .filter((part) => part !== '')
                  .join(' · ')}
              </span>
            </Link>
          </li>
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
