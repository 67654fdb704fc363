import { distanceWall } from './distance-wall.ts';
import type { CleanSend } from './expectation-model.ts';
import { expectsTheWhistle } from './expects-the-whistle.ts';
import { lateWhistle } from './late-whistle.ts';
import { linearPatterns } from './linear-patterns.ts';
import { PATTERNS, type PatternFinding, type PatternLeg } from './pattern.ts';
import { tooBigSteps } from './too-big-steps.ts';

/** What a dog did longer ago than this says little of it now, and would keep the reader waiting (our judgement, 2026). */
const MOST_LEGS = 4000;
const MOST_SENDS = 1000;

/**
 * All seven patterns in one dog's record, in their order: in its last 4,000 legs and 1,000 clean sends. `legs` and `sends` in the
 * order in which they were done.
 * @throws RangeError for an ask or a moment outside the journal's ranges
 */
export function findPatterns(record: {
  readonly legs: readonly PatternLeg[];
  readonly sends: readonly CleanSend[];
}): readonly PatternFinding[] {
  const legs = record.legs.slice(-MOST_LEGS);
  const found = [
    expectsTheWhistle(record.sends.slice(-MOST_SENDS)),
    ...linearPatterns(legs),
    distanceWall(legs),
    lateWhistle(legs),
    tooBigSteps(legs),
  ];
  return PATTERNS.map((name) => found.find(({ pattern }) => pattern === name)!);
}
