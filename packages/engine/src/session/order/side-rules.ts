import { nextWithAsMany } from './next-with-as-many.ts';

/** An order of sides in a whole number: bit n is place n, 1 right and 0 left. Up to 20 places. */
export type SideBits = number;

/** Whether an order of so many sides keeps a rule. */
export type SideRule = (order: SideBits, count: number) => boolean;

/** How many bits are set. */
export function rightsIn(bits: number): number {
  let left = bits;
  let sum = 0;
  for (; left !== 0; left &= left - 1) sum++;
  return sum;
}

const all = (count: number) => 2 ** count - 1;

/** Gellermann (1933), first rule: as many lefts as rights; with an odd count one more of either. */
export const equalNumbers: SideRule = (order, count) => Math.abs(2 * rightsIn(order) - count) <= 1;

/** Second rule: no side more than three times running. */
export const noRunOverThree: SideRule = (order, count) => {
  const other = ~order & all(count);
  return (
    (order & (order >> 1) & (order >> 2) & (order >> 3)) === 0 &&
    (other & (other >> 1) & (other >> 2) & (other >> 3)) === 0
  );
};

/** Third rule: at least 2 in 10 of each side in each half; the middle place of an odd count belongs to the second half. */
export const bothInEachHalf: SideRule = (order, count) => {
  const half = count >> 1;
  const least = Math.floor(count / 5);
  const first = rightsIn(order & all(half));
  const second = rightsIn(order) - first;
  return first >= least && half - first >= least && second >= least && count - half - second >= least;
};

/** Fourth rule: the side changes at most 5 times in 10, half the count, rounded up. */
export const fewChanges: SideRule = (order, count) =>
  rightsIn((order ^ (order >> 1)) & all(Math.max(0, count - 1))) <= Math.ceil(count / 2);

/** Places that a fixed pattern gets right, within a tenth of the count of half of them (4 to 6 in 10). */
const atChance =
  (right: (place: number) => boolean): SideRule =>
  (order, count) => {
    let hits = 0;
    for (let place = 0; place < count; place++) if ((((order >> place) & 1) === 1) === right(place)) hits++;
    return Math.abs(10 * hits - 5 * count) <= count;
  };

/** Fifth rule: changing sides every time, LRLR..., is right at chance. */
export const singleAtChance: SideRule = atChance((place) => place % 2 === 1);

/** Fifth rule: changing sides every second time, begun in the middle of a pair, LRRL.... */
export const doubleAtChance: SideRule = atChance((place) => ((place + 1) >> 1) % 2 === 1);

/** The same, begun with a pair, LLRR...; the orders Gellermann printed do not keep it. */
export const pairedAtChance: SideRule = atChance((place) => (place >> 1) % 2 === 1);

/** Gellermann's five rules as they give the 44 orders of 10 that he printed. */
export const GELLERMANN_RULES: readonly SideRule[] = [
  equalNumbers,
  noRunOverThree,
  bothInEachHalf,
  fewChanges,
  singleAtChance,
  doubleAtChance,
];

/** Balanced accuracy of guessing that each side is the one `back` places before. */
export function asBefore(order: SideBits, count: number, back: number): number {
  const judged = all(count) & ~all(back);
  const guessed = order << back;
  const rights = rightsIn(order & judged);
  const lefts = rightsIn(~order & judged);
  if (rights === 0 || lefts === 0) return 0.5;
  return (rightsIn(guessed & order & judged) / rights + rightsIn(~guessed & ~order & judged) / lefts) / 2;
}

/**
 * After Fellows (1967), whose paper was not seen: the habits an animal may have are to be right at chance, not only patterns fixed in
 * advance: saying the last side, the other side, the side before the last, and the opposite of that one (double alternation as it
 * is done, from the last two) are each right under 0.6 in balanced accuracy. A fixed pattern can't see this: of the 44 orders of
 * 10 that keep Gellermann's rules, "opposite of the one before the last" is right 0.71.
 */
export const habitsAtChance: SideRule = (order, count) =>
  [1, 2].every((back) => Math.abs(asBefore(order, count, back) - 0.5) < 0.1 - 1e-9);

/** Every order of so many sides, up to 20, that keeps all the rules, in rising order of its bits. */
export function ordersKeeping(count: number, rules: readonly SideRule[]): SideBits[] {
  const found: SideBits[] = [];
  for (let order = 0; order < 2 ** count; order++) {
    if (rules.every((rule) => rule(order, count))) found.push(order);
  }
  return found;
}

/** Every order of so many sides, up to 20, with as many lefts as rights, or one more, that keeps all the rules. */
export function evenOrdersKeeping(count: number, rules: readonly SideRule[]): SideBits[] {
  const found: SideBits[] = [];
  for (const rights of new Set([count >> 1, (count + 1) >> 1])) {
    for (let order = 2 ** rights - 1; order < 2 ** count; order = nextWithAsMany(order)) {
      if (rules.every((rule) => rule(order, count))) found.push(order);
      if (order === 0) break;
    }
  }
  return found;
}
