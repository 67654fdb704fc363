import { calibrationSlope } from './calibration-slope.ts';
import type { KennelTallies, Slice } from './judge.ts';
import type { Tally } from './tally.ts';

/** A figure and its standard error, kennels being the units. */
export interface Figure {
  readonly value: number;
  readonly se: number;
}

/** `sum a / sum b` over kennels; se by linearisation, `sqrt(sum (a - r b)^2) / sum b`. */
export function ratioOf(pairs: readonly (readonly [a: number, b: number])[]): Figure {
  const whole = pairs.reduce((sum, [, b]) => sum + b, 0);
  const value = pairs.reduce((sum, [a]) => sum + a, 0) / whole;
  const se = Math.sqrt(pairs.reduce((sum, [a, b]) => sum + (a - value * b) ** 2, 0)) / Math.abs(whole);
  return { value, se };
}

export function talliesIn(kennels: readonly KennelTallies[], who: string, slice: Slice): Tally[] {
  return kennels.map(({ of }) => {
    const tally = of.get(who)?.[slice];
    if (tally === undefined) throw new RangeError(`who: expected one who was judged, got ${who}`);
    return tally;
  });
}

/** Mean of a sum, a leg. */
export function meanOf(tallies: readonly Tally[], sum: 'logLoss' | 'brier' | 'ranked' | 'regret'): Figure {
  return ratioOf(tallies.map((tally) => [tally[sum], tally.legs]));
}

/**
 * Realised loss beyond the truth's, less regret, in standard errors. Each leg's part has mean 0 given all that came before, if
 * the truths are true and nobody peeks, so the parts are uncorrelated and their squares add up to the variance.
 */
export function luckOf(tallies: readonly Tally[]): number {
  const sum = (of: 'luck' | 'luckSquared') => tallies.reduce((total, tally) => total + tally[of], 0);
  return sum('luckSquared') === 0 ? 0 : sum('luck') / Math.sqrt(sum('luckSquared'));
}

/** Share of the intervals that hold the true chance. */
export function coverageOf(tallies: readonly Tally[], of: 'good' | 'notMissed'): Figure {
  const inside = of === 'good' ? 'goodInside' : 'notMissedInside';
  return ratioOf(tallies.map((tally) => [tally[inside], tally.intervals]));
}

/** Regret as a share of another's on the same legs. */
export function regretShare(mine: readonly Tally[], others: readonly Tally[]): Figure {
  return ratioOf(mine.map(({ regret }, k) => [regret, others[k]!.regret]));
}

/** Skill over another: the share of its log loss that is saved. */
export function skillOver(mine: readonly Tally[], others: readonly Tally[]): Figure {
  const { value, se } = ratioOf(mine.map(({ logLoss }, k) => [logLoss, others[k]!.logLoss]));
  return { value: 1 - value, se };
}

/** Calibration slope of the chance of good; `null` where there are too few legs. */
export function slopeOf(tallies: readonly Tally[]): Figure | null {
  const fit = calibrationSlope(tallies);
  return fit === null ? null : { value: fit.slope, se: fit.slopeSe };
}
