import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { KeptMoment, SoundPlayer } from './use-sound-player.ts';

interface SoundKeyProps {
  readonly player: SoundPlayer;
  readonly moment: KeptMoment;
  /** What the key is called while nothing plays, where what stands on it does not say which sound it is. */
  readonly name?: string;
  /** What the key says while nothing plays. */
  readonly children: string;
}

/** A key that plays a kept sound, and stops it while it plays. Where it can't, the reason stands beside it. */
export function SoundKey({ player, moment, name, children }: SoundKeyProps) {
  const { back } = useWords();
  const isPlaying = player.playing === moment.key;
  const fault = player.fault?.key === moment.key ? player.fault.fault : null;
  return (
    <>
      <Button
        look="quiet"
        className="back-sound-key"
        data-playing={isPlaying}
        aria-label={isPlaying ? undefined : name}
        onClick={() => (isPlaying ? player.stop() : player.play(moment))}
      >
        <svg viewBox="0 0 24 24" width="20" height="20" aria-hidden="true">
          <path d={isPlaying ? 'M6 6h12v12H6z' : 'M7 4.5v15L19 12z'} />
        </svg>
        {isPlaying ? back.sound.stop : children}
      </Button>
      {fault !== null && (
        <p role="alert" className="back-sound-fault" data-fault={fault}>
          {back.sound.fault(fault)}
        </p>
      )}
    </>
  );
}
