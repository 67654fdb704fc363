import { compareKeys, type OrderKey } from '@sedgeline/journal';
import type {
  DogRecord,
  RepRecord,
  SessionRecord,
  ToldRecord,
  TrainingRecord,
} from '../record/training-record.ts';

/** A rep with all that its legs' chances depend on beside what came before it. */
export interface OrderedRep {
  readonly rep: RepRecord;
  readonly session: SessionRecord;
  readonly dog: DogRecord | null;
  /** Reps of this session done before it, since the session began or the last break. */
  readonly repsSinceBreak: number;
}

/** Something that was told of a dog, and how many reps come before it. */
export interface OrderedTold {
  readonly told: ToldRecord;
  readonly dog: DogRecord | null;
  readonly place: number;
}

/** How much of an order is as it was: so many of the first reps, and of the first things told. */
export interface SameSoFar {
  readonly reps: number;
  readonly told: number;
}

/**
 * Every rep that stands, of all dogs, in the journal's order: sessions of several dogs may run side by side. Brought up to
 * a changed record, it looks only at the sessions that changed, and says from where on the order is another. What was told of dogs stands
 * between the reps, each at its place.
 */
export class RepOrder {
  readonly #ofSession = new Map<string, readonly OrderedRep[]>();
  #dogs: TrainingRecord['dogs'] = new Map();
  readonly reps: OrderedRep[] = [];
  told: readonly OrderedTold[] = [];

  /** Brings the order up to a record; says how much of its beginning is as it was. */
  update(record: TrainingRecord): SameSoFar {
    const reps = this.#updateReps(record);
    const was = this.told;
    this.told = record.told.map((told) => ({
      told,
      dog: record.dogs.get(told.dog) ?? null,
      place: firstAtOrAfter(this.reps, told.orderKey),
    }));
    let told = 0;
    while (told < was.length && told < this.told.length && isSameTold(was[told]!, this.told[told]!)) told++;
    const parted = Math.min(was[told]?.place ?? reps, this.told[told]?.place ?? reps, reps);
    // A word that comes after a rep that changed was heard of another dog than it is now.
    while (told > 0 && this.told[told - 1]!.place > parted) told--;
    return { reps: parted, told };
  }

  #updateReps(record: TrainingRecord): number {
    const isRenewed = this.#isDogRenewed(record.dogs);
    this.#dogs = record.dogs;
    const changed = new Map<string, readonly OrderedRep[]>();
    for (const session of record.sessions) {
      const was = this.#ofSession.get(session.session);
      if (was !== undefined && !isRenewed && was[0]?.session === session) continue;
      if (was?.length === 0 && session.reps.length === 0) continue;
      changed.set(session.session, repsOfSession(session, record.dogs.get(session.dog) ?? null));
    }
    for (const gone of this.#sessionsGone(record)) changed.set(gone, []);
    let from: OrderKey | null = null;
    for (const [session, reps] of changed) {
      from = earlierKey(from, firstDifference(this.#ofSession.get(session) ?? [], reps));
      this.#ofSession.set(session, reps);
    }
    return from === null ? this.reps.length : this.#replaceFrom(from, changed);
  }

  /** True when a dog's birth is another than it was: every leg's age with it. */
  #isDogRenewed(dogs: TrainingRecord['dogs']): boolean {
    for (const [id, dog] of dogs) {
      const was = this.#dogs.get(id);
      if (was !== undefined && was.bornMs !== dog.bornMs) return true;
    }
    return false;
  }

  /** Sessions that have left the record: an older fact may give one to a dog that is not there. */
  #sessionsGone(record: TrainingRecord): readonly string[] {
    if (record.sessions.length >= this.#ofSession.size) return [];
    const there = new Set(record.sessions.map(({ session }) => session));
    return [...this.#ofSession.keys()].filter((session) => !there.has(session));
  }

  #replaceFrom(from: OrderKey, changed: ReadonlyMap<string, readonly OrderedRep[]>): number {
    const same = firstAtOrAfter(this.reps, from);
    const tail = this.reps.slice(same).filter(({ session }) => !changed.has(session.session));
    for (const reps of changed.values()) tail.push(...reps.slice(firstAtOrAfter(reps, from)));
    tail.sort((a, b) => compareKeys(a.rep.orderKey, b.rep.orderKey));
    this.reps.length = same;
    for (const rep of tail) this.reps.push(rep);
    return same;
  }
}

/** Every rep of a record that stands, in the journal's order. */
export function repsInOrder(record: TrainingRecord): readonly OrderedRep[] {
  const order = new RepOrder();
  order.update(record);
  return order.reps;
}

function repsOfSession(session: SessionRecord, dog: DogRecord | null): readonly OrderedRep[] {
  let since = 0;
  let nextBreak = 0;
  return session.reps.map((rep) => {
    while (
      nextBreak < session.breaks.length &&
      compareKeys(session.breaks[nextBreak]!.orderKey, rep.orderKey) < 0
    ) {
      since = 0;
      nextBreak += 1;
    }
    since += 1;
    return { rep, session, dog, repsSinceBreak: since - 1 };
  });
}

/** True when the two say the same about the legs' chances. */
function isSameRep(a: OrderedRep, b: OrderedRep): boolean {
  return (
    a.rep === b.rep &&
    a.repsSinceBreak === b.repsSinceBreak &&
    a.session.dog === b.session.dog &&
    a.session.ground === b.session.ground &&
    (a.dog?.bornMs ?? null) === (b.dog?.bornMs ?? null)
  );
}

function isSameTold(a: OrderedTold, b: OrderedTold): boolean {
  return (
    a.place === b.place &&
    compareKeys(a.told.orderKey, b.told.orderKey) === 0 &&
    (a.dog?.bornMs ?? null) === (b.dog?.bornMs ?? null)
  );
}

/** Where two runs of a session's reps first part; `null` when they are the same. */
function firstDifference(was: readonly OrderedRep[], is: readonly OrderedRep[]): OrderKey | null {
  let same = 0;
  while (same < was.length && same < is.length && isSameRep(was[same]!, is[same]!)) same++;
  return earlierKey(was[same]?.rep.orderKey ?? null, is[same]?.rep.orderKey ?? null);
}

function earlierKey(a: OrderKey | null, b: OrderKey | null): OrderKey | null {
  if (a === null || b === null) return a ?? b;
  return compareKeys(a, b) <= 0 ? a : b;
}

/** Place of the first rep whose key is not before `key`, by halving. */
function firstAtOrAfter(reps: readonly OrderedRep[], key: OrderKey): number {
  let low = 0;
  let high = reps.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (compareKeys(reps[middle]!.rep.orderKey, key) < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Reps of a session since it began or the last break, breaks after the last rep included. */
export function repsSinceBreakNow(session: SessionRecord): number {
  const lastBreak = session.breaks.at(-1);
  if (lastBreak === undefined) return session.reps.length;
  return session.reps.filter((rep) => compareKeys(rep.orderKey, lastBreak.orderKey) > 0).length;
}
