import type { AbilityFilter } from './forecaster.ts';
import type { Interval90, LegForecast } from './leg.ts';
import { correctChance, correctChances, type Recalibration } from './recalibrate.ts';

/** A forecast with its chances and their intervals corrected; the log-odds stay the model's own. */
export function correctForecast(forecast: LegForecast, recalibration: Recalibration): LegForecast {
  const { good, notMissed } = forecast.interval90;
  return {
    chance: correctChances(forecast.chance, recalibration),
    interval90: {
      good: correctInterval(good, recalibration),
      notMissed: correctInterval(notMissed, recalibration),
    },
    logOdds: forecast.logOdds,
  };
}

/** A curve that rises keeps quantiles quantiles; one that falls (a record upside down) turns them round. */
function correctInterval([low, high]: Interval90, recalibration: Recalibration): Interval90 {
  const ends = [correctChance(low, recalibration), correctChance(high, recalibration)] as const;
  return ends[0] <= ends[1] ? ends : [ends[1], ends[0]];
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
      const none = correctChance(noneMissed, recalibration);
      return {
        noneMissed: none,
        allGood: Math.min(none, correctChance(allGood, recalibration)),
        interval90: correctInterval(interval90, recalibration),
      };
    },
    because: (question) => filter.because(question),
    ability: (dog, skill, atMs) => filter.ability(dog, skill, atMs),
    form: (dog, session) => filter.form(dog, session),
    gap: (dog) => filter.gap(dog),
    stretch: (now, then) => filter.stretch(now, then),
    snapshot: () => filter.snapshot(),
  };
}
