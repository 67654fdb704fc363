import type { Skill, Temptation } from '../../ability/index.ts';
import type { Goal } from '../../ground/index.ts';
import type { LaidLeg } from './laid-leg.ts';

const GOALS: Readonly<Record<Temptation, Goal | null>> = {
  none: null,
  post: 'post',
  'placed-dummy': 'memory',
  'thrown-dummy': 'mark',
  'shot-and-dummy': 'mark',
  game: 'game',
};

/** These send the dog nowhere: what draws it there is no memory, mark or blind. */
const STILL: ReadonlySet<Skill> = new Set(['steady', 'heel', 'leave', 'pickup', 'delivery', 'recall']);

/** What one leg sends the dog to, from its own ask alone; `null` where it does not say. */
export function goalOf({ skill, ask }: LaidLeg): Goal | null {
  if (skill === 'mark') return 'mark';
  const drawn = GOALS[ask.temptation ?? 'none'];
  if (STILL.has(skill)) return drawn === 'game' || drawn === 'post' ? drawn : null;
  return ask.blind === true ? 'blind' : drawn;
}

/** What lies at the end of the way out, and of the cast; one thing where `isShared`. */
export interface ChainGoals {
  readonly out: Goal | null;
  readonly cast: Goal | null;
  readonly isShared: boolean;
}

/**
 * A cast to the side goes to another dummy than the line does. A cast back goes on to the line's own: one dummy, which
 * is a blind if either leg says that the dog did not see it, and else what the cast says, or the line where the cast
 * does not. Only a post, or a mark, is never the dummy of a cast that names another. Sentences follow the same rule
 * in the catalogue of words, which knows nobody; a test of the field card holds the two together.
 */
export function chainGoals(wayOut: LaidLeg | undefined, cast: LaidLeg | undefined): ChainGoals {
  const out = wayOut ? goalOf(wayOut) : null;
  const its = cast ? goalOf(cast) : null;
  const isShared = wayOut !== undefined && cast?.skill === 'cast-back' && isOneThing(wayOut, out, its);
  if (!isShared) return { out, cast: its, isShared };
  const one = out === 'blind' || its === 'blind' ? 'blind' : (its ?? out);
  return { out: one, cast: one, isShared };
}

function isOneThing(wayOut: LaidLeg, out: Goal | null, cast: Goal | null): boolean {
  if (out === null || cast === null || out === cast) return true;
  return out !== 'post' && cast !== 'post' && wayOut.skill !== 'mark';
}
