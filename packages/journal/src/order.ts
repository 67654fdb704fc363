import type { Fact } from './fact.ts';
import { readTime } from './time.ts';

/** What a fact is ordered by: its clock, taken apart, then its id. */
export interface OrderKey {
  readonly ms: number;
  readonly counter: number;
  readonly device: string;
  readonly id: string;
}

/**
 * The key of a fact's place in the journal. A fact without a clock counts as (milliseconds of `at`, 0, ''). Expects a
 * validated fact: what cannot be read stands at NaN milliseconds and has no place.
 */
export function orderKey(fact: Fact): OrderKey {
  const { clock, id } = fact;
  if (clock === undefined) {
    const reading = readTime(fact.at);
    return { ms: reading.ok ? reading.ms : Number.NaN, counter: 0, device: '', id };
  }
  return {
    ms: Number(clock.slice(0, 13)),
    counter: Number.parseInt(clock.slice(14, 18), 16),
    device: clock.slice(19),
    id,
  };
}

/** Negative where `a` stands before `b`. Texts are compared by UTF-16 code unit, alike on every device. */
export function compareKeys(a: OrderKey, b: OrderKey): number {
  if (a.ms !== b.ms) return a.ms - b.ms;
  if (a.counter !== b.counter) return a.counter - b.counter;
  if (a.device !== b.device) return a.device < b.device ? -1 : 1;
  if (a.id !== b.id) return a.id < b.id ? -1 : 1;
  return 0;
}

/** The journal's total order of facts: clock, then id; 0 only for equal ids. The place in a file means nothing. */
export function compareFacts(a: Fact, b: Fact): number {
  return compareKeys(orderKey(a), orderKey(b));
}

/** The facts in the journal's order, in a new list. Takes each key apart once, so 100,000 facts sort in a blink. */
export function orderFacts(facts: Iterable<Fact>): Fact[] {
  return orderBy(facts, (fact) => fact);
}

/** Things in the order of the facts they carry. */
export function orderBy<Carrier>(carriers: Iterable<Carrier>, factOf: (carrier: Carrier) => Fact): Carrier[] {
  const keyed = Array.from(carriers, (carrier) => ({ key: orderKey(factOf(carrier)), carrier }));
  const isOrdered = keyed.every((entry, i) => i === 0 || compareKeys(keyed[i - 1]!.key, entry.key) <= 0);
  if (!isOrdered) keyed.sort((a, b) => compareKeys(a.key, b.key));
  return keyed.map((entry) => entry.carrier);
}
