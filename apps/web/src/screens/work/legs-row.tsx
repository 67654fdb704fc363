import type { PlannedLeg } from '@sedgeline/engine/session';
import type { LegRecord } from '@sedgeline/projections';
import { useEffect, useRef } from 'react';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../parts/words-context.tsx';

interface LegsRowProps {
  readonly legs: readonly PlannedLeg[];
  readonly graded: readonly LegRecord[];
}

/** The rep's legs in order: how each went, which one is graded now, and the chance of those to come. */
export function LegsRow({ legs, graded }: LegsRowProps) {
  const { work, trade, chances } = useWords();
  const now = useRef<HTMLLIElement>(null);
  const current = graded.length;
  useEffect(() => {
    if (current > 0) now.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [current]);
  return (
    <ol className="work-legs" aria-label={work.legs}>
      {legs.map((leg, i) => {
        const done = graded[i];
        return (
          <li
            key={i}
            ref={i === current ? now : undefined}
            className="work-leg"
            data-skill={leg.skill}
            data-grade={done?.grade}
            aria-current={i === current ? 'step' : undefined}
          >
            <span className="work-leg-mark">
              {done === undefined ? (
                i === current && <NextMark />
              ) : (
                <GradeMark grade={done.grade} size={20} />
              )}
            </span>
            <span className="work-leg-name">{trade.skill(leg.skill)}</span>
            <span className="work-leg-figure">
              {done === undefined ? chances.inHundred(leg.chance.good) : trade.grade(done.grade)}
            </span>
          </li>
        );
      })}
    </ol>
  );
}

/** Where the next mark will stand. */
function NextMark() {
  return (
    <svg viewBox="0 0 22 22" width={20} height={20} aria-hidden="true">
      <circle cx="11" cy="11" r="8" fill="none" stroke="var(--edge)" strokeWidth="2" strokeDasharray="3 3" />
    </svg>
  );
}
