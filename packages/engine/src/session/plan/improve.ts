import type { Random } from '../../numeric/index.ts';
import { sendKind, sideOfLegs } from './candidates.ts';
import { type DraftRep, type StatedRep, stateAll } from './draft.ts';
import { draftOf, type Stock } from './fill.ts';
import { worthOf } from './worth.ts';

/** Changes tried: enough for most of the gain, few enough for a tenth of a second (`bench/plan.ts`). */
const TRIES = 24;

/** What a plan is worth as a whole: the worth of its reps, each after the earlier ones. */
export function wholeWorth({ record, hurry }: Stock, reps: readonly StatedRep[]): number {
  return reps.reduce(
    (so, rep, n) => so + worthOf(record.inputAt(rep.moment), rep, reps.slice(0, n), hurry),
    0,
  );
}

/**
 * Improves a filled session by changes drawn by chance, so many and no more: two reps of one kind change places, or one is
 * asked otherwise. A change is kept where every rep may still stand in its slot and the whole is worth more, so what was drawn
 * (sides, clean runs) stays as it was.
 */
export function improved(stock: Stock, reps: readonly StatedRep[], random: Random): readonly StatedRep[] {
  const works = reps.flatMap(({ slot }, n) => (slot.role === 'work' && slot.fixed === undefined ? [n] : []));
  if (works.length === 0) return reps;
  let best = reps;
  let bestWorth = wholeWorth(stock, reps);
  for (let n = 0; n < TRIES; n++) {
    const one = works[random.below(works.length)] ?? 0;
    const other = works[random.below(works.length)] ?? 0;
    const changed = one === other ? asked(stock, best, one, random) : swapped(best, one, other);
    const stated = changed === null ? null : stateAll(stock.record, changed);
    if (stated === null) continue;
    const worth = wholeWorth(stock, stated);
    if (worth > bestWorth + 1e-9) {
      best = stated;
      bestWorth = worth;
    }
  }
  return best;
}

function plain({ slot, legs, focus, moved, isLoose }: DraftRep): DraftRep {
  return { slot, legs, focus, moved, ...(isLoose === undefined ? {} : { isLoose }) };
}

/** Two reps of one line, kind and side change places. */
function swapped(reps: readonly StatedRep[], one: number, other: number): DraftRep[] | null {
  const a = reps[one];
  const b = reps[other];
  if (!a || !b || a.slot.send !== b.slot.send || a.slot.side !== b.slot.side || a.slot.line !== b.slot.line) {
    return null;
  }
  return reps.map((rep, n) =>
    n === one ? { ...plain(b), slot: a.slot } : n === other ? { ...plain(a), slot: b.slot } : plain(rep),
  );
}

/** One rep asked otherwise, as its line's candidates have it. */
function asked(stock: Stock, reps: readonly StatedRep[], place: number, random: Random): DraftRep[] | null {
  const slot = reps[place]?.slot;
  const pool = slot === undefined ? undefined : stock.lines[slot.line];
  if (slot === undefined || pool === undefined) return null;
  const open = pool.candidates.filter(
    ({ legs }) => sendKind(legs) === slot.send && sideOfLegs(legs) === slot.side,
  );
  const other = open[random.below(Math.max(1, open.length))];
  return other === undefined ? null : reps.map((rep, n) => (n === place ? draftOf(slot, other) : plain(rep)));
}
