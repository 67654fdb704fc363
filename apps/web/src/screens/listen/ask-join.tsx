import { useEffect, useRef, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { JoinPlace, JoinQuestion } from './join-draft.ts';
import { PlayMoment } from './play-moment.tsx';

interface AskJoinProps {
  readonly question: JoinQuestion;
  readonly left: number;
  readonly nameOf: (place: JoinPlace) => string;
  /** What "another rep" may be. */
  readonly places: readonly JoinPlace[];
  readonly playable: Blob | null;
  readonly onAnswer: (place: JoinPlace | null) => void;
}

/** One blast that is not sure, asked for: this leg's, another's, or nobody's. */
export function AskJoin({ question, left, nameOf, places, playable, onAnswer }: AskJoinProps) {
  const { result } = useWords().listenScreen;
  const { at, proposed } = question;
  const [isOther, setOther] = useState(false);
  const title = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    title.current?.focus({ preventScroll: true });
  }, []);
  const others = places.filter(({ rep, leg }) => rep !== proposed.rep || leg !== proposed.leg);
  return (
    <div className="listen-ask">
      <p className="listen-lead" ref={title} tabIndex={-1}>
        {result.ask(at.startS, at.kind, at.count, nameOf(proposed))}
      </p>
      <p className="soft">
        {result.sureness(at.sureness)} {result.askedLeft(left)}
      </p>
      <div className="listen-keys">
        <Button look="main" onClick={() => onAnswer(proposed)}>
          {result.yes}
        </Button>
        {others.length > 0 && (
          <Button aria-expanded={isOther} onClick={() => setOther(!isOther)}>
            {result.other}
          </Button>
        )}
        <Button onClick={() => onAnswer(null)}>{others.length > 0 ? result.none : result.no}</Button>
        {playable !== null && <PlayMoment sound={playable} atS={at.startS} />}
      </div>
      {isOther && (
        <fieldset className="listen-others">
          <legend>{result.otherTitle}</legend>
          {others.map((place) => (
            <Button key={`${place.rep} ${place.leg}`} onClick={() => onAnswer(place)}>
              {nameOf(place)}
            </Button>
          ))}
        </fieldset>
      )}
    </div>
  );
}
