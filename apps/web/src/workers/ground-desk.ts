import type { GroundRecord, KennelOfFacts, LayoutRecord } from '@sedgeline/projections';

/** The grounds of a record and what is drawn on them, the latest first. */
export interface GroundsView {
  readonly grounds: readonly GroundRecord[];
  readonly layouts: readonly LayoutRecord[];
}

/** What the screens of the grounds ask of the worker. What they draw goes down by `append`. */
export type GroundCalls = { readonly grounds: () => Promise<GroundsView> };

/** The ground desk: looks up what is drawn in the open record. Nothing here writes. */
export function groundCalls(inUse: () => KennelOfFacts): GroundCalls {
  return {
    grounds: async () => {
      const { grounds, layouts } = inUse().record;
      const latest = [...layouts.values()].toSorted((a, b) => b.drawnAtMs - a.drawnAtMs);
      return { grounds: [...grounds.values()], layouts: latest };
    },
  };
}
