import {
  learnedReaction,
  reactionOfLatencyS,
  type StopConditions,
  stopAtPlace,
  usualStopConditions,
} from '@sedgeline/engine/whistle';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';

/** Stops that a dog's reaction is learned from: the latest, since dogs change. */
const LATEST_STOPS = 60;
/** A stop of the easy end is this far out. */
const EASY_STOP_M = 5;

/** The day as far as a whistle asks about it. */
export interface WhistleDay {
  readonly handler: string | null;
  readonly airC: number | null;
}

/**
 * What the place of a stop depends on for this dog: its run speed where it is on record, its reaction as learned from the latencies
 * that were timed (`learnedReaction`), the handler's reaction and the day's air; the usual figures for what is not known.
 */
export function stopConditionsOfDog(record: TrainingRecord, dog: string, day: WhistleDay): StopConditions {
  const handler = day.handler === null ? undefined : record.handlers.get(day.handler);
  const before: StopConditions = {
    ...usualStopConditions,
    runSpeedMPerS: record.dogs.get(dog)?.runSpeedMPerS ?? usualStopConditions.runSpeedMPerS,
    reactionHandlerS: handler?.reactionS ?? usualStopConditions.reactionHandlerS,
    airC: day.airC ?? usualStopConditions.airC,
  };
  const reactionsS = reactionsOf(record, dog, before);
  return reactionsS.length === 0 ? before : { ...before, reactionDogS: learnedReaction(reactionsS).medianS };
}

/** A stop that was timed: how long it took from the whistle, and how far out the dog halted. */
interface TimedStop {
  readonly latencyS: number;
  readonly haltAtM: number;
}

/** The dog's reactions within its latest timed stops; a stop that ran on, and a time that leaves nothing for it, are left out. */
function reactionsOf({ sessions }: TrainingRecord, dog: string, at: StopConditions): number[] {
  const timed: TimedStop[] = [];
  for (let n = sessions.length - 1; n >= 0 && timed.length < LATEST_STOPS; n--) {
    const session = sessions[n];
    if (session?.dog === dog) timed.push(...timedStops(session));
  }
  return timed.slice(0, LATEST_STOPS).flatMap(({ latencyS, haltAtM }) => {
    const reactionS = reactionOfLatencyS(latencyS, stopAtPlace(haltAtM, at).blowWhenDogAtM, at);
    return reactionS === null ? [] : [reactionS];
  });
}

/** A session's record is made anew when it changes, so what was found in it stands. */
const TIMED = new WeakMap<SessionRecord, readonly TimedStop[]>();

function timedStops(session: SessionRecord): readonly TimedStop[] {
  let timed = TIMED.get(session);
  if (timed === undefined) {
    timed = session.reps
      .flatMap(({ legs }) => legs)
      .flatMap(({ skill, grade, latencyS, ask }) =>
        skill === 'stop' && grade !== 'missed' && latencyS !== undefined
          ? [{ latencyS, haltAtM: ask.distanceM ?? EASY_STOP_M }]
          : [],
      );
    TIMED.set(session, timed);
  }
  return timed;
}
