import type { RepBack } from '@sedgeline/projections';
import { Link } from 'wouter';
import { unbroken } from '../../parts/unbroken.ts';
import { useWords } from '../../parts/words-context.tsx';
import { SoundKey } from './sound-key.tsx';
import type { SoundPlayer } from './use-sound-player.ts';

/** A whistle is heard from so long before it, to know what it answers (our judgement, 2026). */
const LEAD_S = 2;

interface RepWaysProps {
  readonly session: string;
  readonly rep: RepBack;
  readonly number: number;
  readonly player: SoundPlayer;
}

/** From a rep to where it is on film and to what was heard of it; a sound that was kept is played at once. */
export function RepWays({ session, rep, number, player }: RepWaysProps) {
  const { back } = useWords();
  const { filmed, heard, voices } = rep;
  if (filmed.length + heard.length + voices.length === 0) return null;
  const address = encodeURIComponent(session);
  return (
    <div className="back-rep-ways not-printed">
      {filmed.map(({ film, name, atS }) => (
        <Link
          key={film}
          className="button button-quiet"
          href={`/film/${address}?rep=${encodeURIComponent(rep.rep)}`}
          aria-label={back.ofRep(back.onFilm(atS), number, name)}
          title={name}
        >
          {unbroken(back.onFilm(atS))}
        </Link>
      ))}
      {heard.map(({ sound, name, atS, sha256 }) =>
        sha256 === null ? (
          <Link
            key={sound}
            className="button button-quiet"
            href={`/back/${address}/listen`}
            aria-label={back.ofRep(back.heardAt(atS), number, name)}
            title={name}
          >
            {unbroken(back.heardAt(atS))}
          </Link>
        ) : (
          <SoundKey
            key={sound}
            player={player}
            moment={{ key: `${rep.rep} ${sound}`, sound, sha256, fromS: atS - LEAD_S }}
            name={back.ofRep(back.sound.hearAt(atS), number, name)}
          >
            {unbroken(back.sound.hearAt(atS))}
          </SoundKey>
        ),
      )}
      {voices.map(({ voice, sha256, lengthS }) => (
        <SoundKey
          key={voice}
          player={player}
          moment={{ key: voice, sound: voice, sha256, fromS: 0 }}
          name={back.ofRep(back.sound.hearNote(lengthS), number, '')}
        >
          {unbroken(back.sound.hearNote(lengthS))}
        </SoundKey>
      ))}
    </div>
  );
}
