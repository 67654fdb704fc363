import { chainKey, type Proposal } from '../next/proposal.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { sendKind, sideOfLegs, stopWay } from './candidates.ts';
import { type DraftRep, mayStand, type Standing, type StatedRep, stateRep } from './draft.ts';
import { draftOf, endTiers, optionsFor, type Stock } from './fill.ts';
import type { Slot } from './slots.ts';
import { worthOf } from './worth.ts';

/** So many are offered in one place. */
const OFFERED = 8;

/** What else could be asked in a place, worth most first: of the slot's own kind, then anything else that may stand there. */
export function alternatives(
  stock: Stock,
  slot: Slot,
  at: Standing,
  earlier: readonly StatedRep[],
  notThese: readonly LaidLeg[] | null,
): DraftRep[] {
  const input = stock.record.inputAt(at.moment);
  const isOther = ({ legs }: Proposal) => notThese === null || chainKey(legs) !== chainKey(notThese);
  const own =
    slot.role === 'work'
      ? optionsFor(stock, slot, at, earlier)
      : endTiers(stock, at, earlier).flatMap((tier) => tier().filter(({ legs }) => stock.mayAsk(legs)));
  const offered = new Map<string, { readonly draft: DraftRep; readonly worth: number }>();
  const offer = (options: readonly Proposal[], slotOf: (one: Proposal) => Slot) => {
    for (const one of options) {
      const key = chainKey(one.legs);
      if (offered.has(key) || !isOther(one)) continue;
      const rep = stateRep(stock.record, at, draftOf(slotOf(one), one));
      if (!mayStand(rep)) continue;
      const worth = worthOf(input, rep, earlier, stock.hurry);
      offered.set(key, { draft: draftOf(rep.slot, one), worth });
    }
  };
  const byWorth = () => [...offered.values()].sort((a, b) => b.worth - a.worth).map(({ draft }) => draft);
  offer(own, () => slot);
  const first = byWorth();
  if (slot.role === 'work' && first.length < OFFERED) {
    for (const [line, pool] of stock.lines.entries()) {
      offer([...pool.candidates, ...pool.straight], ({ legs }) => ({
        ...slot,
        line,
        send: sendKind(legs),
        side: sideOfLegs(legs),
        way: stopWay(legs),
      }));
    }
  }
  return [...first, ...byWorth().filter((draft) => !first.includes(draft))].slice(0, OFFERED);
}
