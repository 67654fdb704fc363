import type { Ask, Skill } from '@sedgeline/engine/ability';
import { seededRandom } from '@sedgeline/engine/numeric';
import {
  type CastSide,
  castSide,
  type KeptRep,
  type NextInput,
  type PlanInput,
  type PlanRequest,
  wantedCleanShare,
} from '@sedgeline/engine/session';
import { restNow } from '../record/rest-now.ts';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { ageMonths, earlierSessionsOnGround } from '../timeline/dog-walk.ts';
import { atHandOn } from '../work/at-hand.ts';
import { repTimes } from './rep-times.ts';

const DAY_MS = 86_400_000;
/** Sessions whose order of sends a plan does not repeat. */
const SESSIONS_BACK = 3;

/**
 * What a plan depends on: the record as it stands before a session yet to come at that moment, and the request. The weather's
 * wind and the layout's kit are in the request already (`planRequest`).
 */
export function planInput(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  request: PlanRequest,
  atMs: number,
  seed: number,
  kept: readonly KeptRep[] = [],
): PlanInput {
  const { dog } = request;
  const late = record.sessions
    .filter((session) => session.dog === dog && session.reps.length > 0)
    .slice(-SESSIONS_BACK);
  return {
    request,
    seed,
    known: knownBefore(record, timeline, request, atMs),
    repTimes: repTimes(record, dog),
    lateOrders: late.map(sendOrder),
    lateSides: late.map(sideOrder),
    ...(kept.length > 0 ? { kept } : {}),
    ...restAt(record, dog, atMs),
  };
}

function knownBefore(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  { dog, ground, focus }: PlanRequest,
  atMs: number,
): NextInput {
  const walk = timeline.walk(dog);
  const at = { session: null, ground: ground ?? null, atMs, repsSinceBreak: 0 };
  const skills = Object.keys(walk.legs) as Skill[];
  const goals = [...record.goals.values()].filter((goal) => goal.dog === dog).flatMap((goal) => goal.asks);
  const wanted = [...goals.map((goal) => goal.ask), ...(focus?.ask === undefined ? [] : [focus.ask])];
  return {
    filter: timeline.filter,
    question: (skill: Skill, ask: Ask) => timeline.question(dog, skill, ask, at, record),
    successes: new Map(skills.map((skill) => [skill, walk.successes[skill] ?? []])),
    worked: skills.map((skill) => ({
      skill,
      legs: walk.legs[skill] ?? 0,
      daysSince: Math.max(0, (atMs - (walk.lastWorkedMs[skill] ?? atMs)) / DAY_MS),
    })),
    goals,
    ageMonths: ageMonths(record.dogs.get(dog) ?? null, atMs),
    earlierSessionsOnGround: earlierSessionsOnGround(walk, null, ground ?? null),
    reps: [],
    plan: null,
    atHand: atHandOn(record, dog, ground ?? null, wanted),
    focus: focus?.skill ?? null,
    minutes: 0,
    minutesSinceBreak: 0,
    repsSinceBreak: 0,
    breaks: 0,
    cleanShareWanted: wantedCleanShare(walk.cleanSends),
    random: seededRandom(0),
  };
}

/** The sends of a session between its first and its last, `true` for one run straight through. */
function sendOrder({ reps }: SessionRecord): boolean[] {
  return reps.slice(1, -1).flatMap(({ legs }) => {
    const has = (...skills: readonly Skill[]) => legs.some(({ skill }) => skills.includes(skill));
    if (has('stop')) return [false];
    return has('line', 'mark', 'hunt') ? [true] : [];
  });
}

/** The sides of a session's casts. */
function sideOrder({ reps }: SessionRecord): CastSide[] {
  return reps.flatMap(({ legs }) => {
    const sides = legs.map(({ skill }) => castSide(skill));
    const side = sides.find((one) => one === 'left' || one === 'right');
    return side === undefined ? [] : [side];
  });
}

/** That the dog rests at a moment, and how many days are left of it. */
function restAt({ dogs }: TrainingRecord, dog: string, atMs: number): Pick<PlanInput, 'rest'> {
  const rest = restNow(dogs.get(dog)?.rest ?? null, atMs);
  if (rest === null) return {};
  return { rest: { daysLeft: rest.untilMs === null ? null : Math.ceil((rest.untilMs - atMs) / DAY_MS) } };
}
