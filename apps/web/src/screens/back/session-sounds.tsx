import type { SoundRecord } from '@sedgeline/projections';
import { unbroken } from '../../parts/unbroken.ts';
import { useWords } from '../../parts/words-context.tsx';
import { SoundKey } from './sound-key.tsx';
import type { SoundPlayer } from './use-sound-player.ts';

/** What was listened to in this session, each to be heard from its beginning where the sound itself was kept. */
export function SessionSounds({
  sounds,
  player,
}: {
  readonly sounds: readonly SoundRecord[];
  readonly player: SoundPlayer;
}) {
  const { back, listenScreen } = useWords();
  if (sounds.length === 0) return null;
  return (
    <section className="back-sounds not-printed" aria-labelledby="back-sounds">
      <h2 id="back-sounds">{back.sound.title}</h2>
      <ul>
        {sounds.map(({ sound, name, lengthS, joins, sha256 }) => (
          <li key={sound}>
            <span className="back-kept">
              {unbroken(listenScreen.before.one(name, lengthS, joins.length))}
            </span>
            {sha256 === null ? (
              <span className="soft">{back.sound.timesOnly}</span>
            ) : (
              <SoundKey player={player} moment={{ key: sound, sound, sha256, fromS: 0 }}>
                {back.sound.hear}
              </SoundKey>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
