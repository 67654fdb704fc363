import { useCallback, useEffect, useRef, useState } from 'react';
import { useKennel } from '../../state/kennel-store.ts';
import { voicesOf } from '../../state/voices-of.ts';

/** A sound that was kept on a device, and where to begin in it. */
export interface KeptMoment {
  /** What tells the key that plays it from the others of the screen. */
  readonly key: string;
  /** Id under which the device keeps it. */
  readonly sound: string;
  readonly sha256: string;
  readonly fromS: number;
}

/** The sound is not on this device, or this browser can't play it. */
export type SoundFault = 'gone' | 'cannot';

/** One sound of the screen at a time, played from the device's own store. */
export interface SoundPlayer {
  /** Key of what plays now; `null` while nothing does. */
  readonly playing: string | null;
  readonly fault: { readonly key: string; readonly fault: SoundFault } | null;
  readonly play: (moment: KeptMoment) => void;
  readonly stop: () => void;
}

interface Playing {
  readonly audio: HTMLAudioElement;
  readonly url: string;
}

/** Plays kept sounds; what plays stops with the screen. */
export function useSoundPlayer(): SoundPlayer {
  const record = useKennel((s) => s.record);
  const [playing, setPlaying] = useState<string | null>(null);
  const [fault, setFault] = useState<SoundPlayer['fault']>(null);
  const now = useRef<Playing | null>(null);
  /** Counts what was asked for: a sound that is read too late is let fall. */
  const asked = useRef(0);
  const hush = useCallback(() => {
    asked.current += 1;
    if (now.current === null) return;
    now.current.audio.pause();
    URL.revokeObjectURL(now.current.url);
    now.current = null;
  }, []);
  useEffect(() => hush, [hush]);
  const stop = useCallback(() => {
    hush();
    setPlaying(null);
  }, [hush]);
  const play = async ({ key, sound, sha256, fromS }: KeptMoment) => {
    stop();
    setFault(null);
    const turn = asked.current;
    setPlaying(key);
    const end = (why: SoundFault | null) => {
      if (turn !== asked.current) return;
      stop();
      if (why !== null) setFault({ key, fault: why });
    };
    const kept = await voicesOf(record)
      .read(sound, sha256)
      .catch(() => null);
    if (turn !== asked.current) return;
    if (kept === null) return end('gone');
    const url = URL.createObjectURL(kept);
    const audio = new Audio(url);
    now.current = { audio, url };
    audio.addEventListener('ended', () => end(null));
    audio.addEventListener('error', () => end('cannot'));
    audio.currentTime = Math.max(0, fromS);
    try {
      await audio.play();
    } catch {
      end('cannot');
    }
  };
  return { playing, fault, play: (moment) => void play(moment), stop };
}
