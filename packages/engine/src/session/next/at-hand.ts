import type { Ask } from '../../ability/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';

/**
 * What a ground and its company have to offer, the most of each on its scale: these a handler finds and cannot put out. What goes
 * beyond is not proposed; a handler may ask it all the same.
 */
export interface AtHand {
  readonly cover: number;
  readonly obstacle: number;
  readonly distraction: number;
}

const FOUND = ['cover', 'obstacle', 'distraction'] as const;

/** Whether all that an ask wants of the ground and of company is there; `null` is a ground of which nothing is known. */
export function isAtHand(atHand: AtHand | null, ask: Ask): boolean {
  return atHand === null || FOUND.every((field) => (ask[field] ?? 0) <= atHand[field]);
}

/** The most of what asks want of the ground and of company. */
export function mostFound(legs: Iterable<Pick<LaidLeg, 'ask'>>): AtHand {
  const most = { cover: 0, obstacle: 0, distraction: 0 };
  for (const { ask } of legs) {
    for (const field of FOUND) most[field] = Math.max(most[field], ask[field] ?? 0);
  }
  return most;
}
