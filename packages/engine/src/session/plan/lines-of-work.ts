import type { Skill } from '../../ability/index.ts';
import { easyChain } from '../next/chains.ts';
import { WANTED_CHANCE } from '../next/choose.ts';
import { goalShortfall } from '../next/line-of-work.ts';
import { knownChains } from '../next/proposal.ts';
import type { NextInput } from '../next/session-state.ts';
import { castSide, type LaidLeg } from '../picture/laid-leg.ts';
import type { PlanRequest } from './plan.ts';

/** A line of work: one skill, or the casts to both sides, which are worked together so that the sides stay even. */
export interface LineOfWork {
  readonly skills: readonly Skill[];
  /** Share of the work it gets; the shares of a plan add up to 1. */
  readonly share: number;
}

/** Skills that hang on others and are no line of work of their own, unless they are asked for. */
const HANGS_ON: ReadonlySet<Skill> = new Set(['pickup', 'delivery']);
/** What a dog with no record begins with (common practice, no source). */
const FIRST_OF_ALL: readonly Skill[] = ['steady', 'recall', 'heel'];
/** So many lines in so many minutes, and how the work is shared between them (our judgement, 2026). */
const MINUTES_A_LINE = 7;
const SHARES: readonly (readonly number[])[] = [[1], [0.6, 0.4], [0.45, 0.3, 0.25]];
/** Need, each part from 0 to about 1: goals count twice (our judgement, 2026). */
const NEED = {
  goal: 2,
  idle: 0.4,
  idleDays: 21,
  slipping: 1.5,
  weakerSide: 0.4,
  room: 0.6,
  record: 0.3,
  recordLegs: 40,
} as const;
const SURE = 0.85;
/** From this chance on a skill has no more to learn in what it does; at the wanted chance there is most (our judgement, 2026). */
const DONE = 0.97;

/** One name for casts to either side. */
const lineOf = (skill: Skill): readonly Skill[] =>
  castSide(skill) === 'left' || castSide(skill) === 'right' ? ['cast-left', 'cast-right'] : [skill];

/**
 * What a session works: the focus first, then what was asked for, else what this dog needs most. `mayWork` says whether there
 * is kit for a chain; where nothing asked for can be worked with that kit, what this dog needs that can.
 */
export function linesOfWork(
  input: NextInput,
  request: PlanRequest,
  minutes: number,
  mayWork: (legs: readonly LaidLeg[]) => boolean,
): LineOfWork[] {
  const isOpen = (skill: Skill) => {
    const chains = knownChains(input, skill).map(({ legs }) => legs);
    return [...chains, easyChain(skill)].some(mayWork);
  };
  const isNew = input.worked.length === 0;
  // A dog with no record is shown a little of several things, none of them for long.
  const most = isNew
    ? SHARES.length
    : Math.min(SHARES.length, Math.max(1, Math.floor(minutes / MINUTES_A_LINE)));
  const asked = request.skills ?? [];
  const focus = request.focus === undefined ? [] : [request.focus.skill];
  const rest = asked.length > 0 ? byNeed(input, asked) : focus.length > 0 ? [] : neededSkills(input);
  const wanted = chosenLines([...focus, ...rest], most, isOpen);
  // Nothing of what was asked for can be worked: the nearest that can.
  const lines =
    wanted.length > 0 ? wanted : chosenLines([...neededSkills(input), ...FIRST_OF_ALL], most, isOpen);
  const shares = SHARES[lines.length - 1] ?? [];
  return lines.map((skills, n) => ({ skills, share: shares[n] ?? 0 }));
}

/** Every other line that this dog might work, most needed first: for when none of those chosen is within reach. */
export function otherLines(input: NextInput, chosen: readonly LineOfWork[]): LineOfWork[] {
  const done = new Set(chosen.flatMap(({ skills }) => skills));
  const worked = byNeed(
    input,
    input.worked.map(({ skill }) => skill),
  );
  const others = [...worked, ...FIRST_OF_ALL].filter((skill) => !done.has(skill));
  return [...new Set(others)].map((skill) => ({ skills: lineOf(skill), share: 1 }));
}

function chosenLines(
  skills: readonly Skill[],
  most: number,
  isOpen: (skill: Skill) => boolean,
): (readonly Skill[])[] {
  const lines: (readonly Skill[])[] = [];
  for (const skill of skills) {
    if (lines.length >= most || lines.flat().includes(skill) || !isOpen(skill)) continue;
    lines.push(lineOf(skill));
  }
  return lines;
}

function neededSkills(input: NextInput): Skill[] {
  const worked = input.worked.map(({ skill }) => skill).filter((skill) => !HANGS_ON.has(skill));
  return worked.length === 0 ? [...FIRST_OF_ALL] : byNeed(input, worked);
}

function byNeed(input: NextInput, skills: readonly Skill[]): Skill[] {
  const needs = new Map(skills.map((skill) => [skill, need(input, skill)]));
  return [...needs.keys()].sort((a, b) => (needs.get(b) ?? 0) - (needs.get(a) ?? 0));
}

/** A goal's shortfall, days idle, what slipped of what was sure, room to learn, the weaker side, and a record to build on. */
function need(input: NextInput, skill: Skill): number {
  const row = input.worked.find((one) => one.skill === skill);
  const idle = Math.min(row?.daysSince ?? 0, NEED.idleDays) / NEED.idleDays;
  const now = lastDoneNow(input, skill);
  const record = Math.min(row?.legs ?? 0, NEED.recordLegs) / NEED.recordLegs;
  return (
    NEED.goal * Math.max(0, goalShortfall(input, skill)) +
    NEED.idle * idle +
    NEED.slipping * Math.max(0, SURE - now) +
    NEED.room * Math.min(1, Math.max(0, (DONE - now) / (DONE - WANTED_CHANCE))) +
    NEED.weakerSide * sidesApart(input, skill) +
    NEED.record * record
  );
}

/** Chance of not missed of the last thing that went well, asked now; that of the easy end where nothing ever did. */
function lastDoneNow(input: NextInput, skill: Skill): number {
  const ask = input.successes.get(skill)?.at(-1)?.question.ask ?? {};
  return 1 - input.filter.forecast(input.question(skill, ask)).chance.missed;
}

/** By how much the chances of good of the two sides lie apart at the same easy cast; 0 for what has no sides. */
function sidesApart(input: NextInput, skill: Skill): number {
  return Math.abs(leftLessRight(input, skill) ?? 0);
}

/** Chance of good to the left less that to the right, at the same easy cast; `null` for what has no sides. */
function leftLessRight(input: NextInput, skill: Skill): number | null {
  if (lineOf(skill).length < 2) return null;
  const ask = { distanceM: 15, castM: 15 };
  const good = (side: Skill) => input.filter.forecast(input.question(side, ask)).chance.good;
  return good('cast-left') - good('cast-right');
}

/** The side on which the dog is weaker by what can be seen in the chances; `null` where the two are alike. */
export function weakerSide(input: NextInput): Skill | null {
  const apart = leftLessRight(input, 'cast-left') ?? 0;
  if (Math.abs(apart) < WEAKER) return null;
  return apart < 0 ? 'cast-left' : 'cast-right';
}

/** Chances nearer than this are alike (our judgement, 2026). */
const WEAKER = 0.05;
