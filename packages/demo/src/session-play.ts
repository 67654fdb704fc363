import type { Outing } from './calendar.ts';
import type { Dice } from './dice.ts';
import type { Exercise, Setting } from './exercises.ts';
import type { FactLog } from './fact-log.ts';
import type { Ladder } from './ladder.ts';
import { outcomeOf, type PlayedRep, playRep } from './rep-play.ts';
import { newGroundStep, nextExercise, type Trainee } from './trainee.ts';

/** What a session is called and laid out on. */
export interface SessionNames {
  readonly session: string;
  readonly layout: string;
  readonly nextRep: () => string;
}

const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
const EVENING_MS = 150 * MINUTE_MS;
/** A session is over by then, whatever was still meant to be done. */
const LONGEST_MS = 23 * MINUTE_MS;

/** Share of reps that are written down twice and struck, and share of those with a fair leg that are amended. */
const STRUCK = 0.012;
const STRUCK_WHY = ['written down twice', 'a slip of the thumb'] as const;
const AMENDED = 0.25;

/** A correction still to be written, once it is evening. */
type Correction = (eveningMs: number) => void;

/** Writes one rep; a second entry by mistake is struck at once, a slip of the pen is put right in the evening. */
function writeRep(
  log: FactLog,
  names: SessionNames,
  exercise: Exercise,
  { outcome: _outcome, legs, ...rest }: PlayedRep,
  { dummiesOut, atMs }: { readonly dummiesOut: number; readonly atMs: number },
  dice: Dice,
): Correction | null {
  const rep = names.nextRep();
  const clean = exercise.clean === undefined ? {} : { clean: exercise.clean };
  const body = { session: names.session, legs: [...legs], dummiesOut, ...clean, ...rest };
  log.write('rep-recorded', { rep, ...body }, atMs);
  if (dice.chance(STRUCK)) {
    const twin = names.nextRep();
    log.write('rep-recorded', { rep: twin, ...body }, atMs + 4 * SECOND_MS);
    log.write('rep-struck', { rep: twin, why: dice.pick(STRUCK_WHY) }, atMs + 20 * SECOND_MS);
    return null;
  }
  const slip = legs.findIndex(({ grade, cause }) => grade === 'fair' && cause === undefined);
  if (slip < 0 || !dice.chance(AMENDED)) return null;
  const seenAgain = { cause: 'unsure', note: 'seen again on the film' } as const;
  const better = legs.map((leg, at) => (at === slip ? { ...leg, ...seenAgain } : leg));
  return (eveningMs) =>
    log.write('rep-amended', { rep, legs: better, note: 'put right in the evening' }, eveningMs);
}

/** Each line of work goes by its own legs: a stop that was prompt goes up though the cast after it was refused. */
function noteWork(ladder: Ladder, { work }: Exercise, { legs }: PlayedRep): void {
  const casts = legs.filter(({ skill }) => skill.startsWith('cast-'));
  const own = legs.filter(({ skill }) => skill === work);
  if (casts.length > 0) ladder.note('cast', outcomeOf(casts));
  if (own.length > 0) ladder.note(work, outcomeOf(own));
}

/** The last words of a session, in the way of a notebook. */
function closingNote(isFirst: boolean, shareGood: number, mood: number, isNew: boolean): string | undefined {
  if (isFirst)
    return 'This kennel is invented: dogs, people, grounds and every rep. It is here to look round in.';
  if (mood < -0.09) return 'Not a good day. Kept it short and ended on something easy.';
  if (isNew) return 'First time on this ground: took everything a step down.';
  if (shareGood > 0.9) return 'A good day from start to finish.';
  return undefined;
}

/**
 * Plays one session and writes its facts: opened, nine to fourteen reps with a break, closed; corrections follow in the
 * evening. Returns when the last was written.
 */
export function playSession(
  trainee: Trainee,
  outing: Outing,
  names: SessionNames,
  log: FactLog,
  dice: Dice,
): void {
  const { dog, mind, ladder, handler, sessionsOn } = trainee;
  const { ground, weather, week, startMs } = outing;
  const ease = newGroundStep(trainee, ground);
  const groundId = ground.added.ground;
  mind.beginDay(trainee.lastDayMs === null ? 0 : (startMs - trainee.lastDayMs) / (24 * 60 * MINUTE_MS));
  const { session, layout } = names;
  const opened = { session, dog: dog.added.dog, handler: dog.handler, ground: groundId, layout, weather };
  log.write('session-opened', opened, startMs);
  const reps = dice.whole(9, 14);
  const breakAfter = Math.min(dice.whole(5, 6), reps - 2);
  const setting: Setting = { ground, windMPerS: weather.windMPerS ?? 0, dice };
  const corrections: Correction[] = [];
  let atMs = startMs;
  let missesRunning = 0;
  let legs = 0;
  let good = 0;
  for (let n = 1; n <= reps; n += 1) {
    const isLast = n === reps || atMs - startMs > LONGEST_MS - 3 * MINUTE_MS;
    const known = n === 1 || isLast || missesRunning >= 2;
    const exercise = nextExercise(
      trainee,
      { known, ease: ease + (missesRunning > 0 ? 1 : 0), week },
      setting,
    );
    const played = playRep(exercise, mind, groundId, handler.lateWhistle, dice);
    atMs += dice.whole(82, 118) * SECOND_MS;
    const correction = writeRep(log, names, exercise, played, { dummiesOut: dice.whole(1, 3), atMs }, dice);
    if (correction !== null) corrections.push(correction);
    if (!known) noteWork(ladder, exercise, played);
    missesRunning = played.outcome === 'missed' ? missesRunning + 1 : 0;
    legs += played.legs.length;
    good += played.legs.filter(({ grade }) => grade === 'good').length;
    if (isLast) break;
    if (n === breakAfter) {
      const minutes = dice.whole(2, 4);
      atMs += minutes * MINUTE_MS;
      log.write('break-taken', { session, minutes }, atMs);
      mind.rest();
    }
  }
  const note = closingNote(session.endsWith('-001'), good / legs, mind.mood, ease === 2);
  log.write('session-closed', note === undefined ? { session } : { session, note }, atMs + 40 * SECOND_MS);
  corrections.forEach((correct, at) => {
    correct(atMs + EVENING_MS + at * MINUTE_MS);
  });
  sessionsOn.set(groundId, (sessionsOn.get(groundId) ?? 0) + 1);
  trainee.lastDayMs = startMs;
}
