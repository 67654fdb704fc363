import { describe, expect, it } from 'vitest';
import reference from '../../../reference/gellermann.json' with { type: 'json' };
import {
  bothInEachHalf,
  doubleAtChance,
  equalNumbers,
  evenOrdersKeeping,
  fewChanges,
  GELLERMANN_RULES,
  noRunOverThree,
  ordersKeeping,
  pairedAtChance,
  type SideBits,
  type SideRule,
  singleAtChance,
} from './side-rules.ts';

/** The letters of the reference; F1 asks both forms of double alternation. */
const RULES: Readonly<Record<string, readonly SideRule[]>> = {
  A: [equalNumbers],
  B: [noRunOverThree],
  C: [bothInEachHalf],
  D: [fewChanges],
  E1: [singleAtChance],
  G1: [doubleAtChance],
  F1: [doubleAtChance, pairedAtChance],
};

/** The reference's E0 and F0, an exact half, can never be met; they are not rules here. */
const known = (name: string) => name.split('+').every((letter) => letter in RULES);
const count = (name: string, length = 10) =>
  ordersKeeping(
    length,
    name.split('+').flatMap((letter) => RULES[letter]!),
  ).length;

const written = (order: SideBits, length: number) =>
  Array.from({ length }, (_, place) => ((order >> place) & 1 ? 'R' : 'L')).join('');

// All expectations: reference/gellermann.json (Gellermann 1933, counted by full enumeration, 2026). Whole numbers, no tolerance.
describe("Gellermann's rules at length 10", () => {
  it.each(Object.entries(reference.single).filter(([name]) => known(name)))(
    'rule %s alone leaves %d of 1024',
    (name, expected) => expect(count(name)).toBe(expected),
  );

  const combined = Object.entries(reference.combined).filter(([name]) => known(name));

  it('is compared in every combination of A to D and with each form of the fifth rule', () => {
    expect(combined.length).toBe(20);
  });

  it.each(combined)('rules %s leave %d', (name, expected) => expect(count(name)).toBe(expected));

  it('leaves the very 44 orders that were printed', () => {
    const orders = ordersKeeping(10, GELLERMANN_RULES).map((order) => written(order, 10));
    expect(orders.toSorted()).toEqual(reference.orders44.toSorted());
  });

  it('leaves the very 8 orders that keep both forms of double alternation as well', () => {
    const orders = ordersKeeping(10, [...GELLERMANN_RULES, pairedAtChance]).map((order) =>
      written(order, 10),
    );
    expect(orders.toSorted()).toEqual(reference.orders8.toSorted());
  });
});

describe('the rules at other lengths', () => {
  it.each(Object.entries(reference.otherLengths).map(([length, n]) => [Number(length), n] as const))(
    'length %d: all of them leave %d',
    (length, expected) =>
      expect(ordersKeeping(length, [...GELLERMANN_RULES, pairedAtChance]).length).toBe(expected),
  );

  it.each(
    Object.entries(reference.balancedNoRunOverThree).map(([length, n]) => [Number(length), n] as const),
  )(
    'length %d: %d are even with no run over three, by either way of going through them',
    (length, expected) => {
      expect(count('A+B', length)).toBe(expected);
      expect(evenOrdersKeeping(length, [noRunOverThree]).length).toBe(expected);
    },
  );

  it('goes through the same even orders as through all, odd lengths too', () => {
    for (let length = 0; length <= 13; length++) {
      const even = evenOrdersKeeping(length, [bothInEachHalf, fewChanges]);
      expect(even.toSorted((a, b) => a - b)).toEqual(
        ordersKeeping(length, [equalNumbers, bothInEachHalf, fewChanges]),
      );
    }
  });
});
