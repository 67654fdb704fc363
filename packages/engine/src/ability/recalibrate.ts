import { logistic, logit } from '../numeric/logistic.ts';
import { logisticMap } from '../numeric/logistic-map.ts';
import type { StatedOutcome } from './calibration.ts';
import { Z90 } from './chain-chance.ts';
import type { GradeChances } from './leg.ts';

/** `logit(shown) = intercept + slope x logit(stated)`. */
export interface Recalibration {
  readonly slope: number;
  readonly intercept: number;
}

export type RecalibrationAnswer =
  | ({ readonly kind: 'earned'; readonly interval90: readonly [number, number] } & Recalibration)
  | { readonly kind: 'notEarned'; readonly why: 'tooFewLegs'; readonly have: number; readonly need: number }
  | {
      readonly kind: 'notEarned';
      readonly why: 'slopeNearOne';
      readonly slope: number;
      readonly interval90: readonly [number, number];
    };

const FEWEST_LEGS = 150;
/** Priors of slope about 1 and intercept about 0 (our judgement, 2026). */
const SLOPE_SD = 0.5;
const INTERCEPT_SD = 0.5;
/** Stated chances are held within these before their logit is taken. */
const NEAREST_END = 1e-6;

function statedLogit(chance: number): number {
  return logit(Math.min(1 - NEAREST_END, Math.max(NEAREST_END, chance)));
}

/**
 * Whether stated chances of good deserve a correction: logistic regression of the outcome on the stated
 * logit, MAP with slope ~ N(1, 0.5^2) and intercept ~ N(0, 0.5^2) (Cox1958 for the two figures). Earned only
 * with 150 legs or more and a 90 % interval of the slope that excludes 1.
 */
export function recalibrate(outcomes: readonly StatedOutcome[]): RecalibrationAnswer {
  if (outcomes.length < FEWEST_LEGS) {
    return { kind: 'notEarned', why: 'tooFewLegs', have: outcomes.length, need: FEWEST_LEGS };
  }
  const rows = outcomes.map(({ stated, came }) => ({ x: [1, statedLogit(stated)], y: came ? 1 : 0, n: 1 }));
  const fit = logisticMap(rows, [0, 1], [INTERCEPT_SD, SLOPE_SD]);
  if (fit === null) throw new RangeError('outcomes: expected chances within 0..1');
  const intercept = fit.mode[0]!;
  const slope = fit.mode[1]!;
  const half = Z90 * fit.sd[1]!;
  const interval90 = [slope - half, slope + half] as const;
  if (interval90[0] <= 1 && interval90[1] >= 1)
    return { kind: 'notEarned', why: 'slopeNearOne', slope, interval90 };
  return { kind: 'earned', slope, intercept, interval90 };
}

/** Corrects one chance. */
export function correctChance(chance: number, { slope, intercept }: Recalibration): number {
  return logistic(intercept + slope * statedLogit(chance));
}

/** Corrects the chances of good and of not missed by the same curve; they still add up to 1. */
export function correctChances(chance: GradeChances, recalibration: Recalibration): GradeChances {
  const good = correctChance(chance.good, recalibration);
  // A negative slope would turn the two cuts round; then there is no fair between them.
  const notMissed = Math.max(good, correctChance(1 - chance.missed, recalibration));
  return { missed: 1 - notMissed, fair: notMissed - good, good };
}
