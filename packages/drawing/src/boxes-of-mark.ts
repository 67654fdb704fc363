import type { Box, Mark } from './drawing.ts';
import { around, boxesAlong } from './spots.ts';

/** What a mark covers on the card, roughly: labels are kept off it. */
export function boxesOfMark(mark: Mark): Box[] {
  switch (mark.mark) {
    case 'line':
    case 'unrun':
    case 'recall':
    case 'stop':
    case 'whistle':
      return boxesAlong(mark.from, mark.to, 4);
    case 'cast':
      return mark.along.map((at) => around(at, 6));
    case 'hunt':
      return [around(mark.at, mark.radius * 0.7)];
    case 'thing':
      return [around(mark.at, 15 * mark.size)];
    case 'handler':
      return [around(mark.at, 13 * mark.size)];
    case 'dog':
      return [around(mark.at, 9 * mark.size, 11 * mark.size)];
    case 'obstacle':
      return boxesAlong(mark.from, mark.to, 4);
    case 'sight':
      // Thin, and there may be sixty: a label may touch one where it has no better place.
      return boxesAlong(mark.from, mark.to, 3, 20);
    case 'edge':
      return mark.along.slice(1).flatMap((to, i) => boxesAlong(mark.along[i] ?? to, to, 3));
    case 'chosen':
      return [around(mark.at, 20)];
  }
}
