import { SKILLS } from '@sedgeline/engine/ability';
import type { PlannedRep } from '@sedgeline/engine/session';
import type { InTurnView, WorkView } from '@sedgeline/projections';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';
import { useKennel } from '../../state/kennel-store.ts';
import { closeTurns } from '../../state/open-session.ts';
import type { WorkScreen } from '../../workers/kennel-calls.ts';
import { PanelAsk } from './panel-ask.tsx';
import { PanelDevice } from './panel-device.tsx';
import { PanelMemory } from './panel-memory.tsx';
import { PanelReps } from './panel-reps.tsx';
import { PanelVoice } from './panel-voice.tsx';
import type { WorkTaps } from './use-work-taps.ts';

interface MorePanelProps {
  readonly screen: WorkScreen;
  readonly rep: PlannedRep;
  readonly taps: WorkTaps;
  readonly onWhy: (rep: string) => void;
  readonly onPocket: () => void;
  readonly onClose: () => void;
}

/** Everything that is not a tap of the pad. It lies over the pad; the card stays in sight and follows. */
export function MorePanel({ screen, rep, taps, onWhy, onPocket, onClose }: MorePanelProps) {
  const { work, trade, shell, listenScreen } = useWords();
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    title.current?.focus({ preventScroll: true });
  }, []);
  const { view } = screen;
  const graded = view.inHand?.graded.length ?? 0;
  const act = (job: () => void) => () => {
    onClose();
    job();
  };
  return (
    <section
      className="work-panel"
      role="dialog"
      aria-label={work.panel.title}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <div className="work-panel-head">
        <h2 ref={title} tabIndex={-1}>
          {work.panel.title}
        </h2>
        <button type="button" className="work-panel-close" onClick={onClose}>
          {work.panel.close}
        </button>
      </div>
      <div className="work-panel-keys">
        <button type="button" aria-keyshortcuts="B" onClick={act(() => taps.startBreak())}>
          {work.break.now}
        </button>
        <button type="button" onClick={act(() => taps.close())}>
          {work.panel.end}
        </button>
        <button type="button" aria-keyshortcuts="P" onClick={act(onPocket)}>
          {work.pocket.open}
        </button>
        <Link href={`/back/${encodeURIComponent(view.session)}/listen`} className="work-link">
          {listenScreen.live.start}
        </Link>
        {view.inTurn !== null && <EndTurns inTurn={view.inTurn} />}
      </div>
      <PanelAsk key={`${view.repNumber} ${graded}`} rep={rep} firstOpen={graded} />
      {view.inHand === null && (
        <section className="work-panel-part" aria-label={work.panel.skills}>
          <h2>{work.panel.skills}</h2>
          <div className="work-panel-keys">
            {SKILLS.map((skill) => (
              <button key={skill} type="button" onClick={act(() => taps.send({ do: 'skill', skill }))}>
                {trade.skill(skill)}
              </button>
            ))}
          </div>
        </section>
      )}
      <PanelReps view={view} turn={screen.turnCount} taps={taps} onWhy={onWhy}>
        <PanelMemory view={view} asked={rep.legs} taps={taps} />
      </PanelReps>
      <PanelNote taps={taps} />
      <PanelVoice about={spokenOf(view)} />
      <section className="work-panel-part" aria-label={work.panel.otherDogs}>
        <h2>{work.panel.otherDogs}</h2>
        <OtherSessions session={view.session} />
        <Link href="/" className="work-link">
          {shell.toDogs}
        </Link>
      </section>
      <PanelDevice />
    </section>
  );
}

/** The rep that a note is about: the chain in hand, else the last one. */
function spokenOf({ inHand, done, repNumber }: WorkView) {
  const last = inHand ?? done.at(-1);
  if (last === undefined) return null;
  return { rep: last.rep, voices: last.voices, number: inHand === null ? done.length : repNumber };
}

/** Ends the session of every dog that is worked in turn. */
function EndTurns({ inTurn }: { readonly inTurn: InTurnView }) {
  const { work } = useWords();
  const open = inTurn.dogs.filter(({ isOpen }) => isOpen).map(({ session }) => session);
  return (
    <button type="button" onClick={() => void closeTurns(open)}>
      {work.inTurn.endAll}
    </button>
  );
}

function PanelNote({ taps }: { readonly taps: WorkTaps }) {
  const { work } = useWords();
  const [note, setNote] = useState('');
  const keep = () => {
    if (note.trim() === '') return;
    taps.send({ do: 'note', note: note.trim() }, work.said.noted);
    setNote('');
  };
  return (
    <section className="work-panel-part">
      <label className="work-note">
        {work.panel.note}
        <textarea rows={2} value={note} onChange={(event) => setNote(event.target.value)} />
      </label>
      <button type="button" onClick={keep}>
        {work.panel.noteSave}
      </button>
    </section>
  );
}

/** Sessions of other dogs that are open: worked in turn with this one. */
function OtherSessions({ session }: { readonly session: string }) {
  const { work } = useWords();
  const dogs = useKennel((s) => s.dogs);
  const others = dogs?.dogs.filter((row) => row.openSession !== null && row.openSession !== session) ?? [];
  return (
    <div className="work-panel-keys">
      {others.map((row) => (
        <Link key={row.dog} href={`/work/${row.openSession}`}>
          {work.open.carryOn(row.name)}
        </Link>
      ))}
    </div>
  );
}
