import type { RepBack } from '@sedgeline/projections';
import type { ReactNode } from 'react';
import { FieldCard } from '../../parts/field-card/field-card.tsx';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { useWords } from '../../parts/words-context.tsx';
import './back-cards.css';

interface RepCardProps {
  readonly rep: RepBack;
  readonly number: number;
  readonly onWhy: (rep: string) => void;
  /** The ways to its film and its sound. */
  readonly children?: ReactNode;
}

/** A rep of a session that is looked back on: drawn as it was asked, and what came of each leg. A tap on the card says why. */
export function RepCard({ rep, number, onWhy, children }: RepCardProps) {
  const { back, ask, work, whySheet, picture, trade } = useWords();
  const { legs, asked, clean, expectation, note, fromMemory } = rep;
  const notReached = asked.slice(legs.length).map(({ skill }) => skill);
  return (
    <li className="back-card back-rep" data-rep={number}>
      <h2>
        <button
          type="button"
          className="back-card-open"
          aria-haspopup="dialog"
          aria-label={whySheet.open(number)}
          onClick={() => onWhy(rep.rep)}
        >
          <b>{back.rep(number)}</b>
          {fromMemory && <span className="soft">{work.fromMemory}</span>}
          <span className="why-word">{whySheet.name}</span>
        </button>
      </h2>
      <div className="back-card-picture">
        <FieldCard picture={rep.picture} size="small" title={back.card(picture.title, number)} />
      </div>
      <div className="back-card-said">
        <p className="back-card-asked">{unbroken(ask.legs(asked))}</p>
        <ul className="back-legs">
          {legs.map(({ skill, grade, cause }, n) => (
            <li key={n}>
              <GradeMark grade={grade} word={trade.grade(grade)} size={16} />
              {back.outcome(skill, grade, cause)}
            </li>
          ))}
        </ul>
        {notReached.length > 0 && <p className="soft">{back.notReached(notReached)}</p>}
        {clean && <p>{back.clean(expectation)}</p>}
        {note !== null && note !== '' && <p>{back.note(note)}</p>}
      </div>
      {children}
    </li>
  );
}
