import type { Skill } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { DEMANDS, demandVector } from './demands.ts';
import type { Moments } from './ordinal-update.ts';
import type { AbilityPriors } from './priors.ts';

/** How strange a ground was, in the handler's words, least strange first. */
export const TOLD_GROUNDS = ['home', 'known', 'new'] as const;
export type ToldGround = (typeof TOLD_GROUNDS)[number];

/** What a handler tells of a dog at a skill. */
export interface ToldLevel {
  /** The farthest that it lately went well, 0..400; 0: never yet; `null`: not told. */
  readonly farthestM: number | null;
  /** The strangest ground on which it went well; `null`: not told, taken as home. */
  readonly ground: ToldGround | null;
  /** Age at the telling; `null` when not known. */
  readonly ageMonths: number | null;
}

/** How it is read. The first two are those that `studies/told.ts` chose among a few, the others our judgement, 2026. */
export const TOLD = {
  /** Log-odds of not missing the stated distance there: 69 in 100, for it is the farthest that went well and not the usual. */
  stoodAt: 0.8,
  /** The error of what is told, a standard deviation in logits of ability. */
  errorSd: 2,
  /** Never yet: so many logits less than a farthest of 5 m; nearer than 5 m, a share of them. */
  neverLogits: 2,
  /** Earlier sessions there that stand for each word; `null` makes no ground new. */
  sessionsThere: { home: null, known: 3, new: 0 },
} as const satisfies {
  readonly sessionsThere: Record<ToldGround, number | null>;
  readonly [figure: string]: unknown;
};

const EASY_END_M = 5;
const NEWNESS = DEMANDS.indexOf('newness');

/**
 * The whole ability (logits, at the easy reference ask) that what was told needs: `stoodAt + sum_j w_j x_j` over the demands of that distance,
 * that ground and that age, nothing else being hard, with the costs `w` of before any record, so that no learnt cost turns
 * "farther" into "less able". Where no distance was told, the ordinary dog on ground it knows: `abilityMean + w_newness (x - x_known)`.
 * Rises with the distance and with the strangeness of the ground.
 * @throws RangeError for a distance outside 0..400 or a negative age
 */
export function toldAbility(skill: Skill, told: ToldLevel, priors: AbilityPriors): number {
  const { farthestM, ageMonths } = told;
  const earlierSessionsOnGround = TOLD.sessionsThere[told.ground ?? 'home'];
  const context = { ...EASY_CONTEXT, earlierSessionsOnGround, ageMonths };
  const x = demandVector(skill, farthestM === null ? {} : { distanceM: farthestM }, context);
  if (farthestM === null) {
    const known = 1 / (1 + TOLD.sessionsThere.known);
    return priors.abilityMean + priors.weightMean.newness * (x[NEWNESS]! - known);
  }
  const short = Math.max(0, 1 - farthestM / EASY_END_M);
  const cost = DEMANDS.reduce((sum, name, j) => sum + priors.weightMean[name] * x[j]!, 0);
  return TOLD.stoodAt - TOLD.neverLogits * short + cost;
}

/**
 * Logits by which a told ability `z` moves one that is known as N(m, V): `K (z - m)`, `K = V/(V + errorSd^2)`, the gain of an observation with
 * that error (Kalman). The variance is left as it was: a word is believed a little and makes no chance surer. The more is known, the
 * less a word moves.
 */
export function toldShift(z: number, { mean, variance }: Moments): number {
  return (variance / (variance + TOLD.errorSd ** 2)) * (z - mean);
}

/**
 * What was told of one dog at one skill, as the filter holds it: `logit x left` is added to the mean of eta where a chance is stated, and
 * nowhere else. Legs teach the blocks as if nothing had been told, so that a word leaves no trace where it is taken back, touches no
 * other dog or skill, and that farther is never the less able (linear in the word, the share being the same whatever was told).
 */
export interface ToldStart {
  /** Logits by which it moved the ability. */
  readonly logit: number;
  /** The share of it that legs have not outweighed, 1 before any. */
  left: number;
}

/**
 * The share of a start that one leg leaves, as of a shifted prior to first order: a posterior's mean follows its prior's at the rate `v1/v` (a
 * Gaussian prior's own identity), and the ability bears `Vab/v` of what is learnt: `1 - Vab/v (1 - v1/v)`. Variances of the ability, of eta
 * before and of eta after the leg; in [0, 1].
 */
export function leftByLeg(abilityVariance: number, variance: number, posteriorVariance: number): number {
  const share = Math.min(1, Math.max(0, abilityVariance / variance));
  return 1 - share * (1 - Math.min(1, posteriorVariance / variance));
}
