import { castSide, type LaidLeg } from '../picture/laid-leg.ts';
import {
  PACE_PRIOR,
  REP_KINDS,
  REP_TIME_S,
  type RepKind,
  SHORTEST_REP_S,
  USUAL_REP_S,
} from './duration-priors.ts';

/** A rep's own time as the journal has it, and what it would have taken at the usual pace. */
export interface RepTime {
  readonly kind: RepKind;
  readonly usualS: number;
  readonly tookS: number;
}

/** How much slower than usual the reps of one kind are done: normal in the log; `repSd` from one rep to the next. */
export interface KindPace {
  readonly mean: number;
  readonly variance: number;
  readonly repSd: number;
  readonly reps: number;
}

export type Pace = Readonly<Record<RepKind, KindPace>>;

/** The kind of rep that a chain of legs makes. */
export function repKind(legs: readonly LaidLeg[]): RepKind {
  const has = (...skills: readonly string[]) => legs.some(({ skill }) => skills.includes(skill));
  if (has('stop')) return 'stopped';
  if (legs.some(({ skill }) => castSide(skill) !== null)) return 'cast';
  if (has('line', 'mark', 'hunt', 'pickup', 'delivery')) return 'straight';
  return has('recall') ? 'recall' : 'still';
}

/** Seconds a rep takes at the usual pace: its kind's own, the wait it asks for, and its laying and walking. */
export function usualS(legs: readonly LaidLeg[], laysS: number): number {
  const waitS = legs.reduce((so, { ask }) => so + (ask.waitS ?? 0), 0);
  return USUAL_REP_S[repKind(legs)] + waitS + laysS;
}

/**
 * The pace of each kind of rep from the journal's own times: `ln(took / usual) ~ N(theta, repSd^2)`, normal-inverse-gamma,
 * conjugate (Gelman2013, 3.3): `theta` shrinks to 0 by the prior of `PACE_PRIOR`, the spread to its prior one. Times
 * outside `REP_TIME_S` are no rep's and are left out.
 */
export function learnedPace(times: readonly RepTime[]): Pace {
  const of = (kind: RepKind): KindPace => {
    const logs = times
      .filter((time) => time.kind === kind && time.tookS >= REP_TIME_S.least && time.tookS <= REP_TIME_S.most)
      .map(({ tookS, usualS: usual }) => Math.log(tookS / usual));
    const n = logs.length;
    const { sd, repSd, repSdReps } = PACE_PRIOR;
    // The prior speaks like so many reps done at the usual pace.
    const priorReps = (repSd / sd) ** 2;
    const average = n === 0 ? 0 : logs.reduce((so, log) => so + log, 0) / n;
    const mean = (n * average) / (priorReps + n);
    const squares = logs.reduce((so, log) => so + (log - average) ** 2, 0);
    const between = ((priorReps * n) / (priorReps + n)) * average * average;
    const spread = (repSdReps * repSd * repSd + squares + between) / (repSdReps + n);
    return { mean, variance: spread / (priorReps + n), repSd: Math.sqrt(spread), reps: n };
  };
  return Object.fromEntries(REP_KINDS.map((kind) => [kind, of(kind)])) as Record<RepKind, KindPace>;
}

/** A rep as the clock sees it. */
export interface TimedRep {
  readonly kind: RepKind;
  readonly usualS: number;
}

/** A rep as it is reckoned with: whatever the pace, no rep is planned to take less than `SHORTEST_REP_S`. */
export function timedRep(legs: readonly LaidLeg[], laysS: number, pace: Pace): TimedRep {
  const kind = repKind(legs);
  return { kind, usualS: Math.max(usualS(legs, laysS), SHORTEST_REP_S / Math.exp(pace[kind].mean)) };
}

/** Median seconds of one rep. */
export function medianS({ kind, usualS: usual }: TimedRep, pace: Pace): number {
  return usual * Math.exp(pace[kind].mean);
}

/** 90 % quantile of the standard normal. */
const Z80 = 1.2815515655446004;

/**
 * Minutes of a whole session: the sum of its reps' log-normals, reps of one kind sharing what is not known of their pace,
 * as the log-normal of the same mean and variance (Fenton1960), and the breaks as they are. 0 for no reps.
 */
export function wholeMinutes(
  reps: readonly TimedRep[],
  pace: Pace,
  breakMinutes: number,
): { readonly p50: number; readonly p90: number } {
  let mean = 0;
  let variance = 0;
  for (const kind of REP_KINDS) {
    const { mean: log, variance: shared, repSd } = pace[kind];
    const own = repSd * repSd;
    const growth = Math.exp(log + (shared + own) / 2);
    const expected = reps.filter((rep) => rep.kind === kind).map((rep) => rep.usualS * growth);
    const sum = expected.reduce((so, seconds) => so + seconds, 0);
    const squares = expected.reduce((so, seconds) => so + seconds * seconds, 0);
    mean += sum;
    // Two reps of a kind: E_i E_j (e^shared - 1); a rep with itself: E_i^2 (e^(shared + own) - 1).
    variance += sum * sum * Math.expm1(shared) + squares * Math.exp(shared) * Math.expm1(own);
  }
  if (mean === 0) return { p50: breakMinutes, p90: breakMinutes };
  const ratio = 1 + variance / (mean * mean);
  const p50 = mean / Math.sqrt(ratio) / 60;
  return {
    p50: p50 + breakMinutes,
    p90: p50 * Math.exp(Z80 * Math.sqrt(Math.log(ratio))) + breakMinutes,
  };
}
