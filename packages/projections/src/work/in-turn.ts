import type { Ask } from '@sedgeline/engine/ability';
import type { NextAnswer, PlannedRep } from '@sedgeline/engine/session';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { InTurnView, JudgedRep } from '../views/views.ts';

/** Sessions of one class, in the order in which they were opened. */
function classOf({ sessions }: TrainingRecord, session: SessionRecord): readonly SessionRecord[] {
  return session.class === null ? [session] : sessions.filter((one) => one.class === session.class);
}

/** How many other dogs are worked in turn with this one just now; `null` for a session that is no class. */
export function othersInTurn(record: TrainingRecord, session: SessionRecord): number | null {
  if (session.class === null) return null;
  const open = classOf(record, session).filter((one) => one.closedAtMs === null || one === session);
  return Math.min(12, open.length - 1);
}

/** An ask among so many other dogs, unless it says itself how many. */
export function amongOthers(ask: Ask, others: number | null): Ask {
  return others === null ? ask : { crew: others, ...ask };
}

function repAmongOthers(rep: PlannedRep, others: number | null): PlannedRep {
  const legs = (all: PlannedRep['legs']) => all.map((leg) => ({ ...leg, ask: amongOthers(leg.ask, others) }));
  return { ...rep, legs: legs(rep.legs), easier: { legs: legs(rep.easier.legs) } };
}

/** What is asked next, said with the company it is asked in. */
export function nextAmongOthers(next: NextAnswer, others: number | null): NextAnswer {
  if (others === null || next.do !== 'rep') return next;
  return { ...next, rep: repAmongOthers(next.rep, others), easier: repAmongOthers(next.easier, others) };
}

/** A rep of the handler's own, said with the company it is asked in. */
export function judgedAmongOthers(judged: JudgedRep, others: number | null): JudgedRep {
  return others === null ? judged : { ...judged, rep: repAmongOthers(judged.rep, others) };
}

/** The dogs that are worked in turn; `null` for a session that is no class. */
export function inTurnView(record: TrainingRecord, session: SessionRecord): InTurnView | null {
  if (session.class === null) return null;
  const dogs = classOf(record, session).map((one) => ({
    session: one.session,
    dog: one.dog,
    name: record.dogs.get(one.dog)?.name ?? one.dog,
    reps: one.reps.length,
    isOpen: one.closedAtMs === null,
  }));
  return { class: session.class, dogs };
}
