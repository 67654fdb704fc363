import type { CardBox, Spot } from './drawing.ts';
import type { GroundScale } from './fit-ground.ts';
import { stepOfRuler } from './ruler.ts';
import { n } from './spots.ts';

/** Room at the right edge for the ruler and its figures. */
const RULER = 58;

/** Small crosses on the ground at the ruler's steps, counted from where the dog is sent, as one path. */
export function drawGrid({ unitsPerMetre }: GroundScale, box: CardBox, unitM: number, send: Spot): string {
  const step = stepOfRuler(unitsPerMetre * unitM) * unitsPerMetre * unitM;
  const strokes: string[] = [];
  for (let x = send.x % step; x < box.width - RULER; x += step)
    for (let y = send.y % step; y < box.height; y += step)
      strokes.push(`M${n(x - 2.5)} ${n(y)}h5M${n(x)} ${n(y - 2.5)}v5`);
  return strokes.join('');
}
