import { castSide, completedChain, type LaidLeg } from '@sedgeline/engine/session';
import { sameContent } from '@sedgeline/journal';
import type { RepRecord } from './training-record.ts';

/**
 * The whole chain of a rep as it was asked: what was done, then what was planned and not reached. Where no plan was
 * recorded and the last leg was missed, the rest of the usual chain.
 */
export function askedChain(rep: RepRecord): readonly LaidLeg[] {
  const done = rep.legs.map(({ skill, ask }) => ({ skill, ask }));
  if (rep.chain !== null) return [...done, ...rep.chain.slice(done.length)];
  if (rep.legs.at(-1)?.grade !== 'missed') return done;
  const focus =
    done.find((leg) => castSide(leg.skill) !== null) ?? done.find((leg) => leg.skill === 'stop') ?? done[0];
  return focus === undefined ? done : completedChain(done, focus.skill);
}

/** Whether two chains ask the same legs alike, whatever else is said of them. */
export function isAskedAlike(a: readonly LaidLeg[], b: readonly LaidLeg[]): boolean {
  const asks = (legs: readonly LaidLeg[]) => legs.map(({ skill, ask }) => ({ skill, ask }));
  return sameContent(asks(a), asks(b));
}
