import { seededRandom } from '../../numeric/index.ts';
import type { NextInput } from '../next/session-state.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { attempted, type Bounds, NOTHING } from './attempt.ts';
import { isStopOnLine, isWithinReach, type MayAsk, sendKind } from './candidates.ts';
import { cautionsOf } from './cautions.ts';
import { claimsOf } from './claims.ts';
import { learnedPace } from './duration.ts';
import { BREAK_MINUTES } from './duration-priors.ts';
import type { Stock } from './fill.ts';
import { layAfter } from './laying.ts';
import { type LinePool, poolOf } from './line-pool.ts';
import { type LineOfWork, linesOfWork, otherLines } from './lines-of-work.ts';
import type { Plan, PlanKit } from './plan.ts';
import type { PlanInput } from './plan-input.ts';
import { heatOf, mostOf, suitsAge } from './plan-limits.ts';
import { PlanRecord } from './plan-moment.ts';
import { plannedReps } from './planned-reps.ts';

/** A goal that a focus's ask stands for: wanted as surely as a rep that teaches (our judgement, 2026). */
const FOCUS_CHANCE = 0.8;

/** In less time than this walking is dear (our judgement, 2026). */
const UNHURRIED_MINUTES = 10;

/**
 * A session for a dog, a ground and so many minutes: check, build, vary, clean, break, finish. What is asked comes from the
 * record as the next rep does (known chains, one step, the productive band), its orders are drawn, its minutes reckoned from
 * the journal's own rep times, and every rep is laid out after the one before. The same input gives the same plan. What cannot be
 * kept is owned up to in `rules`; where nothing can be worked the plan is empty and its cautions say why.
 * @throws RangeError unless the request's minutes are over 0 and the seed is a whole number from 0
 */
export function planSession(input: PlanInput): Plan {
  const { request, seed } = input;
  if (!(request.minutes > 0 && request.minutes < Infinity)) {
    throw new RangeError(`minutes: expected > 0, got ${request.minutes}`);
  }
  const known = withFocus(input);
  const heat = heatOf(request.weather);
  const most = mostOf(request.minutes, known.ageMonths, heat);
  const record = new PlanRecord(known);
  const kit = { isMissed: false };
  const mayAsk = allowed(known.ageMonths, request.kit, kit);
  const start = record.inputAt(record.start);
  const lines = most.reps === 0 ? [] : linesOfWork(start, request, most.minutes, mayAsk);
  const hurry = Math.max(1, UNHURRIED_MINUTES / Math.max(1, most.minutes));
  const bounds: Bounds = {
    most,
    pace: learnedPace(input.repTimes),
    cleanShare: known.cleanShareWanted,
    lateOrders: input.lateOrders,
    randomOf: (draw) => seededRandom(mixed(seed, draw)),
  };
  let stock: Stock = { record, lines: [], mayAsk, hurry };
  let found = NOTHING;
  for (const pools of poolsInTurn(start, lines, mayAsk)) {
    stock = { ...stock, lines: pools };
    found = attempted(stock, bounds);
    if (found.reps.length > 0 || found.isTooLong) break;
  }
  const { reps, repMinutes, minutes } = found;
  return {
    dog: request.dog,
    seed,
    minutes: request.minutes,
    reps: plannedReps(stock, reps, known.cleanShareWanted, request.weather),
    breaks: reps.flatMap(({ slot }, n) =>
      slot.takesBreak ? [{ afterRep: n + 1, minutes: BREAK_MINUTES }] : [],
    ),
    rules: claimsOf({
      reps,
      minutes: request.minutes,
      p50: minutes.p50,
      repMinutes,
      ageMonths: known.ageMonths,
      heat,
      cleanShare: known.cleanShareWanted,
      lateOrders: input.lateOrders,
      isNewDog: [...known.successes.values()].every((list) => list.length === 0),
    }),
    cautions: cautionsOf({
      request,
      known,
      heat,
      reps: reps.length,
      hasStops: reps.some(({ legs }) => sendKind(legs) === 'stopped'),
      lacksKit: kit.isMissed,
    }),
    minutesExpected: minutes,
  };
}

/**
 * What a session is made from, the best first: the lines that have something within reach; where nothing comes of them, each other
 * skill that has; and at the last whatever there is. Later ones are only looked at when nothing came of the earlier ones.
 */
function* poolsInTurn(
  input: NextInput,
  lines: readonly LineOfWork[],
  mayAsk: MayAsk,
): Generator<readonly LinePool[]> {
  if (lines.length === 0) return;
  const isReached = ({ candidates }: LinePool) => candidates.some(isWithinReach);
  const pools = lines.map((line) => poolOf(input, line, mayAsk));
  if (pools.some(isReached)) yield pools.filter(isReached);
  for (const line of otherLines(input, lines)) {
    const pool = poolOf(input, line, mayAsk);
    if (isReached(pool)) yield [pool];
  }
  if (!pools.some(isReached)) yield pools.filter(({ candidates }) => candidates.length > 0);
}

/** The record with the focus's ask as a goal beside the dog's own. */
function withFocus({ known, request: { focus } }: PlanInput): NextInput {
  if (focus?.ask === undefined) return known;
  const goal = { skill: focus.skill, ask: focus.ask, chance: FOCUS_CHANCE };
  return { ...known, goals: [...known.goals, goal] };
}

/** What age and kit let be asked; notes when it was the kit that forbade something. */
function allowed(ageMonths: number | null, kit: PlanKit | undefined, note: { isMissed: boolean }): MayAsk {
  return (legs) => {
    if (!suitsAge(legs, ageMonths) || !isStopOnLine(legs)) return false;
    if (kit === undefined || isEnough(kit, legs)) return true;
    note.isMissed = true;
    return false;
  };
}

function isEnough(kit: PlanKit, legs: readonly LaidLeg[]): boolean {
  const { things } = layAfter([], legs).layout;
  const count = (kind: 'post' | 'dummy') => things.filter((thing) => thing.kind === kind).length;
  return count('post') <= kit.posts && count('dummy') <= kit.dummies;
}

/** A seed for each draw of a plan: the plan's own, stirred (the finaliser of a 32-bit hash). */
function mixed(seed: number, draw: number): number {
  let hash = (seed ^ Math.imul(Math.floor(seed / 2 ** 32) + draw + 1, 0x9e3779b1)) >>> 0;
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b) >>> 0;
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35) >>> 0;
  return (hash ^ (hash >>> 16)) >>> 0;
}
