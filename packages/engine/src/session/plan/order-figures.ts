import { type BestGuess, cleanGuessability, guessInHindsight, numberToDraw } from '../order/index.ts';
import { sendKind, sideOfLegs } from './candidates.ts';
import { cleanOrder } from './claims.ts';
import type { StatedRep } from './draft.ts';
import type { PlanOrders } from './plan-orders.ts';

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
