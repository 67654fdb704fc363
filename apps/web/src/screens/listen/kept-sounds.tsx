import type { SoundRecord } from '@sedgeline/projections';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

interface KeptSoundsProps {
  readonly sounds: readonly SoundRecord[];
  /** The one that was just taken out; `null` where none was. */
  readonly takenOut: SoundRecord | null;
  readonly onDrop: (sound: SoundRecord) => void;
  readonly onTakeBack: (sound: SoundRecord) => void;
}

/** Sounds of the session that were kept, each to be taken out and put back. */
export function KeptSounds({ sounds, takenOut, onDrop, onTakeBack }: KeptSoundsProps) {
  const { before } = useWords().listenScreen;
  if (sounds.length === 0 && takenOut === null) return null;
  return (
    <section className="listen-part" aria-label={before.title}>
      <h2>{before.title}</h2>
      <ul className="listen-kept">
        {sounds.map((sound) => (
          <li key={sound.sound}>
            <span>{before.one(sound.name, sound.lengthS, sound.joins.length)}</span>
            <Button look="quiet" onClick={() => onDrop(sound)}>
              {before.drop}
            </Button>
          </li>
        ))}
      </ul>
      {takenOut !== null && (
        <p role="status" className="listen-keys">
          {before.dropped}
          <Button look="quiet" onClick={() => onTakeBack(takenOut)}>
            {before.takeBack}
          </Button>
        </p>
      )}
    </section>
  );
}
