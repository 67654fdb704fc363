import type { BestGuess, HindsightGuess } from '../order/index.ts';

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
