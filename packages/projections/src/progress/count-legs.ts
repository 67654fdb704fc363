import type { StatedLeg } from '../timeline/record-walk.ts';
import type { LegCounts } from '../views/progress-view.ts';

/** Counts legs by grade, with those not held against the dog apart. An unsure one counts as one. */
export function countLegs(legs: readonly StatedLeg[]): LegCounts {
  const counts = { good: 0, fair: 0, missed: 0, excused: 0 };
  for (const { result } of legs) counts[result.weight > 0 ? result.grade : 'excused'] += 1;
  return counts;
}
