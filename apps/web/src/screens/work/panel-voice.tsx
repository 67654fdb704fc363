import type { VoiceRecord } from '@sedgeline/projections';
import type { VoiceFault } from '@sedgeline/words';
import { useCallback, useEffect, useRef, useState } from 'react';
import { type RunningVoice, recordVoice } from '../../devices/voice-recorder.ts';
import { announce } from '../../parts/announcer.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { useKennel } from '../../state/kennel-store.ts';
import { dropVoice, keepVoice } from '../../state/voices.ts';
import { voicesOf } from '../../state/voices-of.ts';
import { useNow } from './use-now.ts';

interface PanelVoiceProps {
  /** The rep that is spoken of, and its number; `null` before the first. */
  readonly about: {
    readonly rep: string;
    readonly number: number;
    readonly voices: readonly VoiceRecord[];
  } | null;
}

/** A note by voice on the rep in hand or the last one: said, heard again, thrown away. It stays on this device. */
export function PanelVoice({ about }: PanelVoiceProps) {
  const { work } = useWords();
  const running = useRef<RunningVoice | null>(null);
  const [begun, setBegun] = useState<{ readonly rep: string; readonly atMs: number } | null>(null);
  const [fault, setFault] = useState<VoiceFault | null>(null);
  const nowMs = useNow();
  useEffect(() => () => running.current?.drop(), []);
  const start = async (rep: string) => {
    setFault(null);
    const started = await recordVoice();
    if (typeof started === 'string') {
      setFault(started);
      return;
    }
    running.current = started;
    setBegun({ rep, atMs: Date.now() });
    announce(work.voice.listening);
  };
  const stop = async (rep: string) => {
    const heard = await running.current?.stop();
    running.current = null;
    setBegun(null);
    if (!heard) {
      setFault('too-short');
      return;
    }
    if ((await keepVoice(rep, heard.sound, heard.lengthS)) === 'kept') announce(work.voice.kept);
    else setFault('not-kept');
  };
  return (
    <section className="work-panel-part work-voice" aria-label={work.voice.title}>
      <h2>{work.voice.title}</h2>
      <p>{about === null ? work.voice.noRep : work.voice.about(about.number)}</p>
      {about !== null && begun === null && (
        <button type="button" onClick={() => void start(about.rep)}>
          {work.voice.start}
        </button>
      )}
      {begun !== null && (
        <button type="button" aria-pressed="true" onClick={() => void stop(begun.rep)}>
          {work.voice.stop((nowMs - begun.atMs) / 1000)}
        </button>
      )}
      {fault !== null && (
        <p role="alert" data-fault={fault}>
          {work.voice.fault(fault)}
        </p>
      )}
      {about !== null && <VoiceList rep={about.rep} voices={about.voices} />}
    </section>
  );
}

interface VoiceListProps {
  readonly rep: string;
  readonly voices: readonly VoiceRecord[];
}

/** The voice notes of a rep, each to be heard or thrown away. */
export function VoiceList({ rep, voices }: VoiceListProps) {
  const { work } = useWords();
  const record = useKennel((s) => s.record);
  const [isElsewhere, setElsewhere] = useState(false);
  const playing = useRef<{ readonly audio: HTMLAudioElement; readonly url: string } | null>(null);
  const hush = useCallback(() => {
    if (playing.current === null) return;
    playing.current.audio.pause();
    URL.revokeObjectURL(playing.current.url);
    playing.current = null;
  }, []);
  useEffect(() => hush, [hush]);
  const play = async ({ voice, sha256 }: VoiceRecord) => {
    hush();
    const sound = await voicesOf(record).read(voice, sha256);
    setElsewhere(sound === null);
    if (sound === null) return;
    const url = URL.createObjectURL(sound);
    const audio = new Audio(url);
    playing.current = { audio, url };
    await audio.play();
  };
  const drop = async (voice: string) => {
    hush();
    await dropVoice(rep, voice);
    announce(work.voice.dropped);
  };
  if (voices.length === 0) return null;
  return (
    <>
      <ul className="work-voices" aria-label={work.voice.list}>
        {voices.map((one) => (
          <li key={one.voice} className="work-panel-keys">
            <button type="button" data-voice={one.voice} onClick={() => void play(one)}>
              {work.voice.play(one.lengthS)}
            </button>
            <button type="button" onClick={() => void drop(one.voice)}>
              {work.voice.drop}
            </button>
          </li>
        ))}
      </ul>
      {isElsewhere && <p role="alert">{work.voice.fault('elsewhere')}</p>}
    </>
  );
}
