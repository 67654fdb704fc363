import { type DragEvent, useState } from 'react';
import { Link } from 'wouter';
import type { MicrophoneFault } from '../../devices/voice-recorder.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { ListenedDraft } from '../../state/listened-drafts.ts';
import { startListening } from '../../state/live-listening.ts';
import { useLive } from '../../state/live-state.ts';

interface ChooseSoundProps {
  readonly session: string;
  /** Whether Work goes on with it. */
  readonly isOpen: boolean;
  readonly waiting: ListenedDraft | null;
  readonly onFile: (file: File) => void;
  readonly onWaiting: (draft: ListenedDraft) => void;
  readonly onLetGo: () => void;
}

/** Where the sound comes from: a file, or the microphone, or what it heard before. While a session is worked the microphone comes first. */
export function ChooseSound({ session, isOpen, waiting, onFile, onWaiting, onLetGo }: ChooseSoundProps) {
  const { listenScreen } = useWords();
  const { file, live } = listenScreen;
  const [isOver, setOver] = useState(false);
  const take = (files: FileList | null) => {
    const [first] = files ?? [];
    if (first !== undefined) onFile(first);
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    take(event.dataTransfer.files);
  };
  return (
    <>
      {waiting !== null && (
        <section className="listen-part" aria-label={live.waiting(waiting.lengthS / 60)}>
          <p className="listen-lead">{live.waiting(waiting.lengthS / 60)}</p>
          <div className="listen-keys">
            <Button look="main" onClick={() => onWaiting(waiting)}>
              {live.join}
            </Button>
            <Button look="quiet" onClick={onLetGo}>
              {live.letGo}
            </Button>
          </div>
        </section>
      )}
      {isOpen && <LivePart session={session} isOpen />}
      <section
        className="listen-part"
        aria-label={file.title}
        data-over={isOver}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <h2>{file.title}</h2>
        <p>{file.hint}</p>
        <label className="button button-plain listen-file">
          <input
            type="file"
            accept="audio/*,video/*,.wav,.mp3,.m4a,.mp4,.mov,.webm,.flac,.ogg"
            onChange={(event) => {
              take(event.target.files);
              event.target.value = '';
            }}
          />
          {file.choose}
        </label>
        <p className="soft listen-drop">{file.drop}</p>
      </section>
      {!isOpen && <LivePart session={session} isOpen={false} />}
    </>
  );
}

/** The key stands at the foot of a phone's screen: what is said of it must not stay below. */
const bringIntoSight = (told: HTMLElement | null) => told?.scrollIntoView({ block: 'nearest' });

/** Begins to listen with the microphone; stopping it stands in the bar that every screen shows. */
function LivePart({ session, isOpen }: Pick<ChooseSoundProps, 'session' | 'isOpen'>) {
  const { listenScreen, back } = useWords();
  const { live } = listenScreen;
  const running = useLive((s) => s.running);
  const [keepSound, setKeepSound] = useState(false);
  const [state, setState] = useState<'asking' | MicrophoneFault | null>(null);
  const start = async () => {
    setState('asking');
    const answer = await startListening(session, keepSound);
    setState(answer === 'listening' ? null : answer);
  };
  return (
    <section className="listen-part" aria-label={live.title}>
      <h2>{live.title}</h2>
      <p>{live.hint}</p>
      <p>{live.locking}</p>
      {running === null && (
        <>
          <label className="listen-check">
            <input
              type="checkbox"
              checked={keepSound}
              onChange={(event) => setKeepSound(event.target.checked)}
            />
            {live.keep}
          </label>
          <Button onClick={() => void start()} disabled={state === 'asking'}>
            {live.start}
          </Button>
        </>
      )}
      {running !== null && running.session !== session && <p>{live.other}</p>}
      {running !== null && running.session === session && isOpen && (
        <Link className="button button-plain" href={`/work/${encodeURIComponent(session)}`}>
          {back.goOn}
        </Link>
      )}
      {state === 'asking' && <p role="status">{live.asking}</p>}
      {state !== null && state !== 'asking' && (
        <div className="listen-fault" data-fault={state} ref={bringIntoSight}>
          <Notice tone="care">{live.fault(state)}</Notice>
        </div>
      )}
    </section>
  );
}
