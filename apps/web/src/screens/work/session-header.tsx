import type { WorkView } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';
import { useKennel } from '../../state/kennel-store.ts';
import { useNow } from './use-now.ts';

/** No more than this without a break (common practice, no source). */
const BREAK_AFTER_MINUTES = 12;
const BREAK_AFTER_REPS = 12;
const MINUTE_MS = 60_000;

/** Minutes until a break is due, by the clock; 0 when it is due by minutes or by reps. */
export function minutesToBreak(
  view: Pick<WorkView, 'lastBreakOrStartMs' | 'repsSinceBreak' | 'inTurn'>,
  nowMs: number,
): number {
  if (view.repsSinceBreak >= BREAK_AFTER_REPS) return 0;
  // Among dogs worked in turn, each works its share of the time.
  const dogs = view.inTurn?.dogs.filter(({ isOpen }) => isOpen).length ?? 1;
  const sinceMinutes = (nowMs - view.lastBreakOrStartMs) / MINUTE_MS / Math.max(1, dogs);
  return Math.max(0, Math.ceil(BREAK_AFTER_MINUTES - sinceMinutes));
}

/** Who, which rep, how long, and when the break is due. */
export function SessionHeader({ view }: { readonly view: WorkView }) {
  const { work } = useWords();
  const nowMs = useNow();
  const isDemo = useKennel((s) => s.record === 'demo');
  const toBreak = minutesToBreak(view, nowMs);
  return (
    <header className="work-head">
      <h1>{view.dogName}</h1>
      <span className="work-head-rep">{work.rep(view.repNumber)}</span>
      {isDemo && <span className="work-head-invented">{work.invented}</span>}
      <span className="work-head-clock">
        <time title={work.clockName}>{work.clock((nowMs - view.openedAtMs) / 1000)}</time>
        {' · '}
        <span className={toBreak === 0 ? 'work-due' : undefined}>
          {toBreak === 0 ? work.breakDue : work.breakIn(toBreak)}
        </span>
      </span>
    </header>
  );
}
