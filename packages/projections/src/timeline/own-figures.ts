import type { AbilityPriors, KennelFit, Recalibration } from '@sedgeline/engine/ability';

/** Scored legs at which a kennel's own priors are looked for (our judgement, 2026): the engine needs 300. */
const FIT_AT = [300, 600, 1200, 2400, 4800] as const;
/** A second fit when the record has grown fourfold; what a third would move is small beside its spread. */
const FITS_AT_MOST = 2;
const GROWN = 4;
/** Recalibration is looked at here and at each doubling (engine design, 6). */
const RECALIBRATE_AT = 150;

/** It listens to the latest legs, so many: what the chances were worth lately, at a price that does not grow (our judgement, 2026). */
export const RECALIBRATION_LEGS = 2000;

/** A fit in use: what it came from. */
export interface UsedFit extends KennelFit {
  /** Moment of the first leg that it speaks of, milliseconds since 1970 UTC. */
  readonly fromMs: number;
}

/** A correction in use. */
export interface UsedRecalibration extends Recalibration {
  readonly interval90: readonly [number, number];
  readonly legs: number;
  readonly fromMs: number;
}

/** What a walk has learnt of its own figures from the legs so far. Each comes at the beginning of a session. */
export interface OwnFigures {
  readonly scored: number;
  readonly fitTries: number;
  /** True while the walk goes without a fit that is wanted. */
  readonly lacksFit: boolean;
  readonly fits: readonly UsedFit[];
  readonly recalibrationTries: number;
  readonly recalibration: UsedRecalibration | null;
}

export const NO_OWN_FIGURES: OwnFigures = {
  scored: 0,
  fitTries: 0,
  lacksFit: false,
  fits: [],
  recalibrationTries: 0,
  recalibration: null,
};

/** The priors in use: the last fit's; `undefined` for the shipped ones. */
export function ownPriors(own: OwnFigures): AbilityPriors | undefined {
  return own.fits.at(-1)?.priors;
}

/** How many of the places to look for a fit have been passed. */
export function fitTriesBy(scored: number): number {
  return FIT_AT.filter((legs) => legs <= scored).length;
}

/** Whether a fit is to be looked for now. */
export function isFitDue({ scored, fitTries, fits }: OwnFigures): boolean {
  if (fitTriesBy(scored) <= fitTries || fits.length >= FITS_AT_MOST) return false;
  const last = fits.at(-1);
  return last === undefined || scored >= GROWN * last.legs;
}

/** How many of the places to look at the recalibration have been passed. */
export function recalibrationTriesBy(scored: number): number {
  return scored < RECALIBRATE_AT ? 0 : 1 + Math.floor(Math.log2(scored / RECALIBRATE_AT));
}
