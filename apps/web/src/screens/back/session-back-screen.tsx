import type { SessionBackView } from '@sedgeline/projections';
import { Link } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';
import { useKeptSounds } from '../listen/use-kept-sounds.ts';
import { useWhySheet } from '../why/use-why-sheet.tsx';
import './back.css';
import { RepCard } from './rep-card.tsx';
import { RepWays } from './rep-ways.tsx';
import { SessionSounds } from './session-sounds.tsx';
import { useSoundPlayer } from './use-sound-player.ts';

/** One session: how its reps went, and the ways to what was heard and filmed. */
export function SessionBackScreen({ view }: { readonly view: SessionBackView }) {
  const { back, work } = useWords();
  const { openWhy, sheet } = useWhySheet();
  const { session, dogName, openedAtMs, groundName, closedAtMs, legs, done } = view;
  const address = encodeURIComponent(session);
  const kept = useKeptSounds(session);
  const player = useSoundPlayer();
  return (
    <section className="back back-session" aria-labelledby="back-title">
      <Link className="dog-back not-printed" href="/back">
        {back.toAll}
      </Link>
      <h1 id="back-title">{back.session(dogName, openedAtMs)}</h1>
      <p className="back-said">
        {[groundName ?? '', back.reps(done.length), back.went(legs)]
          .filter((part) => part !== '')
          .join(' · ')}
      </p>
      <nav className="back-ways not-printed" aria-label={back.session(dogName, openedAtMs)}>
        <Link href={`/back/${address}/listen`}>
          <b>{back.listen}</b> <span>{back.listenHint}</span>
        </Link>
        <Link href={`/film/${address}`}>
          <b>{back.film}</b> <span>{back.filmHint}</span>
        </Link>
        {closedAtMs === null && (
          <Link href={`/work/${address}`}>
            <b>{back.goOn}</b>
          </Link>
        )}
      </nav>
      <SessionSounds sounds={kept} player={player} />
      {done.length === 0 && <p>{back.noReps}</p>}
      <ol className="back-list back-reps" aria-label={work.panel.all}>
        {done.map((rep, i) => (
          <RepCard key={rep.rep} rep={rep} number={i + 1} onWhy={openWhy}>
            <RepWays session={session} rep={rep} number={i + 1} player={player} />
          </RepCard>
        ))}
      </ol>
      {sheet}
    </section>
  );
}
