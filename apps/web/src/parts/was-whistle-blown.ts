import type { Grade, Skill } from '@sedgeline/engine/ability';

/** A leg as far as it is known here: its grade once it is given. */
interface Leg {
  readonly skill: Skill;
  readonly grade?: Grade;
}

/**
 * Whether a stop whistle can have been blown in a chain in hand: its stop is graded, or is still to come and nothing before it was
 * missed. Of a line that was missed there was no stop to be blown.
 */
export function wasWhistleBlown(graded: readonly Leg[], chain: readonly Leg[]): boolean {
  const isStop = ({ skill }: Leg): boolean => skill === 'stop';
  if (graded.some(isStop)) return true;
  return chain.some(isStop) && !graded.some(({ grade }) => grade === 'missed');
}
