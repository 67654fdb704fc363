import type { SessionRecord, TapFact } from '@sedgeline/projections';
import type { Tap } from './kennel-calls.ts';

interface Moment {
  readonly ms: number;
  readonly counter: number;
}

/** A place between two moments of the journal: half way, or right behind the first where they are too near. */
export function placeBetween(before: Moment, afterMs: number): Moment {
  const half = Math.floor((before.ms + afterMs) / 2);
  return half > before.ms ? { ms: half, counter: 0 } : { ms: before.ms, counter: before.counter + 1 };
}

/** A rep put in from memory, behind the one it came after; nothing where that one does not stand in the session. */
export function memoryFacts(
  session: SessionRecord,
  tap: Tap & { do: 'from-memory' },
  nowMs: number,
  newRep: string,
): readonly TapFact[] {
  const at = session.reps.findIndex(({ rep }) => rep === tap.after);
  if (tap.after !== null && at < 0) return [];
  const before = session.reps[at]?.orderKey ?? session.orderKey;
  const next = session.reps[at + 1]?.orderKey;
  const place = placeBetween(before, next?.ms ?? session.closedAtMs ?? nowMs);
  const body = { rep: newRep, session: session.session, legs: tap.legs, fromMemory: true };
  return [{ kind: 'rep-recorded', body, place }];
}
