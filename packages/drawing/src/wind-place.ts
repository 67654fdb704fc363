import type { Layout } from '@sedgeline/engine/ground';
import type { Box, CardBox, RepDrawing, Spot } from './drawing.ts';
import { around, overlap } from './spots.ts';

/** The wind arrow stands in the corner where least is drawn; none where the wind is not told whole, or in a calm. */
export function windPlace(
  { windFromDeg, windMPerS }: Layout,
  upDeg: number,
  box: CardBox,
  drawn: readonly Box[],
): RepDrawing['wind'] {
  if (windFromDeg === undefined || !windMPerS) return null;
  const corners: readonly Spot[] = [
    { x: 40, y: box.height - 46 },
    { x: box.width - 100, y: box.height - 46 },
    { x: 40, y: 40 },
    { x: box.width - 100, y: 40 },
  ];
  const crowd = (at: Spot): number =>
    drawn.reduce((sum, taken) => sum + overlap(around({ x: at.x, y: at.y + 8 }, 30), taken), 0);
  const at = corners.reduce((best, corner) => (crowd(corner) < crowd(best) - 1 ? corner : best));
  return { at, towardsDeg: (windFromDeg + 540 - upDeg) % 360 };
}
