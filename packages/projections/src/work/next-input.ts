import type { Skill } from '@sedgeline/engine/ability';
import { seededRandom } from '@sedgeline/engine/numeric';
import {
  focusOf,
  isPurpose,
  type NextInput,
  type PlanInHand,
  type WorkedRep,
} from '@sedgeline/engine/session';
import { askedChain } from '../record/asked-chain.ts';
import type { RepRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { repsSinceBreakNow } from '../timeline/rep-order.ts';
import { amongOthers, othersInTurn } from './in-turn.ts';
import { knownOfDog } from './known-of-dog.ts';

const MINUTE_MS = 60_000;

/** Minutes from the session's beginning or last break to a moment; never below 0. */
export function lastBreakOrStartMs(session: SessionRecord): number {
  const lastBreak = session.breaks.at(-1);
  return Math.max(session.openedAtMs, lastBreak?.atMs ?? session.openedAtMs);
}

/**
 * What the choice of the next rep depends on. The chance in it (which sends are run straight through, which side first)
 * comes from `seed`, the session and the number of the rep alone, so a reload asks the same again.
 */
export function nextInput(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  session: SessionRecord,
  reps: readonly RepRecord[],
  atMs: number,
  seed: number,
): NextInput {
  const others = othersInTurn(record, session);
  const at = {
    session: session.session,
    ground: session.ground,
    atMs,
    repsSinceBreak: repsSinceBreakNow(session),
  };
  return {
    ...knownOfDog(record, timeline, session.dog, at, { asAsked: (ask) => amongOthers(ask, others) }),
    reps: reps.map((rep) => workedRep(rep, session.focus)),
    plan: planInHand(record, session),
    focus: session.focus,
    minutes: ownMinutes(session.openedAtMs, atMs, others),
    minutesSinceBreak: ownMinutes(lastBreakOrStartMs(session), atMs, others),
    breaks: session.breaks.length,
    random: seededRandom(mixed(seed, session.session, reps.length)),
  };
}

/** Minutes of a dog's own work since a moment: among others it works its share of them and waits the rest (our judgement, 2026). */
function ownMinutes(sinceMs: number, atMs: number, others: number | null): number {
  return Math.max(0, (atMs - sinceMs) / MINUTE_MS / ((others ?? 0) + 1));
}

function workedRep(rep: RepRecord, focus: Skill | null): WorkedRep {
  const asked = askedChain(rep);
  return {
    legs: rep.legs.map(({ skill, ask, grade, cause }) => ({ skill, ask, grade, cause })),
    asked,
    purpose: isPurpose(rep.purpose) ? rep.purpose : null,
    about: asked[focusOf(asked, focus)]?.skill ?? null,
    planRep: rep.planRep,
  };
}

/** The plan that a session follows; `null` without one, and for one that no fact made. */
function planInHand({ plans }: TrainingRecord, { plan }: SessionRecord): PlanInHand | null {
  const made = plan === null ? undefined : plans.get(plan);
  if (made === undefined || made.reps.length === 0) return null;
  return {
    minutes: made.minutes,
    steps: made.reps.map(({ purpose, legs }, place) => ({
      n: place + 1,
      purpose: isPurpose(purpose) ? purpose : 'vary',
      legs,
      breakMinutes: made.breaks.find(({ afterRep }) => afterRep === place + 1)?.minutes ?? 0,
    })),
  };
}

/** Mixes seed, session and rep number into one seed: FNV-1a over their UTF-16 code units. */
function mixed(seed: number, session: string, n: number): number {
  let hash = 0x811c9dc5;
  for (const char of `${seed}/${session}/${n}`)
    hash = Math.imul(hash ^ (char.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash;
}
