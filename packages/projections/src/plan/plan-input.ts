import type { Skill } from '@sedgeline/engine/ability';
import { seededRandom } from '@sedgeline/engine/numeric';
import {
  type CastSide,
  castSide,
  type KeptRep,
  type NextInput,
  type PlanInput,
  type PlanRequest,
} from '@sedgeline/engine/session';
import { restNow } from '../record/rest-now.ts';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { knownOfDog } from '../work/known-of-dog.ts';
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
  const at = { session: null, ground: ground ?? null, atMs, repsSinceBreak: 0 };
  const wanted = focus?.ask === undefined ? [] : [focus.ask];
  return {
    ...knownOfDog(record, timeline, dog, at, { wanted }),
    reps: [],
    plan: null,
    focus: focus?.skill ?? null,
    minutes: 0,
    minutesSinceBreak: 0,
    breaks: 0,
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
