/**
 * The trade's codes as they stand in the journal and in the views, written out again here so that this package
 * depends on nobody. The shapes match structurally; a code that is new elsewhere and not here fails to compile where
 * the two meet.
 */
export type Skill =
  | 'steady'
  | 'line'
  | 'stop'
  | 'cast-left'
  | 'cast-right'
  | 'cast-back'
  | 'hunt'
  | 'mark'
  | 'pickup'
  | 'delivery'
  | 'recall'
  | 'heel'
  | 'leave';

export const SKILL_CODES: readonly Skill[] = [
  'steady',
  'line',
  'stop',
  'cast-left',
  'cast-right',
  'cast-back',
  'hunt',
  'mark',
  'pickup',
  'delivery',
  'recall',
  'heel',
  'leave',
];

export type Grade = 'missed' | 'fair' | 'good';
export const GRADE_CODES: readonly Grade[] = ['missed', 'fair', 'good'];

export type Cause = 'dog' | 'handler' | 'setup' | 'unsure';
export const CAUSE_CODES: readonly Cause[] = ['dog', 'handler', 'setup', 'unsure'];

export type Temptation = 'none' | 'post' | 'placed-dummy' | 'thrown-dummy' | 'shot-and-dummy' | 'game';
export const TEMPTATION_CODES: readonly Temptation[] = [
  'none',
  'post',
  'placed-dummy',
  'thrown-dummy',
  'shot-and-dummy',
  'game',
];

/** What a leg sends the dog to, by what the dog knows of it. */
export type Goal = 'blind' | 'memory' | 'mark' | 'game' | 'post';

export type HandlerPlace = 'between' | 'beside' | 'apart';
export const HANDLER_PLACE_CODES: readonly HandlerPlace[] = ['between', 'beside', 'apart'];

export type Purpose = 'check' | 'build' | 'vary' | 'clean' | 'easier' | 'finish';
export type Expectation = 'none' | 'hangs-back' | 'stops-unasked';
export type Reward = 'marker' | 'food' | 'play' | 'retrieve' | 'praise';

/** One ask; every field may be left out and then stands at its easy end. */
export interface Ask {
  readonly distanceM?: number | undefined;
  readonly wayFraction?: number | undefined;
  readonly temptation?: Temptation | undefined;
  readonly handlerPlace?: HandlerPlace | undefined;
  readonly cover?: number | undefined;
  readonly distraction?: number | undefined;
  readonly turnDeg?: number | undefined;
  readonly castM?: number | undefined;
  readonly otherDummies?: number | undefined;
  readonly gapDeg?: number | undefined;
  readonly blind?: boolean | undefined;
  readonly waitS?: number | undefined;
  readonly obstacle?: number | undefined;
  readonly windAcrossMPerS?: number | undefined;
  readonly crew?: number | undefined;
}

/** A leg of a chain: what is asked of which skill. */
export interface AskedLeg {
  readonly skill: Skill;
  readonly ask: Ask;
}
