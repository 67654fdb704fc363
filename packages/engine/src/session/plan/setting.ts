import { type Heat, heatOf } from '../../weather/index.ts';
import { isAtHand } from '../next/at-hand.ts';
import type { NextInput } from '../next/session-state.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { isStopOnLine, isWithinReach, type MayAsk } from './candidates.ts';
import { learnedPace, type Pace } from './duration.ts';
import type { Stock } from './fill.ts';
import { layAfter } from './laying.ts';
import { type LinePool, poolOf } from './line-pool.ts';
import { type LineOfWork, linesOfWork, otherLines } from './lines-of-work.ts';
import type { PlanKit } from './plan.ts';
import type { PlanInput } from './plan-input.ts';
import { mostOf, suitsAge } from './plan-limits.ts';
import { PlanRecord } from './plan-moment.ts';

/** A goal that a focus's ask stands for: wanted as surely as a rep that teaches (our judgement, 2026). */
const FOCUS_CHANCE = 0.8;

/** In less time than this walking is dear (our judgement, 2026). */
const UNHURRIED_MINUTES = 10;

/** What a session is made in: the dog, the day, what may be asked and how much of it. */
export interface Setting {
  readonly input: PlanInput;
  /** The record, with the focus's ask among its goals. */
  readonly known: NextInput;
  readonly record: PlanRecord;
  readonly heat: Heat;
  readonly most: { readonly minutes: number; readonly reps: number };
  readonly pace: Pace;
  readonly mayAsk: MayAsk;
  /** What each way of filling a session is filled from, the best first; made as they are asked for. */
  readonly stocks: () => Iterable<Stock>;
  /** Whether the kit forbade something so far. */
  readonly isKitMissed: () => boolean;
}

/**
 * Reads a request for a plan.
 * @throws RangeError unless the request's minutes are over 0
 */
export function settingOf(input: PlanInput): Setting {
  const { request } = input;
  if (!(request.minutes > 0 && request.minutes < Infinity)) {
    throw new RangeError(`minutes: expected > 0, got ${request.minutes}`);
  }
  const known = withFocus(input);
  const heat = heatOf(request.weather);
  const most =
    input.rest === undefined
      ? mostOf(request.minutes, known.ageMonths, heat, known.worked.length === 0)
      : { minutes: 0, reps: 0 };
  const record = new PlanRecord(known);
  const note = { isMissed: false };
  const mayAsk = allowed(known, request.kit, note);
  const hurry = Math.max(1, UNHURRIED_MINUTES / Math.max(1, most.minutes));
  return {
    input,
    known,
    record,
    heat,
    most,
    pace: learnedPace(input.repTimes),
    mayAsk,
    stocks: function* () {
      const start = record.inputAt(record.start);
      const lines = most.reps === 0 ? [] : linesOfWork(start, request, most.minutes, mayAsk);
      for (const pools of poolsInTurn(start, lines, mayAsk)) yield { record, lines: pools, mayAsk, hurry };
    },
    isKitMissed: () => note.isMissed,
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

/** What age, ground, company and kit let be asked; notes when it was the kit that forbade something. */
function allowed(
  { ageMonths, atHand }: NextInput,
  kit: PlanKit | undefined,
  note: { isMissed: boolean },
): MayAsk {
  return (legs) => {
    if (!suitsAge(legs, ageMonths) || !isStopOnLine(legs)) return false;
    if (!legs.every(({ ask }) => isAtHand(atHand, ask))) return false;
    if (kit === undefined || isEnough(kit, legs)) return true;
    note.isMissed = true;
    return false;
  };
}

function isEnough(kit: PlanKit, legs: readonly LaidLeg[]): boolean {
  const { things } = layAfter([], legs).layout;
  const laid = (kind: 'post' | 'dummy') => things.filter((thing) => thing.kind === kind).length;
  // What draws the dog needs kit too, where nobody is sent to it and nothing is drawn.
  const draws = (...goals: readonly string[]) =>
    legs.some(({ ask }) => goals.includes(ask.temptation ?? 'none')) ? 1 : 0;
  const posts = Math.max(laid('post'), draws('post'));
  const dummies = Math.max(laid('dummy'), draws('placed-dummy', 'thrown-dummy', 'shot-and-dummy'));
  return posts <= kit.posts && dummies <= kit.dummies;
}
