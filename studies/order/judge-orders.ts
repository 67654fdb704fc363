import { guessability, ORDER_LIMITS, type WeightedOrder } from '@sedgeline/engine/session';
import { walkedHazard } from './walked-order.ts';

/** How far orders of clean sends give themselves away, and whether that is within the limits. */
export interface OrdersJudged {
  readonly hazard: readonly (number | null)[];
  readonly spread: number;
  readonly guess: number;
  readonly by: string;
  readonly isWithin: boolean;
}

/** Judges every order that may come at once, exactly. */
export function judgeOrders(ways: readonly WeightedOrder[]): OrdersJudged {
  const sends = ways[0]?.order.length ?? 0;
  const { best } = guessability(ways, { from: 1, to: sends - 1 });
  const { hazard, spread } = walkedHazard(ways);
  const isWithin = spread <= ORDER_LIMITS.hazard && best.accuracy < ORDER_LIMITS.guess;
  return { hazard, spread, guess: best.accuracy, by: best.by, isWithin };
}
