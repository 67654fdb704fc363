import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import { isAsBefore, isGuessable } from './guessed-order.ts';
import type { PlanFacts } from './plan-facts.ts';
import { countedSends, type Send, sendKind } from './send-order.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'clean-runs-unpredictable';
/** From so many sends on, some have to be run clean where others are stopped (our judgement, 2026). */
const ENOUGH_SENDS = 8;
/** So many standard deviations below the wanted share are no longer chance (our judgement, 2026). */
const NO_CHANCE = 2.5;

/**
 * A send without a stop, and no other rep, is marked `clean`; and the sends between rep 1 and the last, where some are
 * stopped, do not give away which is next: with eight or more there is a clean one, and no fewer than chance allows by the
 * share that the dog's record wants; the order does not go round, nor change only once, nor is it that of one of the last
 * sessions. One plan can show no more: that the chance of a clean run is the same at every send is a law of how
 * orders are drawn, and is shown of the drawing. It can always be kept.
 */
export function cleanRuns(plan: Plan, facts: PlanFacts): RuleVerdict {
  const wrong = plan.reps
    .filter(({ legs, clean }) => clean !== (sendKind(legs) === 'clean'))
    .map(({ n }) => n);
  if (wrong.length > 0) {
    const mend = { code: 'mark-by-its-legs', reps: wrong } as const;
    return broken(RULE, { code: 'clean-marked-wrongly', reps: wrong }, mend, true);
  }
  const sends = countedSends(plan);
  if (sends.every(({ isClean }) => isClean)) return kept(RULE);
  return tooFew(sends, facts) ?? givenAway(sends, facts) ?? kept(RULE);
}

function tooFew(sends: readonly Send[], { cleanShareWanted = 0 }: PlanFacts): RuleVerdict | null {
  if (sends.length < ENOUGH_SENDS) return null;
  const is = sends.filter(({ isClean }) => isClean).length;
  const mean = sends.length * cleanShareWanted;
  const limit = Math.max(1, Math.ceil(mean - NO_CHANCE * Math.sqrt(mean * (1 - cleanShareWanted))));
  if (is >= limit) return null;
  const code = is === 0 ? 'no-clean-run' : 'too-few-clean-runs';
  const stopped = sends.filter(({ isClean }) => !isClean).map(({ n }) => n);
  const mend = { code: 'run-clean', reps: stopped, to: limit } as const;
  return broken(RULE, { code, reps: [], is, limit, count: sends.length }, mend, true);
}

function givenAway(sends: readonly Send[], { lateOrders = [] }: PlanFacts): RuleVerdict | null {
  const order = sends.map(({ isClean }) => isClean);
  const reps = sends.map(({ n }) => n);
  const mend = { code: 'draw-the-order-anew', reps } as const;
  if (isGuessable(order)) return broken(RULE, { code: 'order-can-be-guessed', reps }, mend, true);
  if (lateOrders.some((before) => isAsBefore(order, before))) {
    return broken(RULE, { code: 'order-as-before', reps }, mend, true);
  }
  return null;
}
