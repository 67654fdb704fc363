import type { Skill } from '../../ability/index.ts';
import { castSide } from '../picture/laid-leg.ts';
import { canBuild } from './choose.ts';
import { endedSkills, type NextInput } from './session-state.ts';

/** Reps of one line of work before another is looked for, where the session has no focus (our judgement, 2026). */
const STAY_REPS = 4;

/** What a kennel with no record begins with: waiting still comes before everything else (common practice, no source). */
const FIRST_OF_ALL: Skill = 'steady';

/** Skills that hang on others and are no line of work of their own. */
const HANGS_ON: ReadonlySet<Skill> = new Set(['pickup', 'delivery']);

/**
 * What is worked now: the session's focus; without one (or when its line of work ended), a skill is stayed with for a few
 * reps, then the one that needs it most. Sides are kept even. `null` when no line of work is left.
 */
export function lineOfWork(input: NextInput): Skill | null {
  const ended = endedSkills(input.reps);
  const own = input.focus !== null && !ended.has(input.focus) ? input.focus : skillInHand(input, ended);
  const wanted = own ?? mostNeeded(input, ended);
  return wanted === null ? null : evenSide(input, wanted, ended);
}

function skillInHand(input: NextInput, ended: ReadonlySet<Skill>): Skill | null {
  const skill = input.reps.at(-1)?.about ?? null;
  if (skill === null || ended.has(skill)) return null;
  const lately = input.reps.slice(-STAY_REPS);
  const isDone = lately.length === STAY_REPS && lately.every((rep) => rep.about === skill);
  return isDone ? null : skill;
}

/** What it is worth to need that there is something to build on (our judgement, 2026). */
const ROOM = 0.3;

/**
 * Need: a goal's shortfall, days since it was worked, and that there is something to build on (our judgement, 2026). That last is
 * looked for only where it could decide.
 */
function mostNeeded(input: NextInput, ended: ReadonlySet<Skill>): Skill | null {
  const inHand = input.reps.at(-1)?.about ?? null;
  let top: { skill: Skill; need: number } | null = null;
  for (const { skill, daysSince, legs } of input.worked) {
    if (ended.has(skill) || skill === inHand || HANGS_ON.has(skill)) continue;
    const due = 2 * goalShortfall(input, skill) + Math.min(daysSince, 21) / 21 + Math.min(legs, 10) / 50;
    if (top !== null && due + ROOM <= top.need) continue;
    const need = due + (canBuild(input, skill) ? ROOM : 0);
    if (top === null || need > top.need) top = { skill, need };
  }
  if (top !== null) return top.skill;
  if (inHand !== null && !ended.has(inHand)) return inHand;
  return input.worked.length === 0 && input.reps.length === 0 ? FIRST_OF_ALL : null;
}

/** By how much the chance of good at this skill's goal asks falls short of what is wanted; 0 without a goal. */
export function goalShortfall(input: NextInput, skill: Skill): number {
  return input.goals
    .filter((goal) => goal.skill === skill)
    .reduce((so, goal) => {
      const { chance } = input.filter.forecast(input.question(skill, goal.ask));
      return Math.max(so, goal.chance - chance.good);
    }, 0);
}

/** Both sides even: the side that has had fewer reps this session, at a tie by chance. */
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
