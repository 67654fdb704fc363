import {
  drawnRep,
  type NextAnswer,
  type NextInput,
  nextRep,
  type PictureConditions,
} from '@sedgeline/engine/session';
import { isAskedAlike } from '../record/asked-chain.ts';
import type { RepThread } from '../record/rep-thread.ts';
import type { RepRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import type { WorkView } from '../views/views.ts';
import { stopConditionsOfDog } from '../whistle/stop-conditions-of-dog.ts';
import { inTurnView, nextAmongOthers, othersInTurn } from './in-turn.ts';
import { judgeRep } from './judge.ts';
import { lastBreakOrStartMs, nextInput } from './next-input.ts';
import { repSummary } from './rep-summary.ts';
import { lastUndo } from './undo.ts';

/** The chain that is not yet graded to its end: the last rep of an open session, planned longer than it is graded. */
export function repInHand(session: SessionRecord): RepRecord | null {
  const last = session.reps.at(-1);
  if (last === undefined || session.closedAtMs !== null || last.ended || last.chain === null) return null;
  return last.legs.length < last.chain.length ? last : null;
}

/** Wind of the session, and the dog's own speed, for the drawing and the whistle point. */
export function pictureConditions(record: TrainingRecord, session: SessionRecord): PictureConditions {
  return {
    ...(session.windFromDeg === null ? {} : { windFromDeg: session.windFromDeg }),
    ...(session.windMPerS === null ? {} : { windMPerS: session.windMPerS }),
    stop: stopConditionsOfDog(record, session.dog, session),
  };
}

/** What to do next in a session, from all that stands in the record; a chain in hand does not count yet. */
export function nextInSession(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  session: SessionRecord,
  atMs: number,
  seed: number,
): { readonly input: NextInput; readonly next: NextAnswer } {
  const inHand = repInHand(session);
  const reps = inHand === null ? session.reps : session.reps.slice(0, -1);
  const input = nextInput(record, timeline, session, reps, atMs, seed);
  return { input, next: nextAmongOthers(nextRep(input), othersInTurn(record, session)) };
}

/** All that the Work screen shows of a session. */
export function workView(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  session: SessionRecord,
  threads: readonly RepThread[],
  atMs: number,
  seed: number,
): WorkView {
  const inHand = repInHand(session);
  const { input, next } = nextInSession(record, timeline, session, atMs, seed);
  const conditions = pictureConditions(record, session);
  const chain = inHand?.chain ?? null;
  const handed =
    inHand !== null && chain !== null
      ? judgeRep(
          input,
          {
            legs: chain,
            clean: inHand.clean,
            purpose: inHand.purpose,
            ...(inHand.planRep === null ? {} : { planRep: inHand.planRep }),
          },
          conditions,
        )
      : null;
  const asked = handed?.rep ?? (next.do === 'rep' ? next.rep : null);
  const done = inHand === null ? session.reps : session.reps.slice(0, -1);
  return {
    session: session.session,
    dog: session.dog,
    dogName: record.dogs.get(session.dog)?.name ?? session.dog,
    groundName: session.ground === null ? null : (record.grounds.get(session.ground)?.name ?? session.ground),
    openedAtMs: session.openedAtMs,
    closedAtMs: session.closedAtMs,
    focus: session.focus,
    repNumber: done.length + 1,
    inHand:
      inHand !== null && chain !== null
        ? {
            rep: inHand.rep,
            graded: inHand.legs,
            chain,
            clean: inHand.clean,
            purpose: inHand.purpose,
            reward: inHand.reward,
            gotItAnyway: inHand.gotItAnyway,
            voices: inHand.voices,
          }
        : null,
    inTurn: inTurnView(record, session),
    asked,
    picture: handed?.picture ?? (asked === null ? null : drawnRep(asked.legs, conditions)),
    next: inHand === null ? next : courseInHand(next, input, inHand),
    breakRunning: session.breakRunning,
    repsSinceBreak: input.repsSinceBreak,
    lastBreakOrStartMs: lastBreakOrStartMs(session),
    done: done.map(repSummary),
    struck: session.struckReps
      .filter(({ struckBy }) => struckBy.length > 0)
      .map((rep) => ({ ...repSummary(rep), struckBy: rep.struckBy })),
    undo: session.closedAtMs === null ? lastUndo(threads) : null,
    cleanShareWanted: input.cleanShareWanted,
  };
}

/** While a chain is in hand the course is that chain's own: as planned, or changed; what would come next is not worked yet. */
function courseInHand(next: NextAnswer, { plan }: NextInput, { planRep, chain }: RepRecord): NextAnswer {
  if (next.plan === undefined) return next;
  const planned = plan?.steps.find(({ n }) => n === planRep)?.legs;
  const isKept = planned !== undefined && chain !== null && isAskedAlike(planned, chain);
  return { ...next, plan: { ...next.plan, do: isKept ? 'keep' : 'adapt' } };
}
