import { GRADES, type Grade } from '@sedgeline/engine/ability';
import type { AskedLeg, WorkView } from '@sedgeline/projections';
import { useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { WorkTaps } from './use-work-taps.ts';

const FIRST = 'first';

interface PanelMemoryProps {
  readonly view: WorkView;
  /** What is asked where no rep comes before it. */
  readonly asked: readonly AskedLeg[];
  readonly taps: WorkTaps;
}

/** A rep that was not written down at the time: put in its place, and marked as from memory. */
export function PanelMemory({ view, asked, taps }: PanelMemoryProps) {
  const { work, trade } = useWords();
  const [isOpen, setOpen] = useState(false);
  const [place, setPlace] = useState(String(view.done.length - 1));
  const [grades, setGrades] = useState<readonly Grade[]>([]);
  if (!isOpen) {
    return (
      <button
        type="button"
        onClick={() => {
          setPlace(view.done.length === 0 ? FIRST : String(view.done.length - 1));
          setGrades([]);
          setOpen(true);
        }}
      >
        {work.memory.open}
      </button>
    );
  }
  const before = place === FIRST ? undefined : view.done[Number(place)];
  const legs = (before ?? view.done[0])?.legs ?? asked;
  const gradeOf = (i: number): Grade => grades[i] ?? 'good';
  const keep = () => {
    const said = legs.map(({ skill, ask }, i) => ({ skill, ask, grade: gradeOf(i) }));
    taps.send({ do: 'from-memory', after: before?.rep ?? null, legs: said }, work.memory.kept);
    setOpen(false);
  };
  return (
    <section className="work-rep-change" aria-label={work.memory.open}>
      <Choice
        legend={work.memory.place}
        hint={work.memory.asks}
        value={place}
        options={[
          { value: FIRST, label: work.memory.first },
          ...view.done.map((_, i) => ({ value: String(i), label: work.memory.after(i + 1) })),
        ]}
        onChoose={setPlace}
      />
      {legs.map(({ skill }, i) => (
        <Choice
          key={i}
          legend={trade.skillInWords(skill)}
          value={gradeOf(i)}
          options={GRADES.map((grade) => ({ value: grade, label: work.grade[grade] }))}
          onChoose={(grade) => setGrades(legs.map((_, n) => (n === i ? grade : gradeOf(n))))}
        />
      ))}
      <div className="work-panel-keys">
        <button type="button" onClick={keep}>
          {work.memory.keep}
        </button>
        <button type="button" onClick={() => setOpen(false)}>
          {work.memory.cancel}
        </button>
      </div>
    </section>
  );
}
