import { nextWithAsMany } from './next-with-as-many.ts';

/** Rules that look only at what came before, and say the same thing of every order. */
export type HabitRule = 'win-stay' | 'alternate' | 'as-two-before' | 'other-than-two-before';

export interface HindsightGuess {
  /** The habit that would have guessed this very order best, and its balanced accuracy. */
  readonly by: HabitRule;
  readonly accuracy: number;
  /**
   * Share of the orders with as many of each, the ends as they are, that some habit guesses as well or better: small means that
   * this order is a pattern, not luck. Under 0.05 is worth saying (our judgement, 2026). 1 where there is nothing to guess.
   */
  readonly byChance: number;
}

const HABITS: readonly HabitRule[] = ['win-stay', 'alternate', 'as-two-before', 'other-than-two-before'];
const MOST_JUDGED = 16;

/**
 * Judges one given order, as a handler may have moved it about: which habit would have guessed it best, and how often chance
 * alone would have given as good a guess, by counting every arrangement of the same number (a permutation test, Fisher1935). A single
 * order of ten is often guessed 0.7 by some habit: that alone says nothing.
 * @param order true for a clean send, or a cast to the right
 * @param judged places that are judged, from (not before 1) and up to; the last 16 of them when there are more
 */
export function guessInHindsight(
  order: readonly boolean[],
  judged: { readonly from?: number; readonly to?: number } = {},
): HindsightGuess {
  const to = Math.min(order.length, judged.to ?? order.length);
  const from = Math.max(1, judged.from ?? 1, to - MOST_JUDGED);
  const here = bestHabit(order, from, to);
  const inside = order.slice(from, Math.max(from, to));
  const number = inside.filter(Boolean).length;
  if (number === 0 || number === inside.length) return { ...here, byChance: 1 };
  const tried = [...order];
  let all = 0;
  let asGood = 0;
  for (let bits = 2 ** number - 1; bits < 2 ** inside.length; bits = nextWithAsMany(bits)) {
    for (let n = 0; n < inside.length; n++) tried[from + n] = ((bits >> n) & 1) === 1;
    all++;
    if (bestHabit(tried, from, to).accuracy >= here.accuracy - 1e-12) asGood++;
  }
  return { ...here, byChance: asGood / all };
}

function bestHabit(order: readonly boolean[], from: number, to: number) {
  const last = asBefore(order, from, to, 1);
  const two = asBefore(order, Math.max(2, from), to, 2);
  const accuracies = [last, 1 - last, two, 1 - two];
  const accuracy = Math.max(...accuracies);
  return { by: HABITS[accuracies.indexOf(accuracy)]!, accuracy };
}

/** Balanced accuracy of saying what came `back` places before. */
function asBefore(order: readonly boolean[], from: number, to: number, back: number): number {
  const hits = [0, 0];
  const all = [0, 0];
  for (let at = from; at < to; at++) {
    const kind = order[at] ? 1 : 0;
    all[kind]!++;
    if (order[at] === order[at - back]) hits[kind]!++;
  }
  return all[0] === 0 || all[1] === 0 ? 0.5 : (hits[0]! / all[0]! + hits[1]! / all[1]!) / 2;
}
