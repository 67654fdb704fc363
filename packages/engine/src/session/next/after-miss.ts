import type { Skill } from '../../ability/index.ts';
import { askNext } from './answer.ts';
import { easierRep, easyRep, knownRep } from './choose.ts';
import { finish } from './finish.ts';
import { lineOfWork } from './line-of-work.ts';
import type { NextAnswer, Reason } from './next-answer.ts';
import { goodOf, proposed } from './proposal.ts';
import { endedSkills, isExcused, isMiss, type NextInput, type WorkedRep } from './session-state.ts';

const placeOf = (rep: WorkedRep, skill: Skill | undefined) =>
  Math.max(
    0,
    rep.asked.findIndex((leg) => leg.skill === skill),
  );

/** A miss that was the handler's or the set-up's: the same ask again, set up better; `null` when there was none. */
export function afterExcused(input: NextInput, last: WorkedRep): NextAnswer | null {
  const missed = last.legs.find(isExcused);
  if (!missed || last.legs.some(isMiss)) return null;
  const again = proposed(input, last.asked, placeOf(last, missed.skill));
  return askNext(input, again, last.purpose ?? 'build', [
    { code: 'repeat-set-up-better', skill: missed.skill },
  ]);
}

/**
 * A miss of the dog's: something easier; two running at a skill end that line of work. `null` when there was none.
 * `mayGoOn` is false when the time is up.
 */
export function afterMiss(input: NextInput, last: WorkedRep, mayGoOn: boolean): NextAnswer | null {
  const missed = last.legs.find(isMiss);
  if (!missed) return null;
  const ended = endedSkills(input.reps);
  if (ended.has(missed.skill)) return afterTwoMisses(input, missed.skill, ended, mayGoOn);
  const was = proposed(input, last.asked, placeOf(last, missed.skill));
  const easier = easierRep(input, was);
  const rep = easier ?? easyRep(input, missed.skill);
  const code = easier === null ? 'easy-end' : 'easier-after-miss';
  return askNext(input, rep, 'easier', [
    { code, skill: missed.skill, chanceBefore: goodOf(was), chanceNow: goodOf(rep) },
  ]);
}

/** That line is over for today. So is the session, unless it had other work in hand and nothing else failed. */
function afterTwoMisses(
  input: NextInput,
  skill: Skill,
  ended: ReadonlySet<Skill>,
  mayGoOn: boolean,
): NextAnswer {
  const because: Reason = { code: 'two-misses-end-this', skill, count: 2 };
  const other = mayGoOn && ended.size < 2 && input.focus !== skill ? lineOfWork(input) : null;
  const known = other === null ? null : knownRep(input, other);
  if (known === null || known.legs.some((leg) => ended.has(leg.skill))) return finish(input, [because]);
  return askNext(input, known, 'check', [because, { code: 'back-to-known', chanceNow: goodOf(known) }]);
}
