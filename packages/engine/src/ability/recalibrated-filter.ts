import { logistic, logit } from '../numeric/index.ts';
import type { AbilityFilter } from './forecaster.ts';
import type { Interval90, LegForecast } from './leg.ts';
import {
  correctChances,
  correctGood,
  correctNotMissed,
  type Recalibration,
  statedLogit,
} from './recalibrate.ts';

/** A forecast with its chances and their intervals corrected; the log-odds stay the model's own. */
export function correctForecast(forecast: LegForecast, recalibration: Recalibration): LegForecast {
  const { good, notMissed } = forecast.interval90;
  return {
    chance: correctChances(forecast.chance, recalibration),
    interval90: {
      good: correctInterval(good, recalibration, (chance) => correctGood(chance, recalibration)),
      notMissed: correctInterval(notMissed, recalibration, (chance) =>
        correctNotMissed(chance, recalibration),
      ),
    },
    logOdds: forecast.logOdds,
  };
}

/**
 * The middle moves with the curve; the width never gets less by it. A slope under 1 says that the stated chances lay too far
 * apart, not that each was known better than was said.
 */
function correctInterval(
  [low, high]: Interval90,
  { slope }: Recalibration,
  correct: (chance: number) => number,
): Interval90 {
  const middle = logit(correct(logistic((statedLogit(low) + statedLogit(high)) / 2)));
  const half = (Math.max(1, slope) * (statedLogit(high) - statedLogit(low))) / 2;
  return [logistic(middle - half), logistic(middle + half)];
}

/**
 * A filter whose stated chances are corrected by one curve (`recalibrate`): of legs, and of whole chains, so that a chain of one leg
 * and the leg itself agree. What it learns, its log-odds, stretches and parts are those of the filter within.
 */
export function recalibratedFilter(filter: AbilityFilter, recalibration: Recalibration): AbilityFilter {
  return {
    forecast: (question) => correctForecast(filter.forecast(question), recalibration),
    observe: (leg) => correctForecast(filter.observe(leg), recalibration),
    chain: (questions) => {
      const { noneMissed, allGood, interval90 } = filter.chain(questions);
      const none = correctNotMissed(noneMissed, recalibration);
      return {
        noneMissed: none,
        allGood: Math.min(none, correctGood(allGood, recalibration)),
        interval90: correctInterval(interval90, recalibration, (chance) =>
          correctNotMissed(chance, recalibration),
        ),
      };
    },
    tell: (dog, skill, atMs, level) => filter.tell(dog, skill, atMs, level),
    toldLeft: (dog, skill) => filter.toldLeft(dog, skill),
    because: (question) => filter.because(question),
    ability: (dog, skill, atMs) => filter.ability(dog, skill, atMs),
    form: (dog, session) => filter.form(dog, session),
    gap: (dog) => filter.gap(dog),
    stretch: (now, then) => filter.stretch(now, then),
    snapshot: () => filter.snapshot(),
  };
}
