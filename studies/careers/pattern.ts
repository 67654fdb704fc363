/** The patterns of `patterns` in the command's contract, in its order. */
export const PATTERNS = [
  'expects-the-whistle',
  'one-sided',
  'only-at-home',
  'distance-wall',
  'tires-late',
  'late-whistle',
  'too-big-steps',
] as const;
export type Pattern = (typeof PATTERNS)[number];

/**
 * What was planted in a career. `size` 1 is the size that matters (our judgement, 2026): what a handler would want to be
 * told of. In units of the practice-curve dog's readiness, 1 is about 18 points of the chance at a leg it does 9 times in 10:
 * - expects-the-whistle: hangs back or stops unasked on 1 clean send in 4 where 2 sends in 3 were stopped; leaves the line
 *   less well and stops more readily the more it expects;
 * - one-sided: casts to the weak side 1.0 harder; only-at-home: a new ground 1.3 harder, three quarters of it left at each visit;
 * - distance-wall: everything beyond `wallM` 1.5 harder; tires-late: 0.22 a rep from the ninth since a break;
 * - late-whistle: the handler's own mistake on 3 stops in 10 instead of 1 in 25;
 * - too-big-steps: after a success two or three things raised by two steps each, half the time, instead of one by one.
 */
export interface Planted {
  readonly pattern: Pattern;
  readonly size: number;
  readonly weakSide: 'left' | 'right';
  readonly wallM: number;
}
