import { layAfter, type RepTime, repKind, usualS } from '@sedgeline/engine/session';
import { askedChain } from '../record/asked-chain.ts';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';

/** Reps looked back on, and how many of a dog's own are enough (our judgement, 2026). */
const LATEST = 300;
const OWN_ENOUGH = 20;

/**
 * How long the last reps took: from one rep to the next of the same session, but for those that a break came before, with what
 * each would have taken at the usual pace. The dog's own where there are enough of them, else the kennel's.
 */
export function repTimes(record: TrainingRecord, dog: string): RepTime[] {
  const own = timesOf(record.sessions.filter((session) => session.dog === dog));
  return own.length >= OWN_ENOUGH ? own : timesOf(record.sessions);
}

function timesOf(sessions: readonly SessionRecord[]): RepTime[] {
  const times: RepTime[] = [];
  for (const session of sessions.toReversed()) {
    if (times.length >= LATEST) break;
    times.push(...timesInSession(session));
  }
  return times.slice(0, LATEST);
}

function timesInSession({ reps, breaks }: SessionRecord): RepTime[] {
  const times: RepTime[] = [];
  let lying: ReturnType<typeof layAfter>['leaves'] = [];
  for (const [n, rep] of reps.entries()) {
    const legs = askedChain(rep);
    const laid = layAfter(lying, legs);
    lying = laid.leaves;
    const before = reps[n - 1];
    if (before === undefined || legs.length === 0) continue;
    if (breaks.some(({ atMs }) => atMs > before.atMs && atMs <= rep.atMs)) continue;
    const tookS = (rep.atMs - before.atMs) / 1000;
    times.push({ kind: repKind(legs), usualS: usualS(legs, laid.laysS), tookS });
  }
  return times;
}
