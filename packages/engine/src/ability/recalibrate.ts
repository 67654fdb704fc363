import { laplaceByDifferences, logistic, logit, maximise } from '../numeric/index.ts';
import type { Grade } from './ask.ts';
import { Z90 } from './chain-chance.ts';
import type { GradeChances } from './leg.ts';

/**
 * A correction of stated chances at their two cuts: `logit(shown) = intercept + slope x logit(stated)`, one slope, an intercept
 * for "not missed" and one for "good".
 */
export interface Recalibration {
  readonly slope: number;
  readonly notMissedIntercept: number;
  readonly goodIntercept: number;
}

/** A leg with the chances stated before it. */
export interface StatedGrade {
  readonly chance: GradeChances;
  readonly grade: Grade;
}

export type RecalibrationAnswer =
  | ({ readonly kind: 'earned'; readonly interval90: readonly [number, number] } & Recalibration)
  | { readonly kind: 'notEarned'; readonly why: 'tooFewLegs'; readonly have: number; readonly need: number }
  | {
      readonly kind: 'notEarned';
      /** `noGain`: learnt from the earlier legs it did not help the later ones. `tooFlat`: it would level all chances. */
      readonly why: 'slopeNearOne' | 'noGain' | 'tooFlat';
      readonly slope: number;
      readonly interval90: readonly [number, number];
    };

const FEWEST_LEGS = 150;
/** Priors of slope about 1 and intercepts about 0, one sd (our judgement, 2026). */
const STRAY_SD = 0.5;
/** Stated chances are held within these before their logit is taken. */
const NEAREST_END = 1e-6;
const LEAST_CHANCE = 1e-12;
/** Under this slope a record contradicts the chances (all goods first, say): no correction makes sense of it (our judgement, 2026). */
const FLATTEST = 0.3;
/** Share of the legs that the trial correction is learnt from; it must help the others. */
const TRIAL_SHARE = 2 / 3;
const SEARCH = { steps: 400, tolerance: 1e-6, difference: 1e-3 } as const;

/** Logit of a stated chance, held a millionth from the ends. */
export function statedLogit(chance: number): number {
  return logit(Math.min(1 - NEAREST_END, Math.max(NEAREST_END, chance)));
}

/** Corrects the chances at both cuts; they still add up to 1, and good is never likelier than not missed. */
export function correctChances(chance: GradeChances, recalibration: Recalibration): GradeChances {
  const notMissed = correctNotMissed(1 - chance.missed, recalibration);
  const good = Math.min(notMissed, correctGood(chance.good, recalibration));
  return { missed: 1 - notMissed, fair: notMissed - good, good };
}

export function correctNotMissed(chance: number, { slope, notMissedIntercept }: Recalibration): number {
  return logistic(notMissedIntercept + slope * statedLogit(chance));
}

export function correctGood(chance: number, { slope, goodIntercept }: Recalibration): number {
  return logistic(goodIntercept + slope * statedLogit(chance));
}

const ofPoint = (x: ArrayLike<number>): Recalibration => ({
  slope: x[0]!,
  notMissedIntercept: x[1]!,
  goodIntercept: x[2]!,
});

function logLikelihood(legs: readonly StatedGrade[], recalibration: Recalibration): number {
  return legs.reduce(
    (sum, { chance, grade }) =>
      sum + Math.log(Math.max(LEAST_CHANCE, correctChances(chance, recalibration)[grade])),
    0,
  );
}

const AS_STATED: Recalibration = { slope: 1, notMissedIntercept: 0, goodIntercept: 0 };

function fitted(legs: readonly StatedGrade[]) {
  const logJoint = (x: ArrayLike<number>): number => {
    const squares = (x[0]! - 1) ** 2 + x[1]! ** 2 + x[2]! ** 2;
    return logLikelihood(legs, ofPoint(x)) - squares / (2 * STRAY_SD ** 2);
  };
  const { x } = maximise(logJoint, [1, 0, 0], SEARCH);
  return { recalibration: ofPoint(x), sd: laplaceByDifferences(logJoint, x)?.sd[0] ?? STRAY_SD };
}

/**
 * Whether stated chances deserve a correction. A cumulative-logit regression of the grade on the stated logits of both cuts
 * (Cox1958 for two grades; McCullagh1980), MAP with slope ~ N(1, 0.5^2) and intercepts ~ N(0, 0.5^2). Earned with 150
 * legs or more, if the slope's 90 % interval (Laplace) excludes 1 and the same correction, learnt from the first two thirds,
 * would have lowered the log loss of the last; never with a slope under 0.3. Legs in time order.
 */
export function recalibrate(legs: readonly StatedGrade[]): RecalibrationAnswer {
  if (legs.length < FEWEST_LEGS) {
    return { kind: 'notEarned', why: 'tooFewLegs', have: legs.length, need: FEWEST_LEGS };
  }
  const { recalibration, sd } = fitted(legs);
  const { slope } = recalibration;
  const interval90 = [slope - Z90 * sd, slope + Z90 * sd] as const;
  if (interval90[0] <= 1 && interval90[1] >= 1)
    return { kind: 'notEarned', why: 'slopeNearOne', slope, interval90 };
  if (slope < FLATTEST) return { kind: 'notEarned', why: 'tooFlat', slope, interval90 };
  const cut = Math.floor(TRIAL_SHARE * legs.length);
  const later = legs.slice(cut);
  const trial = fitted(legs.slice(0, cut)).recalibration;
  if (logLikelihood(later, trial) <= logLikelihood(later, AS_STATED))
    return { kind: 'notEarned', why: 'noGain', slope, interval90 };
  return { kind: 'earned', ...recalibration, interval90 };
}
