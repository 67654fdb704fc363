import type { RepBack } from '@sedgeline/projections';
import { Link } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';

interface RepWaysProps {
  readonly session: string;
  readonly rep: RepBack;
}

/** From a rep to where it is on film, and to what was heard of it. */
export function RepWays({ session, rep: { rep, filmed, heard } }: RepWaysProps) {
  const { back } = useWords();
  if (filmed.length === 0 && heard.length === 0) return null;
  const address = encodeURIComponent(session);
  return (
    <div className="back-rep-ways not-printed">
      {filmed.map(({ film, name, atS }) => (
        <Link
          key={film}
          className="button button-quiet"
          href={`/film/${address}?rep=${encodeURIComponent(rep)}`}
        >
          {back.onFilm(name, atS)}
        </Link>
      ))}
      {heard.map(({ sound, name, atS }) => (
        <Link key={sound} className="button button-quiet" href={`/back/${address}/listen`}>
          {back.heardIn(name, atS)}
        </Link>
      ))}
    </div>
  );
}
