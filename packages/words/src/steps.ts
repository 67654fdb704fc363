/** How big a step is, in words; `fair` is a grade and never a step. */
export type StepSize = 'small' | 'medium' | 'big' | 'too-big';

/** Upper ends of a small, medium and big step, in logits (our judgement, 2026). */
const SMALL_BELOW = 0.3;
const MEDIUM_BELOW = 0.7;
const BIG_UP_TO = 1.2;

const NAMES: Readonly<Record<StepSize, string>> = {
  small: 'a small step',
  medium: 'a medium step',
  big: 'a big step',
  'too-big': 'too big a step',
};

/** Size of a step: stretch under 0.3 small, under 0.7 medium, up to 1.2 big, above that too big. Throws RangeError on NaN. */
export function stepSize(stretch: number): StepSize {
  if (Number.isNaN(stretch)) throw new RangeError('stretch: expected a number, got NaN');
  if (stretch < SMALL_BELOW) return 'small';
  if (stretch < MEDIUM_BELOW) return 'medium';
  return stretch <= BIG_UP_TO ? 'big' : 'too-big';
}

/** Steps in words. */
export function stepWords() {
  return {
    size: stepSize,
    name: (size: StepSize): string => NAMES[size],
    /** "a medium step"; with no success before (`null`) there is nothing to step from. */
    phrase: (stretch: number | null): string => {
      if (stretch === null) return 'the first of its kind';
      return stretch <= 0 ? 'no step up' : NAMES[stepSize(stretch)];
    },
  };
}

export type StepWords = ReturnType<typeof stepWords>;
