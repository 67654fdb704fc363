import type { InTurnView } from '@sedgeline/projections';
import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';
import { keepFocus } from './keep-focus.ts';

/** The session whose turn comes after this one; `null` where no other is open. */
export function nextInTurn({ dogs }: InTurnView, session: string): InTurnView['dogs'][number] | null {
  const at = dogs.findIndex((one) => one.session === session);
  const round = [...dogs.slice(at + 1), ...dogs.slice(0, Math.max(0, at))];
  return round.find((one) => one.isOpen) ?? null;
}

interface TurnBarProps {
  readonly inTurn: InTurnView;
  readonly session: string;
}

/** The dogs worked in turn, a tap from one to another; the next one has a key of its own under the thumb's side. */
export function TurnBar({ inTurn, session }: TurnBarProps) {
  const { work } = useWords();
  const [, go] = useLocation();
  const here = useRef<HTMLButtonElement>(null);
  const next = nextInTurn(inTurn, session);
  useEffect(() => {
    if (session !== '') here.current?.scrollIntoView({ block: 'nearest', inline: 'center' });
  }, [session]);
  return (
    <nav className="work-round" aria-label={work.inTurn.name}>
      <ol className="work-round-dogs">
        {inTurn.dogs
          .filter(({ isOpen }) => isOpen)
          .map((one) => (
            <li key={one.session}>
              <button
                ref={one.session === session ? here : undefined}
                type="button"
                data-session={one.session}
                aria-current={one.session === session ? 'true' : undefined}
                aria-label={work.inTurn.dog(one.name, one.reps)}
                onMouseDown={keepFocus}
                onClick={() => go(`/work/${one.session}`, { replace: true })}
              >
                {one.name} <span className="work-round-reps">{one.reps}</span>
              </button>
            </li>
          ))}
      </ol>
      {next !== null && (
        <button
          type="button"
          className="work-round-next"
          aria-keyshortcuts="N"
          onMouseDown={keepFocus}
          onClick={() => go(`/work/${next.session}`, { replace: true })}
        >
          {work.inTurn.next(next.name)}
        </button>
      )}
    </nav>
  );
}
