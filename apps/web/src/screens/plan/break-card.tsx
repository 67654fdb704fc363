import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** A break between two reps. */
export function BreakCard({ minutes, onDrop }: { readonly minutes: number; readonly onDrop: () => void }) {
  const { planScreen } = useWords();
  return (
    <li className="plan-break">
      <svg viewBox="0 0 40 40" width="40" height="40" aria-hidden="true">
        <circle cx="20" cy="20" r="15" />
        <path d="M20 10v10l7 5" />
      </svg>
      <p>
        <b>{planScreen.minutes(minutes)}</b>
        <span>{planScreen.breakCard}</span>
      </p>
      <Button look="quiet" className="not-printed" onClick={onDrop}>
        {planScreen.noBreak}
      </Button>
    </li>
  );
}
