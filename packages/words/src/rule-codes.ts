import type { Ask } from './vocabulary.ts';

/** The rules of the trade that a plan is judged by. */
export const RULE_NAMES = [
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
export type RuleName = (typeof RULE_NAMES)[number];

/** Every code of why a rule is not kept. */
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

/** Why a rule is not kept, with its figures, any of which may be missing. */
export interface RuleWhy {
  readonly code: RuleWhyCode;
  readonly reps: readonly number[];
  readonly fields?: readonly (keyof Ask)[] | undefined;
  readonly to?: Ask | undefined;
  readonly is?: number | undefined;
  readonly limit?: number | undefined;
  readonly left?: number | undefined;
  readonly right?: number | undefined;
  readonly count?: number | undefined;
  readonly minutes?: number | undefined;
}

/** Every code of what would mend it. */
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

/** What would mend a rule, with its figures, any of which may be missing. */
export interface RuleMend {
  readonly code: RuleMendCode;
  readonly reps: readonly number[];
  readonly fields?: readonly (keyof Ask)[] | undefined;
  readonly side?: 'left' | 'right' | undefined;
  readonly to?: number | undefined;
}

/** A rule as it was judged. */
export interface RuleVerdict {
  readonly rule: RuleName;
  readonly kept: boolean;
  readonly why?: RuleWhy | undefined;
  readonly mend?: RuleMend | undefined;
}
