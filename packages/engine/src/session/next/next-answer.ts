import type { Ask, GradeChances, Interval90, Skill } from '../../ability/index.ts';
import type { Layout } from '../../ground/index.ts';

/** What a rep is for (contract, "A plan"). */
export const PURPOSES = ['check', 'build', 'vary', 'clean', 'easier', 'finish'] as const;
export type Purpose = (typeof PURPOSES)[number];

/** True for one of the purposes; journals made elsewhere may hold any word, or none. */
export function isPurpose(word: string | null): word is Purpose {
  return (PURPOSES as readonly (string | null)[]).includes(word);
}

export type Side = 'left' | 'right' | 'none';

/** One leg of a rep to be asked, with its stated chances. `stretch` is `null` with no success before. */
export interface PlannedLeg {
  readonly skill: Skill;
  readonly ask: Ask;
  readonly chance: GradeChances;
  readonly interval90: { readonly good: Interval90; readonly notMissed: Interval90 };
  readonly stretch: number | null;
}

/** Why this is asked: a stable code and its figures; the sentence is made at the edge. */
export interface Reason {
  readonly code: ReasonCode;
  readonly skill?: Skill | undefined;
  /** The field of the ask that is raised or lowered, and from what to what. */
  readonly field?: string | undefined;
  readonly from?: number | string | boolean | undefined;
  readonly to?: number | string | boolean | undefined;
  readonly chanceBefore?: number | undefined;
  readonly chanceNow?: number | undefined;
  readonly count?: number | undefined;
  readonly minutes?: number | undefined;
  readonly share?: number | undefined;
}

export const REASON_CODES = [
  'known-first',
  'nothing-known-yet',
  'easy-end',
  'one-thing-raised',
  'hold-here',
  'one-thing-lowered',
  'easier-after-miss',
  'two-misses-end-this',
  'repeat-set-up-better',
  'run-clean',
  'vary-where-the-stop-comes',
  'weaker-side',
  'back-to-known',
  'new-ground-step-down',
  'beyond-what-was-tried',
  'break-due',
  'finish-well',
  'end-on-good',
  'long-enough',
  'stop-for-today',
  'as-planned',
  'easier-than-planned',
  'planned-line-ended',
  'plan-done',
] as const;
export type ReasonCode = (typeof REASON_CODES)[number];

/** What must be done on the ground before the rep. */
export interface Errand {
  readonly do: 'throw' | 'place' | 'lift' | 'walk';
  readonly thing?: string | undefined;
  readonly metres?: number | undefined;
}

/** A rep to be asked. */
export interface PlannedRep {
  readonly n: number;
  readonly purpose: Purpose;
  readonly clean: boolean;
  readonly side: Side;
  readonly legs: readonly PlannedLeg[];
  readonly layout: Layout;
  readonly before: readonly Errand[];
  readonly easier: { readonly legs: readonly PlannedLeg[] };
  readonly reasons: readonly Reason[];
  /** The number in the session's plan that this rep stands for. */
  readonly planRep?: number | undefined;
}

/**
 * What became of the session's plan at this step: kept as it was made, changed for what came of the reps, or over.
 */
export interface PlanCourse {
  readonly do: 'keep' | 'adapt' | 'end';
  /** Reps of the plan that are done, and all that it has. */
  readonly done: number;
  readonly of: number;
}

/** The next thing: a rep, a break, or the end. `rep` and `easier` are there for a rep only. */
export type NextAnswer = (
  | {
      readonly do: 'rep';
      readonly rep: PlannedRep;
      readonly easier: PlannedRep;
      readonly reasons: readonly Reason[];
    }
  | { readonly do: 'break'; readonly minutes: number; readonly reasons: readonly Reason[] }
  | { readonly do: 'end'; readonly reasons: readonly Reason[] }
) & {
  /** Where the session follows a plan. */
  readonly plan?: PlanCourse | undefined;
};
