import type { PlannedRep } from '@sedgeline/engine/session';
import type { AskedRep, WorkView } from '@sedgeline/projections';

/** A planned rep as one asked: what is recorded of it, without its chances. */
export function askedOf(rep: PlannedRep): AskedRep {
  const { clean, purpose, planRep } = rep;
  const legs = rep.legs.map(({ skill, ask }) => ({ skill, ask }));
  return { legs, clean, purpose, ...(planRep === undefined ? {} : { planRep }) };
}

/**
 * The rep that the next grade belongs to: the chain in hand (with what the handler changed of the legs to come), else
 * what he chose, else what is suggested; `null` where a break or the end is suggested.
 */
export function repInHand(view: WorkView, chosen: AskedRep | null): AskedRep | null {
  if (view.inHand === null) return chosen ?? (view.asked === null ? null : askedOf(view.asked));
  const { chain, graded, clean, purpose } = view.inHand;
  const legs = chain.map((leg, i) => (i < graded.length ? leg : (chosen?.legs[i] ?? leg)));
  return { legs, clean, purpose };
}
