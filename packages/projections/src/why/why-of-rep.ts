import { type LegQuestion, poorFormProbability, verdictOf, whyLeg } from '@sedgeline/engine/ability';
import type { KennelOfFacts } from '../kennel-of-facts.ts';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { type OrderedRep, repsInOrder } from '../timeline/rep-order.ts';
import type { WhyLegView, WhyStepView, WhyView } from '../views/why-view.ts';
import { recordBefore, recordWith } from './record-before.ts';

function sinceView(
  session: SessionRecord,
  base: { readonly rep: string; readonly leg: number; readonly question: LegQuestion },
): WhyStepView['since'] {
  const place = session.reps.findIndex(({ rep }) => rep === base.rep);
  return {
    rep: base.rep,
    leg: base.leg,
    atMs: base.question.atMs,
    ask: base.question.ask,
    repNumber: place < 0 ? null : place + 1,
  };
}

/** The rep's legs as questions, as they stood when the rep was asked: all of its legs are asked in one go. */
function questionsOf(
  timeline: AbilityTimeline,
  record: TrainingRecord,
  { rep, session, repsSinceBreak }: OrderedRep,
): LegQuestion[] {
  const at = { session: session.session, ground: session.ground, atMs: rep.atMs, repsSinceBreak };
  return rep.legs.map(({ skill, ask }) => timeline.question(session.dog, skill, ask, at, record));
}

/**
 * Why a rep went as it did: each leg's base among the last ten successes, what changed since, the two chances, and the
 * derived verdict. Every figure comes from what stood in the record strictly before the leg (earlier legs of the same
 * rep included), just as `replay` states it; the form of the day alone is its posterior at the end of that session.
 * So legs added later change nothing but the form, and a `form` verdict with it.
 *
 * Walks the record from scratch up to the session's end. `null` for a rep that does not stand in the record: never
 * recorded, struck, or of a session that is not there.
 */
export function whyOfRep(record: TrainingRecord, id: string): WhyView | null {
  const found = repsInOrder(record).find(({ rep }) => rep.rep === id);
  return found === undefined ? null : whyOf(record, found, new AbilityTimeline());
}

/** Goes on from wherever `timeline` stands, and leaves it at the session's end. */
function whyOf(record: TrainingRecord, found: OrderedRep, timeline: AbilityTimeline): WhyView {
  const { rep, session } = found;
  const before = recordBefore(record, rep.orderKey);
  timeline.update(before);
  const questions = questionsOf(timeline, record, found);
  const reasons = questions.map((question, n) => {
    // With the rep begun and its first n legs done: what a walk settles at the beginning of a session is settled.
    timeline.update(recordWith(before, { ...rep, legs: rep.legs.slice(0, n) }));
    return whyLeg(timeline.filter, question, timeline.walk(session.dog).successes[question.skill] ?? []);
  });
  timeline.update(recordToEndOf(record, session));
  const form = timeline.filter.form(session.dog, session.session);
  const poorProbability = poorFormProbability(form);
  const legs = reasons.map(({ chanceBefore, interval90, step }, leg): WhyLegView => {
    const { skill, ask, grade, cause } = rep.legs[leg]!;
    const stretch = step?.stretch.mean ?? null;
    return {
      leg,
      skill,
      ask,
      grade,
      cause,
      chanceBefore,
      interval90,
      step: step === null ? null : stepView(session, step),
      verdict: verdictOf({ grade, cause, stretch, chanceBefore, poorForm: poorProbability }),
    };
  });
  return {
    rep: rep.rep,
    session: session.session,
    dog: session.dog,
    dogName: record.dogs.get(session.dog)?.name ?? session.dog,
    atMs: rep.atMs,
    repNumber: session.reps.findIndex((one) => one.rep === rep.rep) + 1,
    legs,
    form: { ...form, poorProbability },
  };
}

function stepView(
  session: SessionRecord,
  { base, ...figures }: NonNullable<ReturnType<typeof whyLeg>['step']>,
): WhyStepView {
  return { since: sinceView(session, base), ...figures };
}

/** The record with what was done up to the last rep of a session, that rep included. */
function recordToEndOf(record: TrainingRecord, session: SessionRecord): TrainingRecord {
  const last = session.reps.at(-1);
  if (last === undefined) return record;
  return recordWith(recordBefore(record, last.orderKey), last);
}

/**
 * The same for the screens: a rep of the session worked last is answered from the kennel's own walk, which then walks
 * that one session again; for any other rep the record is walked beside it, so that the next tap need not wait.
 */
export function whyInKennel(kennel: KennelOfFacts, id: string): WhyView | null {
  const { record } = kennel;
  const reps = repsInOrder(record);
  const found = reps.find(({ rep }) => rep.rep === id);
  if (found === undefined) return null;
  const isLast = found.session === reps.at(-1)?.session;
  return whyOf(record, found, isLast ? kennel.timeline() : kennel.walkBeside());
}
