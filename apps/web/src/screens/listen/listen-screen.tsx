import type { OwnWhistle } from '@sedgeline/engine/sound';
import type { SoundJoined } from '@sedgeline/journal';
import type { JoinProposal, SessionBackView, SoundRecord } from '@sedgeline/projections';
import { useCallback, useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { type FileListening, listenToFile } from '../../devices/listen-to-file.ts';
import type { SoundFileFault } from '../../devices/sound-file.ts';
import { useWakeLock } from '../../devices/wake-lock.ts';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { append, listenDesk, newId } from '../../state/kennel.ts';
import { useKennel } from '../../state/kennel-store.ts';
import { dropListened, type ListenedDraft, useListenedDraft } from '../../state/listened-drafts.ts';
import { useLive } from '../../state/live-state.ts';
import { voicesOf } from '../../state/voices-of.ts';
import { ChooseSound } from './choose-sound.tsx';
import { KeptSounds } from './kept-sounds.tsx';
import { ListenResult } from './listen-result.tsx';
import { type HeardSource, heardByMicrophone, heardInFile } from './listened-sound.ts';
import { ListeningProgress } from './listening-progress.tsx';
import { useKeptSounds } from './use-kept-sounds.ts';
import './listen.css';

type Stage =
  | { readonly at: 'choose'; readonly said: string | null; readonly fault: SoundFileFault | null }
  | {
      readonly at: 'working';
      readonly name: string;
      readonly state: Extract<FileListening, { readonly kind: 'working' }>;
    }
  | {
      readonly at: 'result';
      readonly source: HeardSource;
      readonly proposal: JoinProposal;
      readonly own: OwnWhistle | null;
    };

const CHOOSE: Stage = { at: 'choose', said: null, fault: null };

/** Listen: a sound of this session, from choosing it to what is kept of it. */
export function ListenScreen({ view }: { readonly view: SessionBackView }) {
  const { listenScreen } = useWords();
  const { session } = view;
  const record = useKennel((s) => s.record);
  const waiting = useListenedDraft(record, session);
  const isLive = useLive((s) => s.running?.session === session);
  const [stage, setStage] = useState<Stage>(CHOOSE);
  const [takenOut, setTakenOut] = useState<SoundRecord | null>(null);
  const sounds = useKeptSounds(session);
  const cancel = useRef<(() => void) | null>(null);
  useWakeLock(stage.at === 'working' || isLive);
  useEffect(() => () => cancel.current?.(), []);
  useEffect(() => {
    if (!isLive) useLive.setState({ stopped: null });
  }, [isLive]);

  const show = useCallback(
    async (source: HeardSource) => {
      const [proposal, own] = await Promise.all([
        listenDesk().joinSound({ session, sound: source.listened }),
        listenDesk().ownWhistle(session),
      ]);
      if (proposal !== null) setStage({ at: 'result', source, proposal, own });
    },
    [session],
  );
  const hear = async (file: File) => {
    const own = await listenDesk().ownWhistle(session);
    cancel.current = listenToFile(file, own, (state) => {
      if (state.kind === 'working') setStage({ at: 'working', name: file.name, state });
      if (state.kind === 'failed') setStage({ at: 'choose', said: null, fault: state.fault });
      if (state.kind === 'done') void heardInFile(file, state.listened, view, newId()).then(show);
    });
  };
  const stopHearing = () => {
    cancel.current?.();
    setStage({ at: 'choose', said: listenScreen.file.cancelled, fault: null });
  };
  const letGo = async (draft: ListenedDraft | null) => {
    if (draft !== null) {
      dropListened(record, session);
      if (draft.sound !== null) await voicesOf(record).drop(draft.sound.id);
    }
    setStage({ at: 'choose', said: listenScreen.result.gone, fault: null });
  };
  const keep = async (source: HeardSource, joins: SoundJoined['joins']) => {
    const facts = await listenDesk().keepSoundFacts({ heard: source.body, joins });
    await append(facts);
    if (source.body.from === 'microphone') dropListened(record, session);
    const timed = facts.filter(({ kind }) => kind === 'rep-amended').length;
    setStage({ at: 'choose', said: listenScreen.result.kept(joins.length, timed), fault: null });
  };
  const say = async (sound: SoundRecord, stands: boolean) => {
    await append([
      { kind: 'sound-dropped', body: { sound: sound.sound, session, ...(stands ? { stands } : {}) } },
    ]);
    setTakenOut(stands ? null : sound);
  };
  return (
    <section className="listen" aria-labelledby="listen-title">
      <Link className="dog-back not-printed" href={`/back/${encodeURIComponent(session)}`}>
        {listenScreen.back}
      </Link>
      <h1 id="listen-title">{listenScreen.title(view.dogName)}</h1>
      {stage.at === 'choose' && (
        <>
          <p>{listenScreen.say}</p>
          {stage.said !== null && <Notice>{stage.said}</Notice>}
          {stage.fault !== null && (
            <div data-fault={stage.fault.code}>
              <Notice tone="care">{listenScreen.fault(stage.fault)}</Notice>
            </div>
          )}
          <ChooseSound
            session={session}
            isOpen={view.closedAtMs === null}
            waiting={isLive ? null : waiting}
            onFile={(file) => void hear(file)}
            onWaiting={(draft) => void show(heardByMicrophone(draft, view, listenScreen.live.name, newId()))}
            onLetGo={() => void letGo(waiting)}
          />
          <KeptSounds
            sounds={sounds}
            takenOut={takenOut}
            onDrop={(sound) => void say(sound, false)}
            onTakeBack={(sound) => void say(sound, true)}
          />
        </>
      )}
      {stage.at === 'working' && (
        <ListeningProgress name={stage.name} state={stage.state} onCancel={stopHearing} />
      )}
      {stage.at === 'result' && (
        <ListenResult
          source={stage.source}
          proposal={stage.proposal}
          own={stage.own}
          onKeep={(joins) => void keep(stage.source, joins)}
          onLetGo={() => void letGo(stage.source.body.from === 'microphone' ? waiting : null)}
        />
      )}
    </section>
  );
}
