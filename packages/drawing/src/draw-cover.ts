import type { Box, CardBox } from './drawing.ts';
import { n, overlap } from './spots.ts';

/** Height of a tuft and room between tufts for ankle, knee and over-the-back cover, in the drawing's units. */
const TUFTS = [
  { height: 4, room: 24 },
  { height: 7, room: 19 },
  { height: 10, room: 15 },
] as const;

/**
 * Tufts of cover over the ground as one path, thicker and taller with the height of the cover, none where a label
 * stands. The scatter is a fixed lattice shaken by a sine, so that the same card is always the same.
 */
export function drawCover(cover: number, box: CardBox, keepOff: readonly Box[]): string {
  const tuft = TUFTS[Math.min(3, Math.round(cover)) - 1];
  if (!tuft) return '';
  const size = box.labels ? 1 : 0.62;
  const room = tuft.room * (box.labels ? 1 : 0.72);
  const height = tuft.height * size;
  const strokes: string[] = [];
  for (let row = 0; row * room * 0.8 < box.height; row++) {
    for (let column = 0; column * room < box.width; column++) {
      const shake = Math.sin(row * 12.9898 + column * 78.233) * 43758.5453;
      const chance = shake - Math.floor(shake);
      const x = (column + (row % 2) / 2 + 0.25 + chance * 0.5) * room;
      const y = (row + 0.6 + chance * 0.4) * room * 0.8;
      const place: Box = { x: x - 3, y: y - height, width: 8, height };
      if (x > box.width - 5 || y > box.height - 3 || keepOff.some((taken) => overlap(taken, place) > 0))
        continue;
      strokes.push(
        `M${n(x)} ${n(y)}l${n(height * 0.34)} ${n(-height)}M${n(x + 3 * size)} ${n(y)}l${n(height * 0.08)} ${n(-height * 1.15)}`,
      );
    }
  }
  return strokes.join('');
}
