import type { SessionRow } from '@sedgeline/projections';
import { Link } from 'wouter';
import { FieldCard } from '../../parts/field-card/field-card.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { useWords } from '../../parts/words-context.tsx';
import './back-cards.css';

/** A session as a field card: its fullest rep drawn, and whose, when, where, what was asked and how it went. The whole card opens it. */
export function SessionCard({ row, nowMs }: { readonly row: SessionRow; readonly nowMs: number }) {
  const { back, time, picture } = useWords();
  const { session, dogName, groundName, openedAtMs, closedAtMs, reps, legs, asked, drawn } = row;
  return (
    <li className="back-card">
      <h2>
        <Link className="back-card-open" href={`/back/${encodeURIComponent(session)}`}>
          <b>{dogName}</b>{' '}
          <time dateTime={new Date(openedAtMs).toISOString()}>
            {time.date(openedAtMs)}, {time.ago(openedAtMs, nowMs)}
          </time>
        </Link>
      </h2>
      <div className="back-card-picture">
        {drawn === null ? (
          <span className="back-card-bare" aria-hidden="true" />
        ) : (
          <FieldCard picture={drawn.picture} size="small" title={back.card(picture.title, drawn.repNumber)} />
        )}
      </div>
      <div className="back-card-said">
        <p className="soft">
          {[groundName ?? '', back.reps(reps), closedAtMs === null ? back.open : '']
            .filter((part) => part !== '')
            .join(' · ')}
        </p>
        {asked.length > 0 && <p className="back-card-asked">{unbroken(back.asked(asked))}</p>}
        <p className="back-card-went">{back.wentSaid(legs)}</p>
      </div>
    </li>
  );
}
