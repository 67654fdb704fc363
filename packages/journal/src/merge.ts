import type { Fact } from './fact.ts';
import { compareFacts, orderFacts } from './order.ts';
import { canonicalText, sameContent } from './same-content.ts';

/** Two facts with one id that say different things: which is kept and which is refused. */
export interface FactConflict {
  readonly id: string;
  readonly kept: Fact;
  readonly refused: Fact;
}

export interface Merged {
  /** In the journal's order, each id once. */
  readonly facts: readonly Fact[];
  readonly conflicts: readonly FactConflict[];
}

/**
 * The union of lists of facts. Invariants, for any lists a, b, c (checked by `merge.property.test.ts`):
 *
 * 1. commutative: merge(a, b) and merge(b, a) hold the same facts in the same order;
 * 2. associative: it does not matter which two are merged first;
 * 3. idempotent: merge(a, a) is a, in order;
 * 4. nothing is lost: every id of a or b is there;
 * 5. equal clocks included: the id decides.
 *
 * One id with two contents is an error of whoever wrote it, and is reported. So that 1 to 3 hold even then, which of the
 * two is kept must not depend on who came first: it is the one that stands first in the journal's order, then the one
 * whose canonical text is less.
 */
export function mergeFacts(...lists: readonly (readonly Fact[])[]): Merged {
  const byId = new Map<string, Fact>();
  const conflicts: FactConflict[] = [];
  for (const list of lists) {
    for (const fact of list) {
      const there = byId.get(fact.id);
      if (there === undefined) {
        byId.set(fact.id, fact);
      } else if (!sameContent(there, fact)) {
        const [kept, refused] = preferredFirst(there, fact);
        byId.set(fact.id, kept);
        conflicts.push({ id: fact.id, kept, refused });
      }
    }
  }
  return { facts: orderFacts(byId.values()), conflicts };
}

/** Of two facts with one id and different contents: the one that is kept, then the one that is refused. */
export function preferredFirst(a: Fact, b: Fact): readonly [Fact, Fact] {
  const order = compareFacts(a, b);
  if (order !== 0) return order < 0 ? [a, b] : [b, a];
  return canonicalText(a) <= canonicalText(b) ? [a, b] : [b, a];
}
