import { GRADES } from '@sedgeline/engine/ability';
import type { RepSummary, WorkView } from '@sedgeline/projections';
import { type ReactNode, useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { CAUSES } from './after-strip.tsx';
import { VoiceList } from './panel-voice.tsx';
import { RepHistory } from './rep-history.tsx';
import type { WorkTaps } from './use-work-taps.ts';

interface PanelRepsProps {
  readonly view: WorkView;
  /** Changes with every tap: a history that is open is read again. */
  readonly turn: number;
  readonly taps: WorkTaps;
  readonly onWhy: (rep: string) => void;
  readonly children?: ReactNode;
}

/**
 * The reps of this session, last first; any leg can be put right, and what it was before stays in the record. What was taken out
 * can be brought back.
 */
export function PanelReps({ view, turn, taps, onWhy, children }: PanelRepsProps) {
  const { work } = useWords();
  return (
    <section className="work-panel-part" aria-label={work.panel.all}>
      <h2>{work.panel.all}</h2>
      {view.done.length === 0 && <p>{work.panel.none}</p>}
      <ol className="work-reps">
        {view.done
          .map((rep, i) => (
            <RepLine key={rep.rep} rep={rep} n={i + 1} turn={turn} taps={taps} onWhy={onWhy} />
          ))
          .reverse()}
      </ol>
      {view.struck.length > 0 && (
        <section className="work-panel-keys" aria-label={work.struck}>
          {view.struck.map((rep) => (
            <button
              key={rep.rep}
              type="button"
              data-struck={rep.rep}
              onClick={() => taps.send({ do: 'restore', rep: rep.rep }, work.said.restored)}
            >
              {work.bringBack(rep.legs.map(({ skill }) => skill))}
            </button>
          ))}
        </section>
      )}
      {children}
    </section>
  );
}

function RepLine({
  rep,
  n,
  turn,
  taps,
  onWhy,
}: {
  readonly rep: RepSummary;
  readonly n: number;
  readonly turn: number;
  readonly taps: WorkTaps;
  readonly onWhy: (rep: string) => void;
}) {
  const { work, trade, whySheet } = useWords();
  const [open, setOpen] = useState<number | null>(null);
  const leg = open === null ? undefined : rep.legs[open];
  return (
    <li className="work-rep-line">
      <button
        type="button"
        className="work-rep-n"
        aria-haspopup="dialog"
        aria-label={whySheet.open(n)}
        onClick={() => onWhy(rep.rep)}
      >
        {work.rep(n)}
        {rep.fromMemory && <span className="work-rep-memory">{work.fromMemory}</span>}
        <span className="why-word">{whySheet.name}</span>
      </button>
      <span className="work-rep-legs">
        {rep.legs.map((one, i) => (
          <button
            key={i}
            type="button"
            aria-expanded={open === i}
            aria-label={`${work.panel.changeLeg(one.skill)} (${trade.grade(one.grade)})`}
            onClick={() => setOpen(open === i ? null : i)}
          >
            <GradeMark grade={one.grade} size={18} />
            {trade.skill(one.skill)}
          </button>
        ))}
      </span>
      {open !== null && leg !== undefined && (
        <div className="work-rep-change">
          <Choice
            legend={trade.skillInWords(leg.skill)}
            options={GRADES.map((grade) => ({ value: grade, label: work.grade[grade] }))}
            value={leg.grade}
            onChoose={(grade) =>
              taps.send(
                { do: 'amend-leg', rep: rep.rep, leg: open, grade, cause: leg.cause },
                work.said.amended,
              )
            }
          />
          {leg.grade !== 'good' && (
            <Choice
              legend={work.after.whose}
              options={CAUSES.map((cause) => ({ value: cause, label: work.after.causes[cause] }))}
              value={leg.cause ?? 'dog'}
              onChoose={(cause) =>
                taps.send(
                  { do: 'amend-leg', rep: rep.rep, leg: open, grade: leg.grade, cause },
                  work.said.amended,
                )
              }
            />
          )}
          <button type="button" onClick={() => taps.send({ do: 'strike', rep: rep.rep }, work.said.struck)}>
            {work.panel.strike}
          </button>
          <VoiceList rep={rep.rep} voices={rep.voices} />
          <RepHistory rep={rep.rep} turn={turn} />
        </div>
      )}
    </li>
  );
}
