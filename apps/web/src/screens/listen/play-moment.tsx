import { useEffect, useRef, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** Some seconds about a blast are played: enough to know it again (our judgement, 2026). */
const BEFORE_S = 1.5;
const LASTS_MS = 4500;

/** Plays a moment of the file that was listened to; the key goes where the browser can't play it. */
export function PlayMoment({ sound, atS }: { readonly sound: Blob; readonly atS: number }) {
  const { result } = useWords().listenScreen;
  const audio = useRef<HTMLAudioElement | null>(null);
  const [canPlay, setCanPlay] = useState(true);
  useEffect(() => {
    const url = URL.createObjectURL(sound);
    const player = new Audio(url);
    player.preload = 'metadata';
    player.addEventListener('error', () => setCanPlay(false));
    audio.current = player;
    return () => {
      player.pause();
      URL.revokeObjectURL(url);
    };
  }, [sound]);
  const play = async () => {
    const player = audio.current;
    if (player === null) return;
    player.currentTime = Math.max(0, atS - BEFORE_S);
    try {
      await player.play();
      setTimeout(() => player.pause(), LASTS_MS);
    } catch {
      setCanPlay(false);
    }
  };
  if (!canPlay) return null;
  return <Button onClick={() => void play()}>{result.play(atS)}</Button>;
}
