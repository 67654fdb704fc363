import type { Spot } from './drawing.ts';
import { across, apart, plus } from './spots.ts';

/** The dog stands this far beside the handler where the two are at one place. */
const BESIDE = 24;

/** Where the dog is drawn: at its place, or at the handler's left where that is the handler's as well. */
export function standBeside(
  handlerAt: Spot,
  dogAt: Spot,
  on: Spot,
  size: number,
): { readonly together: boolean; readonly standing: Spot } {
  const together = apart(handlerAt, dogAt) < BESIDE * size;
  return { together, standing: together ? plus(handlerAt, across(on), -BESIDE * size) : dogAt };
}
