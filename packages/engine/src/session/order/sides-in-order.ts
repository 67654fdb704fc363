import type { Random } from '../../numeric/index.ts';
import { type BestGuess, guessability } from './guessability.ts';
import { ORDER_LIMITS } from './limits.ts';
import {
  bothInEachHalf,
  evenOrdersKeeping,
  fewChanges,
  habitsAtChance,
  noRunOverThree,
  rightsIn,
  type SideBits,
  type SideRule,
} from './side-rules.ts';

/** Where the cast goes. */
export type CastSide = 'left' | 'right';

export interface SidesInOrder {
  readonly sides: readonly CastSide[];
  /** Rights less lefts: 0, or 1 either way where the count is odd. */
  readonly imbalance: number;
  /** How well the best simple rule guesses an order drawn like this one; under 0.6 from 8 sides on. */
  readonly bestGuess: BestGuess;
  /** How many orders it was drawn among, all equally likely. */
  readonly among: number;
  /** How many of the last sessions could be kept apart from, 0..3. */
  readonly apartFrom: number;
}

/** Sides of one session: more make more orders than can be gone through. */
const MOST_SIDES = 20;
/** Sessions that are looked back on, and how many orders must be left to draw among (our judgement, 2026). */
const SESSIONS_BACK = 3;
const FEWEST_ORDERS = 4;

/** Numbers are even from the start (`evenOrdersKeeping`). */
const SHORT_RULES: readonly SideRule[] = [noRunOverThree, bothInEachHalf];
const WHOLE_RULES: readonly SideRule[] = [...SHORT_RULES, fewChanges, habitsAtChance];

/**
 * The rules that an order of so many sides is drawn by. From 8 on: Gellermann's (1933) first four at the length's own measure, and
 * habits at chance in place of his fifth, whose fixed patterns leave the last two sides to be read. Under 8 those two can't be
 * met: equal numbers, no run over three, and both sides in each half.
 */
export const sideRules = (count: number): readonly SideRule[] =>
  count < ORDER_LIMITS.fromSends ? SHORT_RULES : WHOLE_RULES;

/**
 * Left and right casts in an order drawn uniformly among all that keep `sideRules` (Gellermann1933, Fellows1967) and that
 * are as unlike as like each of the last three sessions: a place has the same side as it had then in 4 to 6 of 10 (one more or
 * less where a count is short). Where that leaves fewer than four orders, or orders that are
 * easier to guess, the oldest session is let go first. Every rule keeps
 * with left and right changed about, so the place in the session and the last sessions say nothing of the next side.
 * @param count casts to a side, whole number 0..20
 * @param earlier sides of the last sessions, oldest first; more than three are let go
 * @throws RangeError for another count
 */
export function sidesInOrder(input: {
  readonly count: number;
  readonly earlier?: readonly (readonly CastSide[])[];
  readonly random: Random;
}): SidesInOrder {
  const { count, random } = input;
  if (!Number.isInteger(count) || count < 0 || count > MOST_SIDES)
    throw new RangeError(
      `count: expected a whole number 0..${MOST_SIDES}, got ${count}; draw a longer session in parts, each part earlier to the next`,
    );
  const earlier = (input.earlier ?? []).slice(-SESSIONS_BACK);
  const { orders, apartFrom, bestGuess } = ordersApart(count, earlier);
  const order = orders[random.below(orders.length)]!;
  return {
    sides: asRights(order, count).map((right) => (right ? 'right' : 'left')),
    imbalance: 2 * rightsIn(order) - count,
    bestGuess,
    among: orders.length,
    apartFrom,
  };
}

/** How well the best simple rule guesses an order that `sidesInOrder` draws of so many sides after these sessions. */
export function sidesGuess(count: number, earlier: readonly (readonly CastSide[])[]): BestGuess {
  return ordersApart(count, earlier.slice(-SESSIONS_BACK)).bestGuess;
}

/** The orders apart from as many sessions, the latest first, as leave an order as hard to guess as it has to be. */
function ordersApart(count: number, earlier: readonly (readonly CastSide[])[]) {
  const before = earlier.map((sides) => sides.map((side) => side === 'right'));
  const bestGuessOf = (orders: readonly SideBits[]) =>
    guessability(
      orders.map((bits) => ({ order: asRights(bits, count), weight: 1 })),
      {},
      before,
    ).best;
  let orders = evenOrdersKeeping(count, sideRules(count));
  let bestGuess = bestGuessOf(orders);
  const limit = Math.max(ORDER_LIMITS.guess - 1e-9, bestGuess.accuracy);
  let apartFrom = 0;
  for (const sides of earlier.toReversed()) {
    const apart = orders.filter((order) => isApart(order, count, sides));
    if (apart.length < FEWEST_ORDERS) break;
    const guess = bestGuessOf(apart);
    if (guess.accuracy > limit) break;
    orders = apart;
    bestGuess = guess;
    apartFrom++;
  }
  return { orders, apartFrom, bestGuess };
}

/** As many places with the same side as with the other one, but for a tenth of them or one place. */
function isApart(order: SideBits, count: number, sides: readonly CastSide[]): boolean {
  const places = Math.min(count, sides.length);
  let same = 0;
  for (let place = 0; place < places; place++) {
    if ((((order >> place) & 1) === 1) === (sides[place] === 'right')) same++;
  }
  return Math.abs(2 * same - places) <= Math.max(2, places / 5);
}

const asRights = (order: SideBits, count: number): boolean[] =>
  Array.from({ length: count }, (_, place) => ((order >> place) & 1) === 1);
