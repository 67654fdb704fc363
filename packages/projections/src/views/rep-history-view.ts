import type { Grade, Skill } from '@sedgeline/engine/ability';
import type { Cause, Expectation, Reward } from '../record/training-record.ts';

/** One thing that a step changed: what it was before, and what it was from then on. */
export type RepChange =
  | { readonly of: 'leg-added'; readonly skill: Skill; readonly to: Grade }
  | { readonly of: 'leg-taken'; readonly skill: Skill; readonly from: Grade }
  | { readonly of: 'grade'; readonly skill: Skill; readonly from: Grade; readonly to: Grade }
  | {
      readonly of: 'cause';
      readonly skill: Skill;
      readonly from: Cause | null;
      readonly to: Cause | null;
    }
  | { readonly of: 'ask'; readonly skill: Skill; readonly fromM: number | null; readonly toM: number | null }
  | {
      readonly of: 'latency';
      readonly skill: Skill;
      readonly fromS: number | null;
      readonly toS: number | null;
    }
  | { readonly of: 'expectation'; readonly from: Expectation; readonly to: Expectation }
  | { readonly of: 'clean'; readonly to: boolean }
  | { readonly of: 'note'; readonly from: string; readonly to: string }
  | { readonly of: 'reward'; readonly from: readonly Reward[]; readonly to: readonly Reward[] }
  | { readonly of: 'got-it'; readonly to: boolean };

/** One step in the life of a rep. */
export interface RepStep {
  readonly atMs: number;
  /** Who did it, where the fact says so, and on which device. */
  readonly by: string | null;
  readonly device: string | null;
  readonly what: 'recorded' | 'from-memory' | 'changed' | 'ended' | 'went-on' | 'struck' | 'restored';
  /** True for a tap that was taken back with undo, and for the taking back itself. */
  readonly isUndo: boolean;
  readonly changes: readonly RepChange[];
}

/** What became of a rep, oldest first. */
export interface RepHistoryView {
  readonly rep: string;
  readonly steps: readonly RepStep[];
}
