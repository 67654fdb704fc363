import { finiteBetween } from '../quantity/index.ts';
import { type GeoPoint, localPlane } from './local-plane.ts';

/** One reading of a receiver that stood still. */
export interface Fix extends GeoPoint {
  readonly atMs: number;
  /** Radius the receiver states for this fix. */
  readonly accuracyM: number;
}

/** A place measured by averaging, and how well it is known. */
export interface SurveyedPlace extends GeoPoint {
  /** The true place lies within this radius with `probability`, as far as the model of the errors holds. */
  readonly radiusM: number;
  readonly probability: number;
  readonly fixes: number;
  /** To how many independent fixes they come: fixes a second apart share most of their error. */
  readonly worthFixes: number;
}

export interface SurveyOptions {
  /** Share of fixes that the receiver's accuracy radius is said to hold: 0.68 on one make of phone, 0.95 by the web's standard. */
  readonly accuracyHolds?: number | undefined;
  readonly probability?: number | undefined;
  /** Time over which the error of two fixes falls to 1/e of being shared (our judgement, 2026: minutes; no figure published). */
  readonly sharedForS?: number | undefined;
}

/** A receiver that claims better than this is not believed: broadcast signals carry no more (our judgement, 2026). */
const LEAST_ACCURACY_M = 1;
const FARTHEST_M = 500;
const MOST_FIXES = 3_600;

/** Standard deviation on each axis, of a radius that holds `share` of a round normal scatter (Rayleigh). */
const sigmaOf = (radiusM: number, share: number): number => radiusM / Math.sqrt(-2 * Math.log(1 - share));
const radiusOf = (sigmaM: number, share: number): number => sigmaM * Math.sqrt(-2 * Math.log(1 - share));

interface Weighed {
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
  readonly sigmaM: Float64Array;
  /** Share of each fix in the mean; they add up to 1. */
  readonly share: Float64Array;
}

/**
 * Averages fixes of a standing receiver: the mean weighted by `1 / sigma^2`, its variance `w' C w` with
 * `C_ij = sigma_i sigma_j exp(-|t_i - t_j| / tau)`, since errors of successive fixes are mostly shared and do not average out.
 * Where the fixes scatter more than that model expects, the spread is widened by the ratio (Birge1932). Takes one second
 * or one hour; `null` without any fix. The radius is honest only as far as the stated accuracies are: a wall that reflects
 * the signal shifts all fixes alike, and no average shows it.
 * @throws RangeError for a fix that is none, one 500 m from the first, or more than 3,600 of them
 */
export function surveyedPlace(fixes: readonly Fix[], options: SurveyOptions = {}): SurveyedPlace | null {
  const accuracyHolds = finiteBetween('accuracyHolds', options.accuracyHolds ?? 0.68, 0.01, 0.999);
  const probability = finiteBetween('probability', options.probability ?? 0.9, 0.01, 0.999);
  const sharedForS = finiteBetween('sharedForS', options.sharedForS ?? 300, 0.001, 1e6);
  const first = fixes[0];
  if (first === undefined) return null;
  finiteBetween('fixes', fixes.length, 1, MOST_FIXES);
  const plane = localPlane(first);
  const weighed = weigh(
    fixes.map((fix) => ({ ...plane.toPlane(fix), accuracyM: fix.accuracyM })),
    accuracyHolds,
  );
  const mean = { eastM: meanOf(weighed, weighed.eastM), northM: meanOf(weighed, weighed.northM) };
  const spread = spreadOf(
    weighed,
    fixes.map(({ atMs }) => finiteBetween('atMs', atMs, -8.64e15, 8.64e15) / 1000),
    sharedForS,
    mean,
  );
  const alone = 1 / weighed.sigmaM.reduce((sum, sigma) => sum + 1 / (sigma * sigma), 0);
  return {
    ...plane.toGeo(mean),
    radiusM: radiusOf(Math.sqrt(spread.variance) * spread.widening, probability),
    probability,
    fixes: fixes.length,
    worthFixes: Math.max(1, (fixes.length * alone) / spread.variance),
  };
}

function weigh(
  fixes: readonly { readonly eastM: number; readonly northM: number; readonly accuracyM: number }[],
  accuracyHolds: number,
): Weighed {
  const sigmaM = Float64Array.from(fixes, ({ accuracyM }) =>
    sigmaOf(
      Math.max(LEAST_ACCURACY_M, finiteBetween('accuracyM', accuracyM, Number.MIN_VALUE, 1e4)),
      accuracyHolds,
    ),
  );
  const total = sigmaM.reduce((sum, sigma) => sum + 1 / (sigma * sigma), 0);
  const bounded = (name: 'eastM' | 'northM') =>
    Float64Array.from(fixes, (fix) => finiteBetween(name, fix[name], -FARTHEST_M, FARTHEST_M));
  return {
    eastM: bounded('eastM'),
    northM: bounded('northM'),
    sigmaM,
    share: sigmaM.map((sigma) => 1 / (sigma * sigma * total)),
  };
}

const meanOf = ({ share }: Weighed, values: Float64Array): number =>
  values.reduce((sum, value, i) => sum + value * share[i]!, 0);

/** Variance of the mean on each axis, and how much wider the fixes scatter than the model expects, 1 at least. */
function spreadOf(
  { share, sigmaM, eastM, northM }: Weighed,
  atS: readonly number[],
  sharedForS: number,
  mean: { readonly eastM: number; readonly northM: number },
): { readonly variance: number; readonly widening: number } {
  let variance = 0;
  let expected = 0;
  let seen = 0;
  const withMean = share.map((_, i) =>
    share.reduce(
      (sum, of, j) =>
        sum + of * sigmaM[i]! * sigmaM[j]! * Math.exp(-Math.abs(atS[i]! - atS[j]!) / sharedForS),
      0,
    ),
  );
  for (let i = 0; i < share.length; i++) variance += share[i]! * withMean[i]!;
  for (let i = 0; i < share.length; i++) {
    const own = sigmaM[i]! ** 2;
    expected += (2 * (own - 2 * withMean[i]! + variance)) / own;
    seen += ((eastM[i]! - mean.eastM) ** 2 + (northM[i]! - mean.northM) ** 2) / own;
  }
  const widening = expected > 1e-9 ? Math.max(1, Math.sqrt(seen / expected)) : 1;
  return { variance, widening };
}
