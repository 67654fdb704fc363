import { compareKeys } from '@sedgeline/journal';
import type { DogRecord, RepRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';

/** A rep with all that its legs' chances depend on beside what came before it. */
export interface OrderedRep {
  readonly rep: RepRecord;
  readonly session: SessionRecord;
  readonly dog: DogRecord | null;
  /** Reps of this session done before it, since the session began or the last break. */
  readonly repsSinceBreak: number;
}

/** Every rep that stands, of all dogs, in the journal's order: sessions of several dogs may run side by side. */
export function repsInOrder(record: TrainingRecord): OrderedRep[] {
  const ordered: OrderedRep[] = [];
  for (const session of record.sessions) {
    const dog = record.dogs.get(session.dog) ?? null;
    let since = 0;
    let nextBreak = 0;
    for (const rep of session.reps) {
      while (
        nextBreak < session.breaks.length &&
        compareKeys(session.breaks[nextBreak]!.orderKey, rep.orderKey) < 0
      ) {
        since = 0;
        nextBreak += 1;
      }
      ordered.push({ rep, session, dog, repsSinceBreak: since });
      since += 1;
    }
  }
  const isOrdered = ordered.every(
    ({ rep }, i) => i === 0 || compareKeys(ordered[i - 1]!.rep.orderKey, rep.orderKey) <= 0,
  );
  return isOrdered ? ordered : ordered.sort((a, b) => compareKeys(a.rep.orderKey, b.rep.orderKey));
}

/** True when the two say the same about the legs' chances. */
export function isSameRep(a: OrderedRep, b: OrderedRep): boolean {
  return (
    a.rep === b.rep &&
    a.repsSinceBreak === b.repsSinceBreak &&
    a.session.dog === b.session.dog &&
    a.session.ground === b.session.ground &&
    (a.dog?.bornMs ?? null) === (b.dog?.bornMs ?? null)
  );
}

/** Reps of a session since it began or the last break, breaks after the last rep included. */
export function repsSinceBreakNow(session: SessionRecord): number {
  const lastBreak = session.breaks.at(-1);
  if (lastBreak === undefined) return session.reps.length;
  return session.reps.filter((rep) => compareKeys(rep.orderKey, lastBreak.orderKey) > 0).length;
}
