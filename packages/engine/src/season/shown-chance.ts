import { correctForecast, type Recalibration } from '../ability/index.ts';
import { logistic, logit } from '../numeric/index.ts';
import type { GoalChance } from './season-forecast.ts';

/** Chance of good before any correction at which the corrected one reaches `wanted`. */
export function plainWanted(wanted: number, recalibration: Recalibration | null): number {
  if (recalibration === null) return wanted;
  return logistic((logit(wanted) - recalibration.goodIntercept) / recalibration.slope);
}

/** A goal's chance as it is shown: corrected as chances of good are (`correctForecast`). */
export function shownChance(plain: GoalChance, recalibration: Recalibration | null): GoalChance {
  if (recalibration === null) return plain;
  const { chance, interval90 } = plain;
  // Of good alone: what is not missed is said to be the same, and corrected the same, so that it cuts nothing off.
  const stated = {
    chance: { missed: 1 - chance, fair: 0, good: chance },
    interval90: { good: interval90, notMissed: interval90 },
    logOdds: { mean: 0, sd: 0 },
  };
  const asGood = { ...recalibration, notMissedIntercept: recalibration.goodIntercept };
  const shown = correctForecast(stated, asGood);
  return { chance: shown.chance.good, interval90: shown.interval90.good };
}
