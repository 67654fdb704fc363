import type { VoiceStore } from '../devices/voice-store.ts';
import { newId, tapWork } from './kennel.ts';
import { useKennel } from './kennel-store.ts';
import { voicesOf } from './voices-of.ts';

/** Keeps a sound and joins it to its rep: the sound first, so that no fact speaks of what is not there. */
export async function keepVoice(rep: string, sound: Blob, lengthS: number): Promise<'kept' | 'not-kept'> {
  const voice = newId();
  const store = voicesOf(useKennel.getState().record);
  let kept: Awaited<ReturnType<VoiceStore['keep']>>;
  try {
    kept = await store.keep(voice, sound, Date.now());
  } catch (error) {
    if (error instanceof DOMException) return 'not-kept';
    throw error;
  }
  const answer = await tapWork({
    do: 'voice',
    rep,
    voice,
    lengthS: Math.min(3600, Math.round(lengthS * 10) / 10),
    type: sound.type,
    ...kept,
  });
  if (answer.kind === 'done') {
    if (answer.saved) await store.settle(voice);
    return 'kept';
  }
  await store.drop(voice);
  return 'not-kept';
}

/** Throws a voice note away: the fact first, then the sound. */
export async function dropVoice(rep: string, voice: string): Promise<void> {
  const { record } = useKennel.getState();
  const answer = await tapWork({ do: 'voice-drop', rep, voice });
  if (answer.kind === 'done') await voicesOf(record).drop(voice);
}
