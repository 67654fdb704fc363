import type { RepPicture } from '@sedgeline/engine/ground';
import type { PlanCourse, PlannedRep } from '@sedgeline/engine/session';
import type { ReactNode } from 'react';
import { FieldCard } from '../../parts/field-card/field-card.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { useCardSize } from './use-card-size.ts';

interface RepFaceProps {
  readonly rep: PlannedRep;
  readonly picture: RepPicture;
  readonly dogName: string;
  readonly isChosen: boolean;
  /** What has become of the plan that the session follows; `null` without one. */
  readonly course: PlanCourse | null;
  readonly onAsSuggested: () => void;
  readonly children?: ReactNode;
}

/** The rep before it is worked: drawn to scale, in one sentence, with the reason. */
export function RepFace({ rep, picture, dogName, isChosen, course, onAsSuggested, children }: RepFaceProps) {
  const { ask, reasons, work } = useWords();
  const reason = rep.reasons[0];
  const size = useCardSize();
  return (
    <div className="work-face">
      <FieldCard picture={picture} dogName={dogName} size={size} />
      <div className="work-say">
        <p className="work-sentence">{ask.rep(rep.legs)}</p>
        <p className="work-reason">
          {isChosen ? (
            <>
              {work.chosen}.{' '}
              <button type="button" className="work-link" onClick={onAsSuggested}>
                {work.backToSuggested}
              </button>
            </>
          ) : (
            reason !== undefined && reasons.sentence(reason)
          )}
        </p>
        {course !== null && (
          <p className="work-course" data-course={course.do}>
            {work.planLine(course, rep.planRep ?? null)}
          </p>
        )}
      </div>
      {children}
    </div>
  );
}
