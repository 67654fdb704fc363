import { distanceWall } from '../../packages/engine/src/ability/patterns/distance-wall.ts';
import { expectsTheWhistle } from '../../packages/engine/src/ability/patterns/expects-the-whistle.ts';
import { lateWhistle } from '../../packages/engine/src/ability/patterns/late-whistle.ts';
import { linearPatterns } from '../../packages/engine/src/ability/patterns/linear-patterns.ts';
import { tooBigSteps } from '../../packages/engine/src/ability/patterns/too-big-steps.ts';
import type { Pattern } from '../careers/pattern.ts';
import type { DogRecordSeen } from './planted-record.ts';

/** Probability that a record has a pattern; over 0.8 is a claim. */
export type Detector = (pattern: Pattern, record: DogRecordSeen) => number;

/** The program's own. */
export const ourDetector: Detector = (pattern, { legs, sends }) => {
  switch (pattern) {
    case 'expects-the-whistle':
      return expectsTheWhistle(sends).probability;
    case 'distance-wall':
      return distanceWall(legs).probability;
    case 'late-whistle':
      return lateWhistle(legs).probability;
    case 'too-big-steps':
      return tooBigSteps(legs).probability;
    default:
      return linearPatterns(legs).find((found) => found.pattern === pattern)!.probability;
  }
};

const shareMissed = (legs: DogRecordSeen['legs']) =>
  legs.length === 0 ? 0 : legs.filter(({ grade }) => grade === 'missed').length / legs.length;

/**
 * Wrong on purpose: claims where the misses here are more than those there by 5 in 100, whatever was asked there and however few
 * there were. The study must not let it pass.
 */
export const rawShareDetector: Detector = (pattern, { legs, sends }) => {
  const parted = (isHere: (leg: DogRecordSeen['legs'][number]) => boolean, either = false) => {
    const difference = shareMissed(legs.filter(isHere)) - shareMissed(legs.filter((leg) => !isHere(leg)));
    return (either ? Math.abs(difference) : difference) > 0.05 ? 1 : 0;
  };
  const casts = legs.filter(({ skill }) => skill === 'cast-left' || skill === 'cast-right');
  switch (pattern) {
    case 'one-sided': {
      const [left, right] = (['cast-left', 'cast-right'] as const).map((side) =>
        shareMissed(casts.filter(({ skill }) => skill === side)),
      );
      return Math.abs(left! - right!) > 0.05 ? 1 : 0;
    }
    case 'only-at-home':
      return parted(({ context }) => (context.earlierSessionsOnGround ?? 9) <= 1);
    case 'distance-wall':
      return parted(({ ask }) => (ask.distanceM ?? 5) > 30);
    case 'tires-late':
      return parted(({ context }) => context.repsSinceBreak > 8);
    case 'late-whistle':
      return legs.filter(({ skill, cause }) => skill === 'stop' && cause === 'handler').length > 5 ? 1 : 0;
    case 'too-big-steps':
      return shareMissed(legs) > 0.05 ? 1 : 0;
    default:
      return sends.filter(({ expecting }) => expecting).length > 3 ? 1 : 0;
  }
};
