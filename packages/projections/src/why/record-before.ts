import { compareKeys, type OrderKey } from '@sedgeline/journal';
import type { RepRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';

function sessionBefore(session: SessionRecord, key: OrderKey): SessionRecord {
  const { reps } = session;
  const last = reps.at(-1);
  if (last === undefined || compareKeys(last.orderKey, key) < 0) return session;
  return { ...session, reps: reps.filter((rep) => compareKeys(rep.orderKey, key) < 0) };
}

/** The record with the reps, and what was told, strictly before a place in the journal's order. Nothing else is taken away. */
export function recordBefore(record: TrainingRecord, key: OrderKey): TrainingRecord {
  return {
    ...record,
    sessions: record.sessions.map((session) => sessionBefore(session, key)),
    told: record.told.filter(({ orderKey }) => compareKeys(orderKey, key) < 0),
  };
}

/** The record with one more rep at the end of a session. */
export function recordWith(record: TrainingRecord, rep: RepRecord): TrainingRecord {
  const sessions = record.sessions.map((session) =>
    session.session === rep.session ? { ...session, reps: [...session.reps, rep] } : session,
  );
  return { ...record, sessions };
}
