import type { PatternFinding } from '@sedgeline/engine/ability';

/** What shows over months in one dog's record. */
export interface PatternsView {
  readonly dog: string;
  readonly legs: number;
  /** All seven, in their order. */
  readonly patterns: readonly PatternFinding[];
  /** The share of sends to be run clean, and the chance of expecting the whistle at that share. */
  readonly clean: {
    readonly share: number;
    readonly expectation: { readonly mean: number; readonly sd: number };
  };
}
