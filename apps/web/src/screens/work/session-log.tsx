import type { RepSummary } from '@sedgeline/projections';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** So many of the last reps are shown: what fits over the pad on a laptop. */
const SHOWN = 5;

/** The last reps of the session in one line each, where there is room beside the card: how every leg went. */
export function SessionLog({ done }: { readonly done: readonly RepSummary[] }) {
  const { work, trade } = useWords();
  const first = Math.max(0, done.length - SHOWN);
  if (done.length === 0) return null;
  return (
    <ol className="work-log" aria-label={work.panel.all}>
      {done.slice(first).map((rep, i) => (
        <li key={rep.rep}>
          <span className="work-log-n">{work.rep(first + i + 1)}</span>
          {rep.legs.map((leg, n) => (
            <span key={n} className="work-log-leg">
              <GradeMark grade={leg.grade} word={trade.grade(leg.grade)} size={16} />
              {trade.skill(leg.skill)}
            </span>
          ))}
        </li>
      ))}
    </ol>
  );
}
