import type { Grade } from '@sedgeline/engine/ability';
import { sameContent } from '@sedgeline/journal';
import {
  type AskedRep,
  type Cause,
  type LegRecord,
  legBody,
  type TapFact,
  type WorkView,
} from '@sedgeline/projections';
import type { After } from './kennel-calls.ts';

/** What grading records: the facts, the rep they belong to, and what may be said of it afterwards. */
export interface Recording {
  readonly facts: readonly TapFact[];
  readonly rep: string;
  readonly repNumber: number;
  readonly legs: readonly { readonly skill: LegRecord['skill']; readonly grade: Grade }[];
  readonly after: After | null;
}

/**
 * Grades the next legs of the rep in hand, one for each grade given. The first makes the rep, further ones amend it:
 * every tap is on disk. A leg that was changed in mid-chain keeps the ask that was planned. A cause is left out, which means the dog, until the handler says otherwise.
 */
export function gradeFacts(
  view: WorkView,
  asked: AskedRep,
  grades: readonly Grade[],
  newRep: () => string,
): Recording {
  const before = view.inHand?.graded ?? [];
  const added = grades.map((grade, i) => {
    const leg = asked.legs[before.length + i];
    if (leg === undefined)
      throw new RangeError(`grades: expected at most ${asked.legs.length - before.length}`);
    const planned = view.inHand?.chain[before.length + i]?.ask;
    const isOtherwise = planned !== undefined && !sameContent(planned, leg.ask);
    return { skill: leg.skill, ask: leg.ask, grade, ...(isOtherwise ? { planned } : {}) };
  });
  const legs = [...before.map(legBody), ...added];
  const rep = view.inHand?.rep ?? newRep();
  const recorded = { rep, session: view.session, legs, clean: asked.clean, chain: asked.legs };
  const fact: TapFact =
    view.inHand === null
      ? {
          kind: 'rep-recorded',
          body: {
            ...recorded,
            ...(asked.purpose === null ? {} : { purpose: asked.purpose }),
            ...(asked.planRep === undefined ? {} : { planRep: asked.planRep }),
          },
        }
      : { kind: 'rep-amended', body: { rep, legs } };
  const isOver = legs.length === asked.legs.length;
  return {
    facts: [fact],
    rep,
    repNumber: view.repNumber,
    legs: added.map(({ skill, grade }) => ({ skill, grade })),
    after: afterGrades(rep, view.repNumber, legs, isOver && asked.clean),
  };
}

/** The cause of the last leg first, where it was not good; of a send run straight through, how it was run. */
function afterGrades(
  rep: string,
  repNumber: number,
  legs: readonly { readonly skill: LegRecord['skill']; readonly grade: Grade }[],
  isRunThrough: boolean,
): After | null {
  const last = legs.at(-1);
  if (last === undefined) return null;
  if (last.grade !== 'good') {
    const { skill, grade } = last;
    return { about: 'cause', rep, repNumber, leg: legs.length - 1, skill, grade, cause: null, isRunThrough };
  }
  return isRunThrough ? { about: 'expectation', rep, repNumber, expectation: null } : null;
}

/** Another grade or cause for one leg of a rep that is on record. */
export function amendLegFacts(
  rep: string,
  legs: readonly LegRecord[],
  index: number,
  grade: Grade,
  cause: Cause | null,
): readonly TapFact[] {
  const amended = legs.map((leg, i) => legBody(i === index ? { ...leg, grade, cause } : leg));
  return [{ kind: 'rep-amended', body: { rep, legs: amended } }];
}
