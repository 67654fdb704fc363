import type { Box, CardBox, RepDrawing } from './drawing.ts';
import { textWidth } from './text-width.ts';

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
  const step = stepOfRuler(unit);
  const count = Math.max(0, Math.floor((footY - TOP) / (step * unit)));
  const ticks = Array.from({ length: 2 * count + 1 }, (_, i) => ({
    y: footY - (i * step * unit) / 2,
    text: i > 0 && i % 2 === 0 ? words.tick((i / 2) * step * words.unitM, i === 2 * count) : null,
  }));
  return { x: box.width - FROM_EDGE, top: footY - count * step * unit, foot: footY, ticks };
}

/** How many units of length lie between two figures, where one takes so many of the drawing's units. */
export const stepOfRuler = (unit: number): number => wholeStep(LEAST_ROOM / unit);

/** What the ruler covers: labels are kept off it. */
export function boxesOfRuler(ruler: NonNullable<RepDrawing['ruler']>): Box[] {
  return ruler.ticks.map((tick) => {
    const width = (tick.text ? textWidth(tick.text, 13) + 12 : 4) + 8;
    return { x: ruler.x - width, y: tick.y - 9, width: width + 8, height: 18 };
  });
}

/** The least of 1, 2 and 5 times a power of ten that is not under `least`, and 1 at least: the eye can halve them. */
function wholeStep(least: number): number {
  if (least <= 1) return 1;
  const ten = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((times) => times * ten).find((step) => step >= least) ?? 10 * ten;
}
