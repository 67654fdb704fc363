import type { Cause, Expectation } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';
import type { After } from '../../workers/kennel-calls.ts';
import { keepFocus } from './keep-focus.ts';

export const CAUSES: readonly Cause[] = ['dog', 'handler', 'setup', 'unsure'];
export const EXPECTATIONS: readonly Expectation[] = ['none', 'hangs-back', 'stops-unasked'];
/** The first of the keys 4 to 7, which answer the strip; 1 to 3 go on grading. */
export const FIRST_STRIP_KEY = 4;

interface AfterStripProps {
  readonly after: After;
  readonly onCause: (cause: Cause) => void;
  readonly onExpectation: (expectation: Expectation) => void;
  readonly onWhy: (rep: string) => void;
}

/** What may still be said of what was just recorded: whose it was, or how a send was run. Grading on lets it go. */
export function AfterStrip({ after, onCause, onExpectation, onWhy }: AfterStripProps) {
  const { work, whySheet } = useWords();
  const title =
    after.about === 'cause'
      ? work.after.cause(after.repNumber, after.skill, after.grade)
      : work.after.expectation(after.repNumber);
  return (
    <fieldset className="work-after" data-about={after.about}>
      <legend>{title}</legend>
      <div className="work-after-keys">
        {after.about === 'cause'
          ? CAUSES.map((cause, i) => (
              <button
                key={cause}
                type="button"
                data-cause={cause}
                aria-pressed={after.cause === cause}
                aria-keyshortcuts={String(FIRST_STRIP_KEY + i)}
                onMouseDown={keepFocus}
                onClick={() => onCause(cause)}
              >
                {work.after.causes[cause]}
              </button>
            ))
          : EXPECTATIONS.map((expectation, i) => (
              <button
                key={expectation}
                type="button"
                data-expectation={expectation}
                aria-pressed={after.expectation === expectation}
                aria-keyshortcuts={String(FIRST_STRIP_KEY + i)}
                onMouseDown={keepFocus}
                onClick={() => onExpectation(expectation)}
              >
                {work.after.expectations[expectation]}
              </button>
            ))}
        {after.about === 'cause' && (
          <button
            type="button"
            className="work-after-why why-word"
            aria-haspopup="dialog"
            aria-keyshortcuts="W"
            onMouseDown={keepFocus}
            onClick={() => onWhy(after.rep)}
          >
            {whySheet.name}
          </button>
        )}
      </div>
    </fieldset>
  );
}
