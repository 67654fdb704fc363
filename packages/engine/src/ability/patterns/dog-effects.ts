import type { Effect } from './dog-design.ts';
import type { PatternLeg } from './pattern.ts';
import { SIZES } from './sizes.ts';

/** Left against right: half to each, so that their difference is the effect. Larger: the left is harder. */
export const SIDE: Effect = {
  name: 'side',
  of: ({ skill }) => (skill === 'cast-left' ? 0.5 : skill === 'cast-right' ? -0.5 : 0),
  prior: SIZES['one-sided'].wide,
};
/** Ground the dog has not worked on before. */
export const isNew = ({ context }: PatternLeg) => (context.earlierSessionsOnGround ?? 9) <= 1;
export const isTired = ({ context }: PatternLeg) => context.repsSinceBreak > 8;
export const WIDENED = { newness: SIZES['only-at-home'].wide, tired: SIZES['tires-late'].wide } as const;
