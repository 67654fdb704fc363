/** From so many sends on a pattern is one, and not any order's luck (our judgement, 2026). */
const SHORTEST = 6;
const WHOLE = 8;
/** So many standard deviations under the wanted share no draw is meant to lie (our judgement, 2026). */
const FAR_UNDER = 2.5;

/**
 * Whether an order of clean sends (`true`) that was drawn fairly can still be read as it stands: it goes round in two to four, it
 * is one block and then another, it is the order of an earlier session, or eight sends and more hold hardly a clean one.
 */
export function givesItselfAway(
  order: readonly boolean[],
  share: number,
  earlier: readonly (readonly boolean[])[],
): boolean {
  if (order.length < SHORTEST) return false;
  const clean = order.filter(Boolean).length;
  const expected = order.length * share;
  const fewest = Math.max(1, Math.ceil(expected - FAR_UNDER * Math.sqrt(expected * (1 - share))));
  if (order.length >= WHOLE && clean < fewest) return true;
  return isRound(order) || isTwoBlocks(order) || earlier.some((before) => isSameStart(order, before));
}

function isRound(order: readonly boolean[]): boolean {
  if (order.every((kind) => kind === order[0])) return false;
  return [2, 3, 4].some((length) => {
    if (order.length < 2 * length + 2) return false;
    for (let at = length; at < order.length; at++) if (order[at] !== order[at - length]) return false;
    return true;
  });
}

function isTwoBlocks(order: readonly boolean[]): boolean {
  if (order.length < WHOLE) return false;
  const first = order.findIndex((kind) => kind !== order[0]);
  return first > 1 && order.length - first > 1 && order.slice(first).every((kind) => kind === order[first]);
}

function isSameStart(order: readonly boolean[], before: readonly boolean[]): boolean {
  const length = Math.min(order.length, before.length);
  for (let at = 0; at < length; at++) if (order[at] !== before[at]) return false;
  return length >= SHORTEST;
}
