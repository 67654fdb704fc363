import { distanceWall } from './distance-wall.ts';
import type { CleanSend } from './expectation-model.ts';
import { expectsTheWhistle } from './expects-the-whistle.ts';
import { lateWhistle } from './late-whistle.ts';
import { linearPatterns } from './linear-patterns.ts';
import { PATTERNS, type PatternFinding, type PatternLeg } from './pattern.ts';
import { tooBigSteps } from './too-big-steps.ts';

/** All seven patterns in one dog's record, in their order. `legs` and `sends` in the order in which they were done. */
export function findPatterns(record: {
  readonly legs: readonly PatternLeg[];
  readonly sends: readonly CleanSend[];
}): readonly PatternFinding[] {
  const found = [
    expectsTheWhistle(record.sends),
    ...linearPatterns(record.legs),
    distanceWall(record.legs),
    lateWhistle(record.legs),
    tooBigSteps(record.legs),
  ];
  return PATTERNS.map((name) => found.find(({ pattern }) => pattern === name)!);
}
