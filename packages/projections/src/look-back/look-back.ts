import type { Grade } from '@sedgeline/engine/ability';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { SessionBackView, SessionRow, SessionsView } from '../views/look-back-view.ts';
import { repSummary } from '../work/rep-summary.ts';

function sessionRow(record: TrainingRecord, session: SessionRecord): SessionRow {
  const { dog, ground, openedAtMs, closedAtMs, reps } = session;
  const legs: Record<Grade, number> = { missed: 0, fair: 0, good: 0 };
  for (const rep of reps) for (const { grade } of rep.legs) legs[grade] += 1;
  return {
    session: session.session,
    dog,
    dogName: record.dogs.get(dog)?.name ?? dog,
    groundName: ground === null ? null : (record.grounds.get(ground)?.name ?? ground),
    openedAtMs,
    closedAtMs,
    reps: reps.length,
    legs,
  };
}

/** Every session, the newest first. Counts alone: one pass over the legs, nothing of the engine. */
export function sessionsView(record: TrainingRecord): SessionsView {
  return { sessions: record.sessions.toReversed().map((session) => sessionRow(record, session)) };
}

/** A session and its reps that stand, in order; `null` for one that no fact names. */
export function sessionBackView(record: TrainingRecord, session: string): SessionBackView | null {
  const found = record.sessions.find((one) => one.session === session);
  if (found === undefined) return null;
  return { ...sessionRow(record, found), done: found.reps.map(repSummary) };
}
