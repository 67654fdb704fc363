import type { Skill } from '../../ability/index.ts';
import { afterExcused, afterMiss } from './after-miss.ts';
import { askNext, breakNow, endHere } from './answer.ts';
import { straightThrough } from './chains.ts';
import { BAND, buildRep, easierRep, knownRep, likeliestRep } from './choose.ts';
import { finish } from './finish.ts';
import { BREAK_MINUTES, FINISH_MINUTES, isBreakDue } from './limits.ts';
import { lineOfWork } from './line-of-work.ts';
import type { NextAnswer, Reason } from './next-answer.ts';
import { nextInPlan } from './next-in-plan.ts';
import { goodOf, type Proposal, proposed } from './proposal.ts';
import { raisedLeg, raisedReason } from './raised-reason.ts';
import { type NextInput, wentWell } from './session-state.ts';

/** Lengths of a session (common practice, no source). */
const MOST_REPS = 14;
const USUAL_MINUTES = 20;
const MINUTES_BY_AGE = [
  { underMonths: 6, minutes: 12 },
  { underMonths: 12, minutes: 15 },
] as const;
/** After a stop, this much of the way counts as somewhere else; so often it is asked elsewhere (our judgement, 2026). */
const ELSEWHERE = 0.15;
const VARY_SHARE = 0.3;
const VARY_CHANCE = 0.75;

/** How long this dog is worked, minutes: the young shorter. Deferring to the vet and to the dog's keenness. */
export function sessionMinutes(ageMonths: number | null): number {
  return (
    MINUTES_BY_AGE.find((row) => ageMonths !== null && ageMonths < row.underMonths)?.minutes ?? USUAL_MINUTES
  );
}

/**
 * The next thing to do in a session: a rep with its chances, its easier fall-back and its reasons, a break, or the end.
 * The rules of the trade are kept in this order: an excused miss repeats the same ask set up better; after a miss
 * easier, and two misses running end that line of work; a break in time; end well and in time; the known thing first;
 * sends without a stop as often as this dog's record wants; then one thing raised, nearest the wanted chance. A session
 * with a plan follows it as far as what came of the reps lets it (`nextInPlan`).
 */
export function nextRep(input: NextInput): NextAnswer {
  return input.plan === null ? nextUnplanned(input) : nextInPlan(input, input.plan);
}

function nextUnplanned(input: NextInput): NextAnswer {
  const last = input.reps.at(-1);
  const isOver =
    input.minutes >= sessionMinutes(input.ageMonths) - FINISH_MINUTES || input.reps.length >= MOST_REPS;
  if (last) {
    if (last.purpose === 'finish' && wentWell(last)) return endHere([{ code: 'end-on-good' }]);
    const mended = afterExcused(input, last) ?? afterMiss(input, last, !isOver);
    if (mended) return mended;
  }
  if (isOver)
    return finish(input, [{ code: 'long-enough', count: input.reps.length, minutes: input.minutes }]);
  if (isBreakDue(input)) return breakNow(input, BREAK_MINUTES);
  const skill = lineOfWork(input);
  if (skill === null) return finish(input, []);
  if (!last) return first(input, skill);
  return cleanSend(input, skill) ?? work(input, skill);
}

/** Rep 1 checks a known thing. */
function first(input: NextInput, skill: Skill): NextAnswer {
  const known = knownRep(input, skill);
  if (known)
    return askNext(input, known, 'check', [{ code: 'known-first', skill, chanceNow: goodOf(known) }]);
  const likeliest = likeliestRep(input, skill);
  const code = (input.successes.get(skill)?.length ?? 0) === 0 ? 'easy-end' : 'nothing-known-yet';
  return askNext(input, likeliest, 'check', [{ code, skill, chanceNow: goodOf(likeliest) }]);
}

/** Draws whether this send is run straight through: each send alike, with the share this dog's own record wants. */
function cleanSend(input: NextInput, skill: Skill): NextAnswer | null {
  if (input.reps.at(-1)?.purpose === 'easier') return null;
  const share = input.cleanShareWanted;
  if (input.random.uniform() >= share) return null;
  const chain = buildRep(input, skill, false) ?? knownRep(input, skill);
  const legs = chain ? straightThrough(chain.legs) : null;
  if (!legs) return null;
  const straight = proposed(input, legs, 0);
  return straight.least < VARY_CHANCE
    ? null
    : askNext(input, straight, 'clean', [{ code: 'run-clean', share }]);
}

/** Raises one thing where the record allows, else holds; now and then the stop comes somewhere else. */
function work(input: NextInput, skill: Skill): NextAnswer {
  const varied = skill === 'stop' && input.random.uniform() < VARY_SHARE ? elsewhere(input) : null;
  if (varied) return askNext(input, varied, 'vary', [{ code: 'vary-where-the-stop-comes', skill }]);
  const mayRaise = lastLeg(input, skill)?.grade !== 'fair';
  const rep = buildRep(input, skill, mayRaise) ?? likeliestRep(input, skill);
  return askNext(input, rep, raisedLeg(rep) ? 'build' : 'vary', buildReasons(input, rep, skill));
}

function lastLeg(input: NextInput, skill: Skill) {
  return input.reps.flatMap((rep) => rep.legs).findLast((leg) => leg.skill === skill);
}

/** A stop at another part of the way than the last one, within reach; `null` when the record has none to offer. */
function elsewhere(input: NextInput): Proposal | null {
  const lastWay = lastLeg(input, 'stop')?.ask.wayFraction ?? null;
  const known = [knownRep(input, 'stop'), buildRep(input, 'stop', false)].filter(
    (proposal) => proposal !== null,
  );
  const options = known.flatMap((proposal) => [proposal, easierRep(input, proposal) ?? proposal]);
  const isElsewhere = (proposal: Proposal) => {
    const way = proposal.legs[proposal.focus]?.ask.wayFraction ?? 0.1;
    return lastWay === null || Math.abs(way - lastWay) >= ELSEWHERE;
  };
  return (
    options.find(
      (proposal) => proposal.least >= Math.max(BAND.least, VARY_CHANCE) && isElsewhere(proposal),
    ) ?? null
  );
}

/** Why this build: which field moved from what to what, and the two chances. */
function buildReasons(input: NextInput, rep: Proposal, skill: Skill): Reason[] {
  const raised = raisedLeg(rep);
  if (raised !== null) return [raisedReason(input, raised.leg, raised.field)];
  const code = rep.legs[rep.focus]?.step ? 'hold-here' : 'easy-end';
  const hold: Reason = { code, skill, chanceNow: goodOf(rep) };
  return input.earlierSessionsOnGround === 0 ? [hold, { code: 'new-ground-step-down' }] : [hold];
}
