import { type AbilityPriors, createAbilityFilter, EASY_CONTEXT, shippedPriors } from '../ability/index.ts';
import { simulateDog, simulateKennel } from '../ability/simulated-kennel.ts';
import { seededRandom } from '../numeric/index.ts';
import type { SeasonQuestion } from './season-forecast.ts';
import type { GoalAsk } from './season-goal.ts';
import { evenly } from './session-days.ts';

/** Two asks of one skill and one of another, within the simulated dogs' reach. */
export const ASKS: readonly GoalAsk[] = [
  { skill: 'stop', ask: { distanceM: 20 }, wanted: 0.7, context: EASY_CONTEXT },
  { skill: 'stop', ask: { distanceM: 10, wayFraction: 0.4 }, wanted: 0.7, context: EASY_CONTEXT },
  { skill: 'recall', ask: { distanceM: 20 }, wanted: 0.7, context: EASY_CONTEXT },
];

/** A dog of 20 sessions of 10 legs, drawn from the priors and filtered; asked at its last leg, three even sessions a week. */
export function madeSeason(seed: number, priors: AbilityPriors = shippedPriors) {
  const random = seededRandom(seed);
  const { legs } = simulateDog('a', simulateKennel(random, priors), random, priors, 20, 10);
  const filter = createAbilityFilter(priors);
  for (const leg of legs) filter.observe(leg);
  const question: SeasonQuestion = {
    snapshot: filter.snapshot(),
    priors,
    recalibration: null,
    dog: 'a',
    asks: ASKS,
    atMs: legs.at(-1)!.atMs,
    work: { sessionDays: evenly(3), share: () => 1 },
    weeks: 12,
    futures: 2000,
  };
  return { filter, question };
}
