import type { JoinProposal } from '@sedgeline/projections';
import { useMemo } from 'react';
import { useWords } from '../../parts/words-context.tsx';
import type { JoinPlace } from './join-draft.ts';

/** Names a leg as it is spoken of: "rep 4’s stop", with the dog's name where several are worked in turn. */
export function usePlaceNames({ reps }: JoinProposal): (place: JoinPlace) => string {
  const { listenScreen } = useWords();
  return useMemo(() => {
    const byId = new Map(reps.map((rep) => [rep.rep, rep]));
    const isSeveral = new Set(reps.map(({ session }) => session)).size > 1;
    return ({ rep, leg }) => {
      const found = byId.get(rep);
      const skill = leg === null ? null : (found?.legs[leg]?.skill ?? null);
      return listenScreen.repLeg(found?.number ?? 0, skill, isSeveral ? (found?.dogName ?? null) : null);
    };
  }, [reps, listenScreen]);
}
