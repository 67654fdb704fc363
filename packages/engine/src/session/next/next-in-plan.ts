import { afterExcused, afterMiss } from './after-miss.ts';
import { askNext, breakNow, endHere } from './answer.ts';
import { focusOf } from './chains.ts';
import { BAND, easierRep, KNOWN_CHANCE, TOO_BIG_STRETCH } from './choose.ts';
import { finish } from './finish.ts';
import { BREAK_MINUTES, FINISH_MINUTES, isBreakDue } from './limits.ts';
import type { NextAnswer, PlanCourse, Reason } from './next-answer.ts';
import { goodOf, type Proposal, proposed } from './proposal.ts';
import { raisedLeg, raisedReason } from './raised-reason.ts';
import {
  endedSkills,
  isExcused,
  isMiss,
  type NextInput,
  type PlanInHand,
  type PlanStep,
  wentWell,
} from './session-state.ts';

/**
 * The next thing in a session that follows a plan. The plan is kept where what came of the reps lets it be: an excused miss
 * repeats its rep; after a miss something easier comes between; two misses running take that line of work out of the plan;
 * a rep that has come out of reach today, or that would now be too big a step, is asked easier; when the time is up
 * what is left is let go for the finish. Where nothing of it is left the session ends well. Every answer carries the plan's
 * course: kept, adapted or ended.
 */
export function nextInPlan(input: NextInput, plan: PlanInHand): NextAnswer {
  const last = input.reps.at(-1);
  const done = doneSteps(input);
  const course = (what: PlanCourse['do']): PlanCourse => ({
    do: what,
    done: done.size,
    of: plan.steps.length,
  });
  const following = (answer: NextAnswer, what: PlanCourse['do']): NextAnswer => ({
    ...answer,
    plan: course(answer.do === 'end' ? 'end' : what),
  });
  const isOver = input.minutes >= plan.minutes - FINISH_MINUTES;
  const ended = endedSkills(input.reps);
  const open = plan.steps.filter((step) => !done.has(step.n));
  const left = open.filter((step) => !step.legs.some(({ skill }) => ended.has(skill)));
  if (last !== undefined) {
    if (last.purpose === 'finish' && wentWell(last)) {
      return following(endHere([{ code: left.length === 0 ? 'plan-done' : 'end-on-good' }]), 'end');
    }
    const again = afterExcused(input, last);
    if (again !== null) return following(standingFor(again, last.planRep), 'keep');
    const missed = last.legs.find(isMiss);
    if (missed !== undefined && !ended.has(missed.skill)) {
      const easier = afterMiss(input, last, !isOver);
      if (easier !== null) return following(easier, 'adapt');
    }
  }
  const because: Reason[] = endedNow(input);
  if (isOver) {
    const reasons: Reason[] = [
      ...because,
      { code: 'long-enough', count: input.reps.length, minutes: input.minutes },
    ];
    return following(
      planFinish(input, left, reasons) ?? finish(input, reasons),
      left.length > 1 ? 'adapt' : 'keep',
    );
  }
  const pause = breakDue(input, plan);
  if (pause > 0) return following(breakNow(input, pause), 'keep');
  if (isBreakDue(input)) return following(breakNow(input, BREAK_MINUTES), 'adapt');
  const step = left[0];
  if (step === undefined) return following(finish(input, because), because.length > 0 ? 'adapt' : 'keep');
  if (step.purpose === 'finish') {
    return following(
      planFinish(input, left, because) ?? finish(input, because),
      because.length > 0 ? 'adapt' : 'keep',
    );
  }
  const { answer, isKept } = stepAsked(input, step, because);
  return following(answer, isKept && because.length === 0 && left.length === open.length ? 'keep' : 'adapt');
}

/** Steps that were worked; one whose miss was excused is still to come. */
function doneSteps({ reps }: NextInput): ReadonlySet<number> {
  const done = new Set<number>();
  for (const { planRep, legs } of reps) {
    if (planRep === null) continue;
    if (legs.some(isExcused) && !legs.some(isMiss)) continue;
    done.add(planRep);
  }
  return done;
}

/** That a line of work ended with the last rep. */
function endedNow({ reps }: NextInput): Reason[] {
  const ended = endedSkills(reps);
  const before = endedSkills(reps.slice(0, -1));
  const now = [...ended].find((skill) => !before.has(skill));
  return now === undefined
    ? []
    : [
        { code: 'two-misses-end-this', skill: now, count: 2 },
        { code: 'planned-line-ended', skill: now },
      ];
}

/** Minutes of the break that the plan puts after its latest rep, if none was taken since; 0 for none. */
function breakDue({ reps, repsSinceBreak }: NextInput, { steps }: PlanInHand): number {
  const latest = reps.findLastIndex(({ planRep }) => planRep !== null);
  const step = steps.find(({ n }) => n === reps[latest]?.planRep);
  const isTaken = repsSinceBreak <= reps.length - 1 - latest;
  return step === undefined || isTaken ? 0 : step.breakMinutes;
}

/** The step as it was planned, or easier where it has come out of reach. */
function stepAsked(
  input: NextInput,
  step: PlanStep,
  because: readonly Reason[],
): { readonly answer: NextAnswer; readonly isKept: boolean } {
  const planned = proposed(input, step.legs, focusOf(step.legs, input.focus));
  const least = step.purpose === 'check' ? KNOWN_CHANCE : BAND.least;
  const isFit = planned.least >= least && planned.stretch <= TOO_BIG_STRETCH;
  const easier = isFit ? null : easierRep(input, planned);
  // An easier rep that is no likelier would help nobody: what was planned is asked, and its chance says what it is.
  if (easier === null || easier.least <= planned.least) {
    const reasons = [
      ...because,
      stepReason(input, planned, step),
      { code: 'as-planned', count: step.n } as const,
    ];
    return { answer: standingFor(askNext(input, planned, step.purpose, reasons), step.n), isKept: true };
  }
  const reason: Reason = {
    code: 'easier-than-planned',
    skill: easier.legs[easier.focus]?.skill,
    chanceBefore: goodOf(planned),
    chanceNow: goodOf(easier),
  };
  const purpose = step.purpose === 'build' ? 'vary' : step.purpose;
  return {
    answer: standingFor(askNext(input, easier, purpose, [...because, reason]), step.n),
    isKept: false,
  };
}

/** Why a step of the plan is asked, as the record now says. */
function stepReason(input: NextInput, rep: Proposal, { purpose }: PlanStep): Reason {
  const skill = rep.legs[rep.focus]?.skill;
  const chanceNow = goodOf(rep);
  if (purpose === 'check') return { code: 'known-first', skill, chanceNow };
  if (purpose === 'finish') return { code: 'finish-well', skill, chanceNow };
  if (purpose === 'clean') return { code: 'run-clean', share: input.cleanShareWanted };
  const raised = raisedLeg(rep);
  return raised === null
    ? { code: 'hold-here', skill, chanceNow }
    : raisedReason(input, raised.leg, raised.field);
}

/** The plan's own finish, where it is still sure; `null` where it is not to be had. */
function planFinish(
  input: NextInput,
  left: readonly PlanStep[],
  because: readonly Reason[],
): NextAnswer | null {
  const step = left.findLast(({ purpose }) => purpose === 'finish');
  if (step === undefined) return null;
  const planned = proposed(input, step.legs, focusOf(step.legs, input.focus));
  if (planned.least < KNOWN_CHANCE) return null;
  return standingFor(
    askNext(input, planned, 'finish', [...because, stepReason(input, planned, step)]),
    step.n,
  );
}

/** The answer with the plan's number that its rep stands for. */
function standingFor(answer: NextAnswer, planRep: number | null): NextAnswer {
  if (answer.do !== 'rep' || planRep === null) return answer;
  return {
    ...answer,
    rep: { ...answer.rep, planRep },
    easier: { ...answer.easier, planRep },
  };
}
