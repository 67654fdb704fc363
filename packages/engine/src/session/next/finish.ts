import type { Skill } from '../../ability/index.ts';
import { askNext, endHere } from './answer.ts';
import { knownRep } from './choose.ts';
import type { NextAnswer, Reason } from './next-answer.ts';
import { goodOf, type Proposal } from './proposal.ts';
import { endedSkills, type NextInput, wentWell } from './session-state.ts';

/** A finish that fails is tried once more, not for ever. */
const MOST_FINISHES = 2;

/** Ends on something good: a known rep, every leg at 85 in 100 or more; the end where there is none to be had. */
export function finish(input: NextInput, because: readonly Reason[]): NextAnswer {
  const ended = endedSkills(input.reps);
  const finishes = input.reps.filter((rep) => rep.purpose === 'finish').length;
  const known = finishes < MOST_FINISHES ? knownAmong(input, openSkills(input, ended), ended) : null;
  if (known !== null) {
    return askNext(input, known, 'finish', [...because, { code: 'finish-well', chanceNow: goodOf(known) }]);
  }
  const last = input.reps.at(-1);
  return endHere([...because, { code: last && wentWell(last) ? 'end-on-good' : 'stop-for-today' }]);
}

/** The first skill's known rep that asks for nothing whose line of work has ended. */
function knownAmong(input: NextInput, skills: readonly Skill[], ended: ReadonlySet<Skill>): Proposal | null {
  for (const skill of skills) {
    const known = knownRep(input, skill);
    if (known !== null && !known.legs.some((leg) => ended.has(leg.skill))) return known;
  }
  return null;
}

/** Skills that may still be worked: the session's own first, then the most lately worked. */
function openSkills(input: NextInput, ended: ReadonlySet<Skill>): Skill[] {
  const order = [...input.worked].sort((a, b) => a.daysSince - b.daysSince || b.legs - a.legs);
  const all = [...(input.focus ? [input.focus] : []), ...order.map((row) => row.skill)];
  return [...new Set(all)].filter((skill) => !ended.has(skill));
}
