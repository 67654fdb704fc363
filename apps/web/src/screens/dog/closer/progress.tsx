import type { Skill } from '@sedgeline/engine/ability';
import type { ProgressView } from '@sedgeline/projections';
import { useCallback } from 'react';
import { useWords } from '../../../parts/words-context.tsx';
import { progressOf } from '../../../state/kennel.ts';
import './progress.css';
import { ProgressChart } from './progress-chart.tsx';
import { useAnswer } from './use-answer.ts';

/** How a dog came on at a skill: a picture, the same in a sentence, and every session as a table. */
export function Progress({
  dog,
  skill,
  legs,
}: {
  readonly dog: string;
  readonly skill: Skill;
  /** Legs of the skill so far: asked again when there are more. */
  readonly legs: number;
}) {
  const { progress } = useWords();
  // biome-ignore lint/correctness/useExhaustiveDependencies: legs says when the record has more to tell
  const answer = useAnswer(useCallback(() => progressOf(dog, skill), [dog, skill, legs]));
  if (answer === 'waiting') return <p className="closer-waiting">{progress.waiting}</p>;
  if (answer === 'failed') return <p role="alert">{progress.failed}</p>;
  return answer.view === null ? null : <Told view={answer.view} />;
}

function Told({ view }: { readonly view: ProgressView }) {
  const { progress } = useWords();
  const said = progress.said(view);
  if (view.points.length === 0) return <p>{said}</p>;
  return (
    <div className="progress">
      <p className="figures closer-said">{said}</p>
      {!view.known && <p className="skill-unknown">{progress.few(view.legs.length)}</p>}
      <ProgressChart view={view} />
      <ul className="soft closer-key">
        <li>{progress.key.line}</li>
        <li>{progress.key.marks}</li>
        <li>{progress.key.fresh}</li>
      </ul>
      <details>
        <summary>{progress.table}</summary>
        <Sessions view={view} />
      </details>
    </div>
  );
}

function Sessions({ view }: { readonly view: ProgressView }) {
  const { progress, time, chances } = useWords();
  const { columns } = progress;
  return (
    <table className="figures closer-table">
      <thead>
        <tr>
          <th scope="col">{columns.day}</th>
          <th scope="col">{columns.legs}</th>
          <th scope="col">{columns.lookingBack}</th>
          <th scope="col">{columns.thatDay}</th>
        </tr>
      </thead>
      <tbody>
        {view.points.map(({ session, atMs, counts, smoothed, filtered }) => (
          <tr key={session}>
            <th scope="row">{time.date(atMs)}</th>
            <td>{progress.counts(counts)}</td>
            {[smoothed, filtered].map(({ chance, interval90 }, column) => (
              <td key={column}>
                <b>{chances.inHundred(chance)}</b> {progress.range(interval90)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
