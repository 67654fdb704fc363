import type { Ask } from '@sedgeline/engine/ability';
import { type AtHand, atHandFor, mostAtHand } from '@sedgeline/engine/session';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';

/** What each session found of its ground and company; a session's record is made anew when it changes. */
const FOUND = new WeakMap<SessionRecord, AtHand>();

/**
 * What the ground has to offer by all that was ever asked on it, whichever the dog, and what is wanted: the asks of goals and of
 * a focus. On a ground that is not named or not yet worked, by what this dog has met anywhere; `null` where it has met nothing.
 */
export function atHandOn(
  { sessions }: TrainingRecord,
  dog: string,
  ground: string | null,
  wanted: readonly Ask[],
): AtHand | null {
  const worked = sessions.filter(({ reps }) => reps.length > 0);
  const here = ground === null ? [] : worked.filter((session) => session.ground === ground);
  const seen = here.length > 0 ? here : worked.filter((session) => session.dog === dog);
  if (seen.length === 0) return null;
  return mostAtHand([...seen.map(foundIn), atHandFor(wanted)]);
}

function foundIn(session: SessionRecord): AtHand {
  let found = FOUND.get(session);
  if (found === undefined) {
    found = atHandFor(session.reps.flatMap(({ legs }) => legs.map(({ ask }) => ask)));
    FOUND.set(session, found);
  }
  return found;
}
