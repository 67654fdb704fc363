import type { Ask, AskField } from '../../ability/index.ts';

/** The rules of the trade that every plan is judged by (contract, "A plan"). */
export const RULES = [
  'known-first',
  'one-thing-at-a-time',
  'even-sides',
  'clean-runs-unpredictable',
  'vary-where-the-stop-comes',
  'break',
  'finish-well',
  'fits-the-time',
  'within-reach',
  'safe',
] as const;
export type RuleName = (typeof RULES)[number];

/** Why a rule is not kept: stable codes. */
export const RULE_WHY_CODES = [
  'no-reps',
  'nothing-known-yet',
  'first-raises',
  'first-not-sure',
  'raises-too-much',
  'raises-nothing',
  'beyond-the-easy-end',
  'sides-uneven',
  'clean-marked-wrongly',
  'no-clean-run',
  'too-few-clean-runs',
  'order-can-be-guessed',
  'order-as-before',
  'stops-in-one-place',
  'too-long-without-break',
  'last-is-no-finish',
  'finish-not-sure',
  'over-the-time',
  'reps-too-short',
  'time-not-stated',
  'out-of-reach',
  'chance-not-stated',
  'too-long-for-age',
  'line-too-long-for-age',
  'obstacle-too-hard-for-age',
  'too-much-for-the-heat',
] as const;
export type RuleWhyCode = (typeof RULE_WHY_CODES)[number];

/** Why a rule is not kept. Which figures are there depends on the code; `limit` is what `is` was held against. */
export interface RuleWhy {
  readonly code: RuleWhyCode;
  /** Numbers `n` of the reps that break it; empty where it is the plan as a whole. */
  readonly reps: readonly number[];
  /** The things raised, where that is what breaks it. */
  readonly fields?: readonly AskField[] | undefined;
  /** What those fields are raised to, in the first of the reps. */
  readonly to?: Ask | undefined;
  /** The figure that breaks the rule and the one it is held against: minutes, metres, chances or counts, by the code. */
  readonly is?: number | undefined;
  readonly limit?: number | undefined;
  readonly left?: number | undefined;
  readonly right?: number | undefined;
  /** Reps and minutes without a break, or in the heat. */
  readonly count?: number | undefined;
  readonly minutes?: number | undefined;
}

/** What would mend it: stable codes. */
export const RULE_MEND_CODES = [
  'begin-with-known',
  'keep-one-thing',
  'call-it-vary',
  'to-the-easy-end',
  'turn-to-the-other-side',
  'mark-by-its-legs',
  'run-clean',
  'draw-the-order-anew',
  'stop-elsewhere',
  'put-in-a-break',
  'end-with-known',
  'drop-reps',
  'leave-reps-more-time',
  'take-the-easier',
  'state-it-anew',
  'shorten-the-line',
  'lower-the-obstacle',
] as const;
export type RuleMendCode = (typeof RULE_MEND_CODES)[number];

/** What would mend a rule that is not kept. */
export interface RuleMend {
  readonly code: RuleMendCode;
  /** Numbers `n` of the reps to change; for a break, of the rep it comes after. */
  readonly reps: readonly number[];
  readonly fields?: readonly AskField[] | undefined;
  readonly side?: 'left' | 'right' | undefined;
  /** What to bring the figure to: a part of the way, metres, an obstacle, minutes, or how many reps. */
  readonly to?: number | undefined;
}

/**
 * One rule judged. A rule with nothing to say of a plan (no stops, no casts) is kept. `why` and `mend` come with a rule
 * that is not kept; `couldHaveBeenKept` too, where that can be told, and then a plan may own up to the rule only if
 * it is `false`.
 */
export interface RuleVerdict {
  readonly rule: RuleName;
  readonly kept: boolean;
  readonly why?: RuleWhy | undefined;
  readonly mend?: RuleMend | undefined;
  readonly couldHaveBeenKept?: boolean | undefined;
}
