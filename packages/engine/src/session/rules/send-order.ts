import type { Skill } from '../../ability/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import type { Plan } from '../plan/plan.ts';

const SENDS: ReadonlySet<Skill> = new Set(['line', 'mark', 'hunt']);

/** Whether a chain is a send that the dog is let finish (`clean`), one that is stopped, or no send at all. */
export function sendKind(legs: readonly LaidLeg[]): 'clean' | 'stopped' | null {
  if (legs.some(({ skill }) => skill === 'stop')) return 'stopped';
  return legs.some(({ skill }) => SENDS.has(skill)) ? 'clean' : null;
}

/** One send of a plan. */
export interface Send {
  readonly n: number;
  readonly isClean: boolean;
}

/** The sends of a plan in order, without rep 1 and the last, which keep to rules of their own. */
export function countedSends(plan: Plan): Send[] {
  return plan.reps.slice(1, -1).flatMap(({ n, legs }) => {
    const kind = sendKind(legs);
    return kind === null ? [] : [{ n, isClean: kind === 'clean' }];
  });
}
