import type { SkillStanding } from '@sedgeline/projections';
import { SparkLegs } from '../../parts/grade-mark/spark-legs.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { useWhySheet } from '../why/use-why-sheet.tsx';

/** The recent legs of a skill as marks; the last of them that did not go well is one tap from its why. */
export function RecentLegs({ standing }: { readonly standing: SkillStanding }) {
  const { trade, whySheet } = useWords();
  const { openWhy, sheet } = useWhySheet();
  const { recent, skill } = standing;
  if (recent.length === 0) return null;
  const last = recent.findLast(({ grade }) => grade !== 'good');
  return (
    <div className="recent-legs">
      <SparkLegs legs={recent} />
      {last !== undefined && (
        <button
          type="button"
          className="why-open why-word"
          aria-haspopup="dialog"
          aria-label={whySheet.openLast(trade.skillInWords(skill), last.grade)}
          onClick={() => openWhy(last.rep)}
        >
          {whySheet.last(last.grade)}
        </button>
      )}
      {sheet}
    </div>
  );
}
