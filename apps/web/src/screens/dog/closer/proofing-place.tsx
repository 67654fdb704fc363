import type { ProofingCell } from '@sedgeline/projections';
import { ChanceBar } from '../../../parts/chance-bar/chance-bar.tsx';
import { GradeMark } from '../../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../../parts/words-context.tsx';

const GRADES = ['good', 'fair', 'missed'] as const;

/** One place of a map: how many legs went how, and the chance now. A place never tried is drawn as large, dashed. */
export function ProofingPlace({
  cell: { counts, tried, now },
  isPressed,
  told,
  onPress,
}: {
  readonly cell: ProofingCell;
  readonly isPressed: boolean;
  /** Id of the sentence that it changes. */
  readonly told: string;
  readonly onPress: () => void;
}) {
  const { chances, proofing, trade } = useWords();
  return (
    <button
      type="button"
      className="proofing-place figures"
      data-tried={tried}
      aria-pressed={isPressed}
      aria-controls={told}
      onClick={onPress}
    >
      <b aria-hidden="true">{chances.inHundred(now.chance)}</b>
      <ChanceBar thin chance={now.chance} interval90={now.interval90} />
      {tried === 'never' ? (
        <span className="soft">{proofing.never}</span>
      ) : (
        <span className="proofing-counts">
          {GRADES.filter((grade) => counts[grade] > 0).map((grade) => (
            <span key={grade}>
              <GradeMark grade={grade} size={13} word={trade.grade(grade)} />
              {counts[grade]}
            </span>
          ))}
          {counts.excused > 0 && <span className="soft">{proofing.notCounted(counts.excused)}</span>}
        </span>
      )}
    </button>
  );
}
