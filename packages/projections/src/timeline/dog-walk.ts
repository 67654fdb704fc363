import { type CleanSend, type LegContext, nextStoppedShare, type Skill } from '@sedgeline/engine/ability';
import type { Success } from '@sedgeline/engine/session';
import type { DogRecord, RepRecord, SessionRecord } from '../record/training-record.ts';

const DAY_MS = 86_400_000;
const MONTH_MS = 30.4375 * DAY_MS;

/** Age in whole and broken months; `null` when unknown or when the dog was born after that moment. */
export function ageMonths(dog: DogRecord | null, atMs: number): number | null {
  if (dog?.bornMs == null || !Number.isFinite(dog.bornMs) || atMs < dog.bornMs) return null;
  return (atMs - dog.bornMs) / MONTH_MS;
}

/** What a dog has worked, as far as the walk through the record has come. */
export interface DogWalk {
  readonly lastWorkedMs: Partial<Record<Skill, number>>;
  readonly legs: Partial<Record<Skill, number>>;
  readonly sessionsOnGround: Record<string, number>;
  /** Earlier sessions on its ground, of each session begun. */
  readonly newness: Record<string, number | null>;
  stopsRunning: number;
  stoppedShare: number;
  readonly cleanSends: CleanSend[];
  readonly successes: Partial<Record<Skill, Success[]>>;
  sessionInHand: string | null;
  repsSinceBreak: number;
}

export function newDogWalk(): DogWalk {
  return {
    lastWorkedMs: {},
    legs: {},
    sessionsOnGround: {},
    newness: {},
    stopsRunning: 0,
    stoppedShare: 0,
    cleanSends: [],
    successes: {},
    sessionInHand: null,
    repsSinceBreak: 0,
  };
}

/** A copy that the walk may go on from without touching the original. */
export function copyDogWalk(walk: DogWalk): DogWalk {
  const successes: DogWalk['successes'] = {};
  for (const [skill, list] of Object.entries(walk.successes)) successes[skill as Skill] = [...list];
  return {
    ...walk,
    lastWorkedMs: { ...walk.lastWorkedMs },
    legs: { ...walk.legs },
    sessionsOnGround: { ...walk.sessionsOnGround },
    newness: { ...walk.newness },
    cleanSends: [...walk.cleanSends],
    successes,
  };
}

/** Earlier sessions of this dog on a session's ground, whether the session has begun in the walk or not. */
export function earlierSessionsOnGround(
  walk: DogWalk,
  session: string | null,
  ground: string | null,
): number | null {
  if (ground === null) return null;
  const begun = session === null ? undefined : walk.newness[session];
  return begun === undefined ? (walk.sessionsOnGround[ground] ?? 0) : begun;
}

/** What the program itself knows about a leg asked now. */
export function contextOf(
  walk: DogWalk,
  dog: DogRecord | null,
  skill: Skill,
  at: {
    readonly session: string | null;
    readonly ground: string | null;
    readonly atMs: number;
    readonly repsSinceBreak: number;
  },
): LegContext {
  const worked = walk.lastWorkedMs[skill];
  return {
    earlierSessionsOnGround: earlierSessionsOnGround(walk, at.session, at.ground),
    repsSinceBreak: at.repsSinceBreak,
    daysSinceWorked: worked === undefined ? 0 : Math.max(0, (at.atMs - worked) / DAY_MS),
    stopsRunning: walk.stopsRunning,
    ageMonths: ageMonths(dog, at.atMs),
  };
}

/** Books the beginning of a session in the walk. */
export function beginSession(walk: DogWalk, session: SessionRecord): void {
  if (walk.newness[session.session] !== undefined) return;
  const { ground } = session;
  walk.newness[session.session] = ground === null ? null : (walk.sessionsOnGround[ground] ?? 0);
  if (ground !== null) walk.sessionsOnGround[ground] = (walk.sessionsOnGround[ground] ?? 0) + 1;
}

const SENDS: ReadonlySet<Skill> = new Set(['line', 'mark', 'hunt']);

/** Books a rep that was done: what was worked when, stops running, and what a clean send showed. */
export function bookRep(walk: DogWalk, rep: RepRecord): void {
  for (const { skill } of rep.legs) {
    walk.lastWorkedMs[skill] = Math.max(rep.atMs, walk.lastWorkedMs[skill] ?? Number.NEGATIVE_INFINITY);
    walk.legs[skill] = (walk.legs[skill] ?? 0) + 1;
  }
  const stopped = rep.legs.some((leg) => leg.skill === 'stop');
  const sent = stopped || rep.clean || rep.legs.some((leg) => SENDS.has(leg.skill));
  if (!sent) return;
  if (!stopped)
    walk.cleanSends.push({ stoppedShare: walk.stoppedShare, expecting: rep.expectation !== 'none' });
  walk.stopsRunning = stopped ? walk.stopsRunning + 1 : 0;
  walk.stoppedShare = nextStoppedShare(walk.stoppedShare, stopped);
}
