/**
 * An ask: everything that makes one leg hard, as numbers. Field names, ranges and easy ends are those of
 * `docs/journal.md`; an absent field stands at its easy end.
 */

/** The trade's skills; a leg practises the skill of the same name. */
export const SKILLS = [
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
] as const;
export type Skill = (typeof SKILLS)[number];

/** What draws the dog, least first. */
export const TEMPTATIONS = [
  'none',
  'post',
  'placed-dummy',
  'thrown-dummy',
  'shot-and-dummy',
  'game',
] as const;
export type Temptation = (typeof TEMPTATIONS)[number];

/** Where the handler stands, easiest first: between dog and temptation, at its side, away from both. */
export const HANDLER_PLACES = ['between', 'beside', 'apart'] as const;
export type HandlerPlace = (typeof HANDLER_PLACES)[number];

/** One ask. Metres, degrees, seconds and metres a second as the names say; scales are 0 (easy) to 3. */
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

/** Grades of a leg, worst first. */
export const GRADES = ['missed', 'fair', 'good'] as const;
export type Grade = (typeof GRADES)[number];
