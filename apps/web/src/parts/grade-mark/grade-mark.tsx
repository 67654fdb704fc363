import './grade-mark.css';

export type MarkedGrade = 'good' | 'fair' | 'missed' | 'open';

/**
 * The mark of a grade: good a filled disc, fair a half disc, missed an open ring; `open` (dashed) for a leg not graded
 * yet. It never stands without its word: give `word` to have it read out, or write the word beside it.
 */
export function GradeMark({
  grade,
  word,
  size = 22,
}: {
  readonly grade: MarkedGrade;
  readonly word?: string | undefined;
  readonly size?: number;
}) {
  return (
    <svg
      className={`grade-mark grade-${grade}`}
      viewBox="0 0 30 30"
      width={size}
      height={size}
      data-grade={grade}
      role={word ? 'img' : 'presentation'}
      aria-label={word}
      aria-hidden={word ? undefined : true}
    >
      {grade === 'good' ? (
        <circle cx="15" cy="15" r="12.5" className="gm-full" />
      ) : (
        <circle cx="15" cy="15" r="11" className="gm-ring" />
      )}
      {grade === 'fair' && <path d="M15 4 A11 11 0 0 1 15 26 Z" className="gm-full" />}
    </svg>
  );
}
