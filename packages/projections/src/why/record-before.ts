import { compareKeys, type OrderKey } from '@sedgeline/journal';
import type { RepRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';

function sessionBefore(session: SessionRecord, key: OrderKey): SessionRecord {
  const { reps } = session;
  const last = reps.at(-1);
  if (last === undefined || compareKeys(last.orderKey, key) < 0) return session;
  return { ...session, reps: reps.filter((rep) => compareKeys(rep.orderKey, key) < 0) };
}

/** The record with the reps strictly before a place in the journal's order. Nothing else is taken away. */
export function recordBefore(record: TrainingRecord, key: OrderKey): TrainingRecord {
  return { ...record, sessions: record.sessions.map((session) => sessionBefore(session, key)) };
}

/** The record with one more rep at the end of a session. */
export function recordWith(record: TrainingRecord, rep: RepRecord): TrainingRecord {
  const sessions = record.sessions.map((session) =>
    session.session === rep.session ? { ...session, reps: [...session.reps, rep] } : session,
  );
  return { ...record, sessions };
}

/** A rep that stands, with its session; `null` for one that was never recorded, was struck, or whose session is not there. */
export function findRep(
  record: TrainingRecord,
  id: string,
): { rep: RepRecord; session: SessionRecord } | null {
  for (const session of record.sessions) {
    const rep = session.reps.find((one) => one.rep === id);
    if (rep !== undefined) return { rep, session };
  }
  return null;
}

/** Reps of its session done before a rep, since the session began or the last break. */
export function repsSinceBreakAt(session: SessionRecord, key: OrderKey): number {
  const lastBreak = session.breaks.findLast(({ orderKey }) => compareKeys(orderKey, key) < 0);
  return session.reps.filter(
    ({ orderKey }) =>
      compareKeys(orderKey, key) < 0 &&
      (lastBreak === undefined || compareKeys(orderKey, lastBreak.orderKey) > 0),
  ).length;
}

/** The session of the last rep in the journal's order; `null` while there is no rep. */
export function lastWorked(record: TrainingRecord): SessionRecord | null {
  let last: SessionRecord | null = null;
  let lastKey: OrderKey | null = null;
  for (const session of record.sessions) {
    const key = session.reps.at(-1)?.orderKey;
    if (key === undefined || (lastKey !== null && compareKeys(key, lastKey) < 0)) continue;
    last = session;
    lastKey = key;
  }
  return last;
}
