import { compareKeys, type Fact, type OrderKey } from '@sedgeline/journal';

/** A fact's body with its place in the journal's order and its time. */
export interface Keyed<Body> {
  readonly key: OrderKey;
  readonly atMs: number;
  readonly fact: Fact;
  readonly body: Body;
}

/** The later of two in the journal's order. */
export function later<Body>(a: Keyed<Body> | null, b: Keyed<Body>): Keyed<Body> {
  return a !== null && compareKeys(a.key, b.key) > 0 ? a : b;
}

/** The earlier of two in the journal's order. */
export function earlier<Body>(a: Keyed<Body> | null, b: Keyed<Body>): Keyed<Body> {
  return a !== null && compareKeys(a.key, b.key) < 0 ? a : b;
}

/** Puts one into a list kept in the journal's order; most arrive at its end. */
export function insertInOrder<Body>(list: Keyed<Body>[], one: Keyed<Body>): void {
  let place = list.length;
  while (place > 0 && compareKeys(list[place - 1]!.key, one.key) > 0) place--;
  list.splice(place, 0, one);
}
