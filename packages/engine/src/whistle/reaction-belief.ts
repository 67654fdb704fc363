import { betaCdf, normalCdf } from '../numeric/index.ts';
import { finiteBetween } from '../quantity/index.ts';
import { meetsAtS, timeAtS } from './dog-run.ts';
import { speedOfSoundMPerS } from './speed-of-sound.ts';
import { checkStopConditions, type StopConditions } from './stop-conditions.ts';

/**
 * What is known of the next reaction of a dog: its logarithm is Student's t about `ln medianS` with scale `logSd`; normal where
 * `freedom` is infinite.
 */
export interface ReactionBelief {
  readonly medianS: number;
  readonly logSd: number;
  readonly freedom: number;
  /** How many measured reactions it stands on. */
  readonly measured: number;
}

/** What is taken of a dog nobody timed: as good as two measured reactions for the middle and six for the spread (our judgement, 2026). */
const PRIOR = { medianS: 0.35, logSd: 0.3, worthForMiddle: 2, worthForSpread: 6 } as const;

/**
 * The dog's next reaction, learned from measured ones. Logarithms are normal with unknown middle and spread, the prior is the
 * conjugate one, and what comes out is the predictive law (Gelman2013, 3.3):
 * `kn = k0 + n`, `mn = (k0 m0 + sum y) / kn`, `vn = v0 + n`, `vn sn^2 = v0 s0^2 + sum (y - mean)^2 + k0 n / kn (mean - m0)^2`,
 * scale `sn sqrt(1 + 1 / kn)`. Timing by hand is good to 0.2 s for one stop; that is in the spread.
 * @throws RangeError for a reaction outside 0.01 to 60 s
 */
export function learnedReaction(
  reactionsS: readonly number[],
  medianS: number = PRIOR.medianS,
): ReactionBelief {
  const y = reactionsS.map((s) => Math.log(finiteBetween('reactionsS', s, 0.01, 60)));
  const priorMiddle = Math.log(finiteBetween('medianS', medianS, 0.01, 60));
  const n = y.length;
  const mean = n === 0 ? priorMiddle : y.reduce((sum, value) => sum + value, 0) / n;
  const worth = PRIOR.worthForMiddle + n;
  const middle = (PRIOR.worthForMiddle * priorMiddle + n * mean) / worth;
  const freedom = PRIOR.worthForSpread + n;
  const squares =
    PRIOR.worthForSpread * PRIOR.logSd ** 2 +
    y.reduce((sum, value) => sum + (value - mean) ** 2, 0) +
    ((PRIOR.worthForMiddle * n) / worth) * (mean - priorMiddle) ** 2;
  return {
    medianS: Math.exp(middle),
    logSd: Math.sqrt((squares / freedom) * (1 + 1 / worth)),
    freedom,
    measured: n,
  };
}

/** Chance that the next reaction takes `timeS` at most. */
export function chanceReactsBy(timeS: number, { medianS, logSd, freedom }: ReactionBelief): number {
  if (timeS <= 0) return 0;
  const z = Math.log(timeS / medianS) / logSd;
  if (freedom === Infinity) return normalCdf(z);
  // Student's t by the incomplete beta function (Abramowitz1964, 26.7.1).
  const tail = 0.5 * betaCdf(freedom / (freedom + z * z), freedom / 2, 0.5);
  return z < 0 ? tail : 1 - tail;
}

/**
 * The dog's reaction within a latency that was timed from the whistle to the halt, when the whistle blew with the dog `blowAtM`
 * out: the latency less the sound's way and the braking, in closed form for a dog at speed or still getting going; `null`
 * where nothing is left, since then the timing or the speeds are wrong.
 * @throws RangeError for figures that cannot be
 */
export function reactionOfLatencyS(latencyS: number, blowAtM: number, at: StopConditions): number | null {
  checkStopConditions(at);
  finiteBetween('latencyS', latencyS, 0, 60);
  const blowS = timeAtS(finiteBetween('blowAtM', blowAtM, 0, 5_000), at);
  const hearsS = meetsAtS(blowS, at, speedOfSoundMPerS(at.airC));
  const leftS = latencyS - (hearsS - blowS);
  const atSpeedS = at.runSpeedMPerS / at.accelerationMPerS2;
  const share = at.accelerationMPerS2 / at.brakingMPerS2;
  const gettingGoingS = (leftS - share * hearsS) / (1 + share);
  const reactionS =
    hearsS + gettingGoingS <= atSpeedS ? gettingGoingS : leftS - at.runSpeedMPerS / at.brakingMPerS2;
  return reactionS > 0.01 ? reactionS : null;
}
