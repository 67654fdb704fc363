import type { RepSummary } from '@sedgeline/projections';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** So many of the last reps are shown beside the card at most: what fits over the pad on a laptop. Its styles show fewer where there is less room. */
const SHOWN = 3;

interface SessionLogProps {
  readonly done: readonly RepSummary[];
  /** Every rep, and on a phone too: a session that is closed. Else the last few, where there is room. */
  readonly isWhole?: boolean;
  /** `null` while the record is still being read. */
  readonly onWhy: ((rep: string) => void) | null;
}

/** The reps of a session in one line each: how every leg went. One tap on a line says why. */
export function SessionLog({ done, isWhole = false, onWhy }: SessionLogProps) {
  const { work, trade, whySheet } = useWords();
  const first = isWhole ? 0 : Math.max(0, done.length - SHOWN);
  if (done.length === 0) return null;
  return (
    <ol className={isWhole ? 'work-log work-log-whole' : 'work-log'} aria-label={work.panel.all}>
      {done.slice(first).map((rep, i) => (
        <li key={rep.rep}>
          <button
            type="button"
            aria-haspopup="dialog"
            disabled={onWhy === null}
            onClick={() => onWhy?.(rep.rep)}
          >
            <span className="work-log-n">{work.rep(first + i + 1)}</span>
            <span className="work-log-legs">
              {rep.legs.map((leg, n) => (
                <span key={n} className="work-log-leg">
                  <GradeMark grade={leg.grade} word={trade.grade(leg.grade)} size={16} />
                  {trade.skill(leg.skill)}
                </span>
              ))}
            </span>
            <span className="why-word">{whySheet.name}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}
