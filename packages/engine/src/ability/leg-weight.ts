import type { Grade } from './ask.ts';

/** Whose mistake a leg that was not good was. */
export const CAUSES = ['dog', 'handler', 'setup', 'unsure'] as const;
export type Cause = (typeof CAUSES)[number];

/** `excused`: the handler's and the set-up's mistakes are not held against the dog; `everything`: all count. */
export type Counting = 'excused' | 'everything';

/**
 * Weight of a leg in learning what the dog can do, 0..1: a mistake of handler or set-up 0, unsure 0.5, else 1.
 * A good leg counts in full; no cause means the dog. (Common practice, no source; 0.5 our judgement, 2026.)
 */
export function legWeight(grade: Grade, cause: Cause | undefined, counting: Counting): number {
  if (grade === 'good' || counting === 'everything') return 1;
  if (cause === 'handler' || cause === 'setup') return 0;
  return cause === 'unsure' ? 0.5 : 1;
}
