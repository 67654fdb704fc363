import type { Skill, Temptation } from '@sedgeline/engine/ability';
import type { ChanceOfGood, LegCounts } from './progress-view.ts';

/** What the columns of a map are steps of: metres, seconds of waiting, or the 0 to 3 scale of what goes on about. */
export type ProofingDemand = 'distance' | 'wait' | 'distraction';

/** One column: above the end of the column before it, up to its own end. */
export interface ProofingBand {
  /** `null` for the last. */
  readonly to: number | null;
  /** At what the chances of this column are stated: the middle of what was worked there. */
  readonly at: number;
}

/** One row of the map of grounds. */
export type ProofingGround =
  | { readonly kind: 'ground'; readonly ground: string; readonly name: string }
  /** The first day on any ground. */
  | { readonly kind: 'new-ground' }
  /** Sessions for which no ground was named. */
  | { readonly kind: 'no-ground' };

export interface ProofingCell {
  /** Legs that are not held against the dog are in `excused` alone. */
  readonly counts: LegCounts;
  /** `excused`: tried, but nothing of it is held against the dog. */
  readonly tried: 'yes' | 'excused' | 'never';
  /** `null` where it was never tried. */
  readonly lastWorkedMs: number | null;
  /** The chance of good now, of this row and column, all else as in the skill's usual ask. */
  readonly now: ChanceOfGood;
  /** Nothing as hard as this, in row and column, ever went well: the chance reaches beyond what has been tried. */
  readonly beyond: boolean;
}

export interface ProofingRow<Of> {
  readonly of: Of;
  /** One a column. */
  readonly cells: readonly ProofingCell[];
}

/** What has been tried where, and how it went. */
export interface ProofingView {
  readonly dog: string;
  readonly name: string;
  readonly skill: Skill;
  readonly atMs: number;
  readonly legs: number;
  readonly demand: ProofingDemand;
  /** Easy, middle and hard, in steps taken from what was worked. */
  readonly bands: readonly [ProofingBand, ProofingBand, ProofingBand];
  readonly temptations: readonly ProofingRow<Temptation>[];
  readonly grounds: readonly ProofingRow<ProofingGround>[];
}
