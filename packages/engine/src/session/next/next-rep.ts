import type { Skill } from '../../ability/index.ts';
import { castSide, type LaidLeg } from '../picture/chain-shape.ts';
import { straightThrough } from './chains.ts';
import { buildRep, easierRep, easyRep, harderRep, KNOWN_CHANCE, knownRep, likeliestRep } from './choose.ts';
import { wantedCleanShare } from './clean-share.ts';
import type { NextAnswer, Purpose, Reason } from './next-answer.ts';
import { plannedRep } from './planned-rep.ts';
import { type Proposal, proposed } from './proposal.ts';
import { endedSkills, isExcused, isMiss, type NextInput, type WorkedRep } from './session-state.ts';

/** Lengths of a session and of work without a break (common practice, no source; contract "Details"). */
const BREAK_AFTER = { reps: 10, minutes: 11 } as const;
const BREAK_MINUTES = 3;
const MOST_REPS = 14;
const MINUTES_BY_AGE = [
  { underMonths: 6, minutes: 12 },
  { underMonths: 12, minutes: 15 },
] as const;
const USUAL_MINUTES = 20;
/** After a stop, this much of the way counts as "somewhere else" (common practice: vary where it comes). */
const ELSEWHERE = 0.15;
const VARY_SHARE = 0.3;

/** How long this dog is worked: by age, the young the shorter. Deferring to the vet and to the dog's keenness. */
export function sessionMinutes(ageMonths: number | null): number {
  return MINUTES_BY_AGE.find((row) => ageMonths !== null && ageMonths < row.underMonths)?.minutes ?? USUAL_MINUTES;
}

/**
 * The next thing to do in a session: a rep with its chances, its easier fall-back and its reasons, a break, or the end.
 * The rules of the trade are kept in this order: an excused miss repeats the same ask set up better; two misses
 * running end that line of work; after a miss easier; a break in time; end well and in time; the known thing first; sends
 * without a stop as often as this dog's record wants; then one thing raised, nearest the wanted chance.
 */
export function nextRep(input: NextInput): NextAnswer {
  const last = input.reps.at(-1);
  const excused = last ? afterExcused(input, last) : null;
  if (excused) return excused;
  const missed = last ? afterMiss(input, last) : null;
  if (missed) return missed;
  if (input.repsSinceBreak >= BREAK_AFTER.reps || input.minutesSinceBreak >= BREAK_AFTER.minutes) {
    if (!isOver(input)) {
      return {
        do: 'break',
        minutes: BREAK_MINUTES,
        reasons: [{ code: 'break-due', count: input.repsSinceBreak, minutes: input.minutesSinceBreak }],
      };
    }
  }
  if (isOver(input)) return finish(input, [{ code: 'long-enough', count: input.reps.length, minutes: input.minutes }]);
  const skill = lineOfWork(input);
  if (skill === null) return end([{ code: 'stop-for-today' }]);
  if (!last) return first(input, skill);
  return cleanSend(input, skill) ?? work(input, skill);
}

function isOver(input: NextInput): boolean {
  return input.minutes >= sessionMinutes(input.ageMonths) - 2 || input.reps.length >= MOST_REPS;
}

function end(reasons: readonly Reason[]): NextAnswer {
  return { do: 'end', reasons };
}

function answer(input: NextInput, proposal: Proposal, purpose: Purpose, reasons: readonly Reason[]): NextAnswer {
  const fallBack = easierRep(input, proposal) ?? proposal;
  const rep = plannedRep(input, proposal, fallBack, purpose, reasons);
  const easier = plannedRep(input, fallBack, fallBack, 'easier', [{ code: 'one-thing-lowered' }]);
  return { do: 'rep', rep, easier, reasons };
}

/** A miss that was the handler's or the set-up's: the same ask again, set up better. */
function afterExcused(input: NextInput, last: WorkedRep): NextAnswer | null {
  const missed = last.legs.findIndex(isExcused);
  if (missed < 0 || last.legs.some(isMiss)) return null;
  const skill = last.legs[missed]?.skill;
  const legs = last.asked;
  const again = proposed(input, legs, Math.max(0, legs.findIndex((leg) => leg.skill === skill)));
  return answer(input, again, last.purpose ?? 'build', [{ code: 'repeat-set-up-better', ...(skill ? { skill } : {}) }]);
}

/** A miss of the dog's: two running end that line of work, one asks for something easier. */
function afterMiss(input: NextInput, last: WorkedRep): NextAnswer | null {
  const missed = last.legs.find(isMiss);
  if (!missed) return null;
  const ended = endedSkills(input.reps);
  if (ended.has(missed.skill)) {
    return finish(input, [{ code: 'two-misses-end-this', skill: missed.skill, count: 2 }]);
  }
  const focus = Math.max(0, last.asked.findIndex((leg) => leg.skill === missed.skill));
  const was = proposed(input, last.asked, focus);
  const easier = easierRep(input, was);
  const atEasyEnd = easier === null;
  const rep = easier ?? easyRep(input, missed.skill);
  return answer(input, rep, 'easier', [
    {
      code: atEasyEnd ? 'easy-end' : 'easier-after-miss',
      skill: missed.skill,
      chanceBefore: was.notMissed,
      chanceNow: rep.notMissed,
    },
  ]);
}

/** Ends on something good: a known rep, or the end where the last one already was. */
function finish(input: NextInput, because: readonly Reason[]): NextAnswer {
  const last = input.reps.at(-1);
  const wentWell = last !== undefined && last.legs.length > 0 && last.legs.every((leg) => leg.grade !== 'missed');
  if (last?.purpose === 'finish' && wentWell) return end([...because, { code: 'end-on-good' }]);
  const ended = endedSkills(input.reps);
  const finishing = input.reps.filter((rep) => rep.purpose === 'finish').length;
  const known = openSkills(input, ended)
    .map((skill) => knownRep(input, skill))
    .filter((proposal) => proposal !== null)
    .filter((proposal) => !proposal.legs.some((leg) => ended.has(leg.skill)));
  const rep = known[0];
  if (!rep || finishing >= 2) return end([...because, { code: wentWell ? 'end-on-good' : 'stop-for-today' }]);
  return answer(input, rep, 'finish', [...because, { code: 'finish-well', chanceNow: rep.least }]);
}

/** Skills that may still be worked: the session's own first, then the most lately worked. */
function openSkills(input: NextInput, ended: ReadonlySet<Skill>): Skill[] {
  const order = [...input.worked].sort((a, b) => a.daysSince - b.daysSince || b.legs - a.legs);
  const all = [...(input.focus ? [input.focus] : []), ...order.map((row) => row.skill)];
  return [...new Set(all)].filter((skill) => !ended.has(skill));
}

/** What is worked now: the session's focus, or what the record says needs it most. Sides are kept even. */
function lineOfWork(input: NextInput): Skill | null {
  const ended = endedSkills(input.reps);
  const wanted = input.focus !== null && !ended.has(input.focus) ? input.focus : mostNeeded(input, ended);
  return wanted === null ? null : evenSide(input, wanted, ended);
}

/** Need: a goal's shortfall, days since it was worked, and that there is something to build on (our judgement, 2026). */
function mostNeeded(input: NextInput, ended: ReadonlySet<Skill>): Skill | null {
  let top: { skill: Skill; need: number } | null = null;
  for (const { skill, daysSince, legs } of input.worked) {
    if (ended.has(skill) || skill === 'pickup' || skill === 'delivery') continue;
    const shortfall = input.goals
      .filter((goal) => goal.skill === skill)
      .reduce((so, goal) => {
        const chance = input.filter.forecast(input.question(skill, goal.ask)).chance.good;
        return Math.max(so, goal.chance - chance);
      }, 0);
    const room = buildRep(input, skill, true) ? 0.3 : 0;
    const need = 2 * shortfall + Math.min(daysSince, 21) / 21 + room + Math.min(legs, 10) / 50;
    if (top === null || need > top.need) top = { skill, need };
  }
  return top?.skill ?? (ended.size > 0 || input.reps.length > 0 ? null : 'steady');
}

function evenSide(input: NextInput, skill: Skill, ended: ReadonlySet<Skill>): Skill {
  const side = castSide(skill);
  if (side !== 'left' && side !== 'right') return skill;
  const other: Skill = side === 'left' ? 'cast-right' : 'cast-left';
  if (ended.has(other)) return skill;
  const count = (one: Skill) => input.reps.filter((rep) => rep.legs.some((leg) => leg.skill === one)).length;
  const difference = count(skill) - count(other);
  if (difference !== 0) return difference > 0 ? other : skill;
  return input.random.uniform() < 0.5 ? skill : other;
}

/** Rep 1 checks a known thing. */
function first(input: NextInput, skill: Skill): NextAnswer {
  const known = knownRep(input, skill);
  if (known) return answer(input, known, 'check', [{ code: 'known-first', skill, chanceNow: known.least }]);
  const likeliest = likeliestRep(input, skill);
  const code = (input.successes.get(skill)?.length ?? 0) === 0 ? 'easy-end' : 'nothing-known-yet';
  return answer(input, likeliest, 'check', [{ code, skill, chanceNow: likeliest.least }]);
}

/** Draws whether this send is run straight through: each send alike, with the share this dog's own record wants. */
function cleanSend(input: NextInput, skill: Skill): NextAnswer | null {
  if (input.reps.at(-1)?.purpose === 'easier') return null;
  const share = wantedCleanShare(input.cleanSends);
  if (input.random.uniform() >= share) return null;
  const chain = buildRep(input, skill, false) ?? knownRep(input, skill);
  const legs = chain ? straightThrough(chain.legs) : null;
  if (!legs) return null;
  const straight = proposed(input, legs, 0);
  if (straight.least < KNOWN_CHANCE - 0.1) return null;
  return answer(input, straight, 'clean', [{ code: 'run-clean', share }]);
}

/** Raises one thing where the record allows, else holds; now and then the stop comes somewhere else. */
function work(input: NextInput, skill: Skill): NextAnswer {
  const lastOfSkill = input.reps.flatMap((rep) => rep.legs).filter((leg) => leg.skill === skill).at(-1);
  const varied = skill === 'stop' && input.random.uniform() < VARY_SHARE ? elsewhere(input) : null;
  if (varied) return answer(input, varied, 'vary', [{ code: 'vary-where-the-stop-comes', skill }]);
  const mayRaise = lastOfSkill === undefined || lastOfSkill.grade === 'good';
  const rep = buildRep(input, skill, mayRaise) ?? likeliestRep(input, skill);
  return answer(input, rep, rep.raised.length > 0 ? 'build' : 'vary', buildReasons(input, rep, skill));
}

function elsewhere(input: NextInput): Proposal | null {
  const lastWay = lastStop(input.reps)?.ask.wayFraction ?? null;
  const known = [knownRep(input, 'stop'), buildRep(input, 'stop', false)];
  const options = known.filter((proposal) => proposal !== null).flatMap((proposal) => {
    const easier = easierRep(input, proposal);
    return easier ? [proposal, easier] : [proposal];
  });
  return (
    options.find((proposal) => {
      const way = proposal.legs[proposal.focus]?.ask.wayFraction ?? 0.1;
      return proposal.least >= BAND_FOR_VARY && (lastWay === null || Math.abs(way - lastWay) >= ELSEWHERE);
    }) ?? null
  );
}
const BAND_FOR_VARY = 0.75;

function lastStop(reps: readonly WorkedRep[]): LaidLeg | undefined {
  return reps.flatMap((rep) => rep.legs).filter((leg) => leg.skill === 'stop').at(-1);
}

/** Why this build: which field moved from what to what, and the two chances. */
function buildReasons(input: NextInput, rep: Proposal, skill: Skill): Reason[] {
  const leg = rep.legs[rep.focus];
  const reasons: Reason[] = [];
  if (leg?.step && rep.raised[0] !== undefined) {
    const field = rep.moved?.field ?? rep.raised[0];
    const shown = field === 'wayFraction' ? 'distanceM' : field;
    const then = input.filter.forecast({ ...leg.question, ask: leg.step.base.question.ask });
    reasons.push({
      code: 'one-thing-raised',
      skill,
      field: shown,
      from: leg.step.base.question.ask[shown as keyof typeof leg.ask],
      to: leg.ask[shown as keyof typeof leg.ask],
      chanceBefore: then.chance.good,
      chanceNow: leg.forecast.chance.good,
    });
  } else {
    reasons.push({ code: leg?.step ? 'hold-here' : 'easy-end', skill, chanceNow: rep.notMissed });
  }
  if (input.earlierSessionsOnGround === 0 && rep.raised.length === 0) reasons.push({ code: 'new-ground-step-down' });
  return reasons;
}

export { easierRep, harderRep };
