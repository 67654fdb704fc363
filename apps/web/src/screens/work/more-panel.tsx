import { SKILLS } from '@sedgeline/engine/ability';
import type { PlannedRep } from '@sedgeline/engine/session';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';
import { useKennel } from '../../state/kennel-store.ts';
import type { WorkScreen } from '../../workers/kennel-calls.ts';
import { PanelAsk } from './panel-ask.tsx';
import { PanelDevice } from './panel-device.tsx';
import { PanelReps } from './panel-reps.tsx';
import type { WorkTaps } from './use-work-taps.ts';

interface MorePanelProps {
  readonly screen: WorkScreen;
  readonly rep: PlannedRep;
  readonly taps: WorkTaps;
  readonly onWhy: (rep: string) => void;
  readonly onClose: () => void;
}

/** Everything that is not a tap of the pad. It lies over the pad; the card stays in sight and follows. */
export function MorePanel({ screen, rep, taps, onWhy, onClose }: MorePanelProps) {
  const { work, trade, shell } = useWords();
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
      <PanelReps view={view} taps={taps} onWhy={onWhy} />
      <PanelNote taps={taps} />
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
