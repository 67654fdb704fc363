/** Orders shorter than this are like any pattern by chance; from here on a pattern is one (our judgement, 2026). */
const LONG_ENOUGH = 6;

/**
 * Whether an order of clean (`true`) and stopped sends gives itself away: it goes round in 2, 3 or 4 (of each kind some,
 * two rounds and two sends at least), so that a dog that knows the round is right at every send; or, from 8 sends on, it
 * changes once only, with two of each kind at least. Of all orders this is so of 2 in 64 with 6 sends, 18 in 256 with 8 and
 * 34 in 1,024 with 10, and of 4 to 7 in 100 that are drawn with a share of a fifth to a half: to forbid them gives the next
 * send away but little.
 */
export function isGuessable(order: readonly boolean[]): boolean {
  if (order.length < LONG_ENOUGH || new Set(order).size < 2) return false;
  const goesRound = [2, 3, 4].some(
    (round) =>
      order.length >= 2 * round + 2 && order.every((kind, at) => at < round || kind === order[at - round]),
  );
  const changes = order.filter((kind, at) => at > 0 && kind !== order[at - 1]).length;
  const clean = order.filter(Boolean).length;
  const isInTwoBlocks = order.length >= 8 && changes === 1 && Math.min(clean, order.length - clean) >= 2;
  return goesRound || isInTwoBlocks;
}

/** Whether an order is that of an earlier session, place by place, as far as the two go: 6 sends at least. */
export function isAsBefore(order: readonly boolean[], before: readonly boolean[]): boolean {
  const common = Math.min(order.length, before.length);
  return common >= LONG_ENOUGH && order.slice(0, common).every((kind, at) => kind === before[at]);
}
