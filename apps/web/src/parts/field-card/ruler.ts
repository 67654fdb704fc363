import type { CardBox, RepDrawing } from './drawing.ts';

/** Steps a ruler may count in: ones, twos and fives, so that the eye can halve them. */
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200] as const;
/** Least room between figures, in the drawing's units. */
const LEAST_ROOM = 40;
const FROM_EDGE = 14;
const TOP = 22;

/** Words a ruler needs: metres in one of its units, and how a figure is written. */
export interface RulerWords {
  readonly unitM: number;
  tick(lengthM: number, last: boolean): string;
}

/** The ruler at the side: from the foot as far up as the card goes, figures at whole steps, half steps between. */
export function drawRuler(
  box: CardBox,
  footY: number,
  unitsPerMetre: number,
  words: RulerWords,
): NonNullable<RepDrawing['ruler']> {
  const unit = unitsPerMetre * words.unitM;
  const step = STEPS.find((candidate) => candidate * unit >= LEAST_ROOM) ?? 500;
  const count = Math.max(0, Math.floor((footY - TOP) / (step * unit)));
  const ticks = Array.from({ length: 2 * count + 1 }, (_, i) => ({
    y: footY - (i * step * unit) / 2,
    text: i > 0 && i % 2 === 0 ? words.tick((i / 2) * step * words.unitM, i === 2 * count) : null,
  }));
  return { x: box.width - FROM_EDGE, top: footY - count * step * unit, foot: footY, ticks };
}
