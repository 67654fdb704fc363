import {
  type BestGuess,
  cleanGuessability,
  guessInHindsight,
  type HindsightGuess,
  numberToDraw,
} from '../order/index.ts';
import { sendKind, sideOfLegs } from './candidates.ts';
import { cleanOrder } from './claims.ts';
import type { StatedRep } from './draft.ts';

/** How even an order is and how well it can be guessed. */
export interface OrderFigures {
  /** Rights less lefts; clean sends less the share that is wanted of them. 0 is even. */
  readonly imbalance: number;
  /**
   * Balanced accuracy of the best simple rule over all orders drawn like this one, 0.5 is chance; `null` where the handler moved
   * the order about, and for fewer than two.
   */
  readonly bestGuess: BestGuess | null;
  /** The habit that would have guessed this very order best, and how often chance alone gives as good a guess. */
  readonly inHindsight: HindsightGuess;
}

/** A plan's two orders: the sides of its casts, and its clean sends between the first rep and the last. */
export interface PlanOrders {
  readonly sides: OrderFigures;
  readonly cleanSends: OrderFigures;
}

/** The figures of a plan's orders. `sideGuess` is what the drawing of the sides says of itself (`sidesInOrder`). */
export function orderFigures(
  reps: readonly StatedRep[],
  cleanShare: number,
  isDrawn: boolean,
  sideGuess: (count: number) => BestGuess,
): PlanOrders {
  const sides = reps.map(({ legs }) => sideOfLegs(legs)).filter((side) => side !== null);
  const drawnSides = reps.filter(
    ({ slot, legs }) => slot.role === 'work' && sideOfLegs(legs) !== null,
  ).length;
  const clean = cleanOrder(reps);
  const isStopping = reps.some(({ legs }) => sendKind(legs) === 'stopped');
  return {
    sides: {
      imbalance: sides.reduce((so, side) => so + (side === 'right' ? 1 : -1), 0),
      bestGuess: isDrawn && drawnSides > 1 ? sideGuess(drawnSides) : null,
      inHindsight: guessInHindsight(sides.map((side) => side === 'right')),
    },
    cleanSends: {
      imbalance: isStopping ? clean.filter(Boolean).length - cleanShare * clean.length : 0,
      bestGuess:
        isDrawn && isStopping && clean.length > 1
          ? cleanGuessability(numberToDraw(clean.length, cleanShare)).best
          : null,
      inHindsight: guessInHindsight(clean),
    },
  };
}
