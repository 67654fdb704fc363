import type { RepHistoryView } from '@sedgeline/projections';
import { useEffect, useState } from 'react';
import { useWords } from '../../parts/words-context.tsx';
import { historyOf } from '../../state/kennel.ts';

interface RepHistoryProps {
  readonly rep: string;
  /** Changes when the record does: the history is read again. */
  readonly turn: number;
}

const clock = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit', second: '2-digit' });

/** What became of a rep: who, when, and what it was before. */
export function RepHistory({ rep, turn }: RepHistoryProps) {
  const { work } = useWords();
  const [history, setHistory] = useState<RepHistoryView | null>(null);
  useEffect(() => {
    let isWanted = turn >= 0;
    void historyOf(rep).then((read) => {
      if (isWanted) setHistory(read);
    });
    return () => {
      isWanted = false;
    };
  }, [rep, turn]);
  if (history === null) return null;
  return (
    <section className="work-history" aria-label={work.history.title}>
      <h3>{work.history.title}</h3>
      <ol>
        {history.steps.map((step, i) => (
          <li key={i}>
            <time dateTime={new Date(step.atMs).toISOString()}>{clock.format(step.atMs)}</time>{' '}
            {work.history.step(step.what, step.changes)}{' '}
            <span className="work-history-by">
              {work.history.by(step.by, step.device)}
              {step.isUndo && `, ${work.history.takenBack}`}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
