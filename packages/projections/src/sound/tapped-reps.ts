import type { RepThread } from '../record/rep-thread.ts';
import type { LegRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { TappedLeg } from './wanted-calls.ts';

/** A rep as joining sees it: what was asked, how it went, and when each leg was graded. */
export interface TappedRep {
  readonly rep: string;
  readonly session: string;
  readonly dogName: string;
  /** 1-based, within its session. */
  readonly number: number;
  readonly legs: readonly (LegRecord & TappedLeg)[];
  /** A click is to be found: the handler said that the rep was marked. */
  readonly clicked: boolean;
  /** False of a rep put in from memory, whose taps say nothing of when it was. */
  readonly isTimed: boolean;
}

/**
 * When each leg was first graded, milliseconds: by the fact that recorded the rep, or the first amendment that has as many legs. A
 * leg added long afterwards is dated by then; joining takes that for a late thumb.
 */
function gradedAtMs(thread: RepThread, legs: number): readonly number[] {
  const { recorded, amendments } = thread;
  if (recorded === null) return [];
  return Array.from({ length: legs }, (_, leg) => {
    if (recorded.body.legs.length > leg) return recorded.atMs;
    const first = amendments.find(({ body }) => (body.legs?.length ?? 0) > leg);
    return first?.atMs ?? recorded.atMs;
  });
}

/**
 * The reps of a session, and those of the dogs worked in turn with it, in the order of their first taps: with one handler's whistle on
 * all of them they are joined together.
 */
export function tappedReps(
  record: TrainingRecord,
  session: SessionRecord,
  threadOf: (rep: string) => RepThread | null,
): readonly TappedRep[] {
  const together =
    session.class === null ? [session] : record.sessions.filter((one) => one.class === session.class);
  return together
    .flatMap((one) =>
      one.reps.map((rep, n): TappedRep => {
        const thread = threadOf(rep.rep);
        const atMs = thread === null ? [] : gradedAtMs(thread, rep.legs.length);
        return {
          rep: rep.rep,
          session: one.session,
          dogName: record.dogs.get(one.dog)?.name ?? one.dog,
          number: n + 1,
          legs: rep.legs.map((leg, i) => ({ ...leg, tappedAtS: (atMs[i] ?? rep.atMs) / 1000 })),
          clicked: rep.reward?.includes('marker') ?? false,
          isTimed: !rep.fromMemory,
        };
      }),
    )
    .sort((a, b) => (a.legs[0]?.tappedAtS ?? 0) - (b.legs[0]?.tappedAtS ?? 0));
}
