import { learnOwnWhistle, type OwnWhistle } from '@sedgeline/engine/sound';
import type { TrainingRecord } from '../record/training-record.ts';

/** The latest blasts that count: a handler may buy another whistle. */
const LATEST = 60;

/**
 * The whistle of a handler (`null`: the one who never said who he is), learned from the blasts that he let stand as his reps' own;
 * `null` before there is one.
 */
export function ownWhistleOf(
  { sounds, sessions }: TrainingRecord,
  handler: string | null,
): OwnWhistle | null {
  const his = new Set(sessions.filter((one) => one.handler === handler).map(({ session }) => session));
  const pitches = sounds
    .filter(({ session }) => his.has(session))
    .flatMap(({ whistles, joins }) =>
      joins.flatMap(({ atS }) =>
        whistles.filter(({ startS }) => startS === atS).map(({ pitchHz }) => pitchHz),
      ),
    );
  return learnOwnWhistle(pitches.slice(-LATEST));
}
