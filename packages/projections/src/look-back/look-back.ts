import type { Grade } from '@sedgeline/engine/ability';
import { drawnRep, type PictureConditions } from '@sedgeline/engine/session';
import { askedChain } from '../record/asked-chain.ts';
import type { RepRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { RepBack, SessionBackView, SessionRow, SessionsView } from '../views/look-back-view.ts';
import { repSummary } from '../work/rep-summary.ts';
import { pictureConditions } from '../work/work-view.ts';
import { askedInSession } from './asked-in-session.ts';
import { filmedOfRep, heardOfRep } from './film-and-sound-of-rep.ts';

function sessionRow(
  record: TrainingRecord,
  session: SessionRecord,
  conditions: PictureConditions,
): SessionRow {
  const { dog, ground, openedAtMs, closedAtMs, reps } = session;
  const legs: Record<Grade, number> = { missed: 0, fair: 0, good: 0 };
  for (const rep of reps) for (const { grade } of rep.legs) legs[grade] += 1;
  const drawn = fullest(reps);
  return {
    session: session.session,
    dog,
    dogName: record.dogs.get(dog)?.name ?? dog,
    groundName: ground === null ? null : (record.grounds.get(ground)?.name ?? ground),
    openedAtMs,
    closedAtMs,
    reps: reps.length,
    legs,
    asked: askedInSession(reps),
    drawn:
      drawn === null
        ? null
        : { repNumber: reps.indexOf(drawn) + 1, picture: drawnRep(askedChain(drawn), conditions) },
  };
}

/** The rep with the most legs asked, of these the one farthest away, of these the first: the one that shows most of a session. */
function fullest(reps: readonly RepRecord[]): RepRecord | null {
  const legs = ({ chain, legs: done }: RepRecord) => Math.max(done.length, chain?.length ?? 0);
  const farM = (rep: RepRecord) => Math.max(0, ...rep.legs.map(({ ask }) => ask.distanceM ?? 0));
  return reps.reduce<RepRecord | null>((best, rep) => {
    if (best === null) return rep;
    const more = legs(rep) - legs(best);
    return more > 0 || (more === 0 && farM(rep) > farM(best)) ? rep : best;
  }, null);
}

/** Every session, the newest first, each with the one rep that its card draws. One pass over the legs; nothing is fitted or forecast. */
export function sessionsView(record: TrainingRecord): SessionsView {
  const conditionsOf = conditionsByDay(record);
  return {
    sessions: record.sessions
      .toReversed()
      .map((session) => sessionRow(record, session, conditionsOf(session))),
  };
}

/** What the drawings of sessions need, made once where dog, handler and air are the same. */
function conditionsByDay(record: TrainingRecord): (session: SessionRecord) => PictureConditions {
  const made = new Map<string, PictureConditions>();
  return (session) => {
    const { dog, handler, airC, windFromDeg, windMPerS } = session;
    const day = JSON.stringify([dog, handler, airC, windFromDeg, windMPerS]);
    const conditions = made.get(day) ?? pictureConditions(record, session);
    made.set(day, conditions);
    return conditions;
  };
}

/** A session and its reps that stand, in order; `null` for one that no fact names. */
export function sessionBackView(record: TrainingRecord, session: string): SessionBackView | null {
  const found = record.sessions.find((one) => one.session === session);
  if (found === undefined) return null;
  const conditions = pictureConditions(record, found);
  const [filmed, heard] = [filmedOfRep(record, found), heardOfRep(record)];
  const done = found.reps.map((rep): RepBack => {
    const asked = askedChain(rep);
    return {
      ...repSummary(rep),
      asked,
      picture: drawnRep(asked, conditions),
      filmed: filmed(rep.rep),
      heard: heard(rep.rep),
    };
  });
  return { ...sessionRow(record, found, conditions), done };
}
