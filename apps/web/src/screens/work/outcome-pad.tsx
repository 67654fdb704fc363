import { GRADES, type Grade, type Skill } from '@sedgeline/engine/ability';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { keepFocus } from './keep-focus.ts';

/** What the wide key does now. */
export type WideKey = 'all-good' | 'rest-good' | 'ended';

interface OutcomePadProps {
  /** The leg that is graded now. */
  readonly skill: Skill;
  readonly wide: WideKey;
  readonly isOff: boolean;
  readonly onGrade: (grade: Grade) => void;
  readonly onWide: () => void;
}

/** The outcome pad: three grades for the leg in hand, one wide key for the rest of the rep. */
export function OutcomePad({ skill, wide, isOff, onGrade, onWide }: OutcomePadProps) {
  const { work, trade } = useWords();
  const wideText = { 'all-good': work.allWell, 'rest-good': work.restWell, ended: work.endedThere }[wide];
  return (
    <section className="work-pad" aria-label={work.padFor(skill)} aria-disabled={isOff}>
      {GRADES.map((grade) => (
        <button
          key={grade}
          type="button"
          className="work-key"
          data-grade={grade}
          aria-keyshortcuts={String(GRADES.indexOf(grade) + 1)}
          onMouseDown={keepFocus}
          onClick={() => onGrade(grade)}
        >
          <GradeMark grade={grade} size={30} />
          <span className="work-key-name">{work.grade[grade]}</span>
          <span className="work-key-hint">{trade.gradeOnKey(skill, grade)}</span>
        </button>
      ))}
      <button
        type="button"
        className={wide === 'ended' ? 'work-wide work-wide-ended' : 'work-wide'}
        data-wide={wide}
        aria-keyshortcuts="Space"
        onMouseDown={keepFocus}
        onClick={onWide}
      >
        <GradeMark grade={wide === 'ended' ? 'missed' : 'good'} size={26} />
        {wideText}
      </button>
    </section>
  );
}
