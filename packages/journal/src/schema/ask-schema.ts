import * as v from 'valibot';
import { flag, numberBetween, oneOf } from './fields.ts';
import { objectOf } from './object-of.ts';

/** The trade's skills; a leg practises the skill of the same name. */
export const SKILL_NAMES = [
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
export type SkillName = (typeof SKILL_NAMES)[number];

/** What draws the dog, least first. */
export const TEMPTATION_NAMES = [
  'none',
  'post',
  'placed-dummy',
  'thrown-dummy',
  'shot-and-dummy',
  'game',
] as const;

/** Where the handler stands: between dog and temptation, at the dog's side, away from both. */
export const HANDLER_PLACE_NAMES = ['between', 'beside', 'apart'] as const;

export const skillSchema = oneOf(SKILL_NAMES);

/** An ask: every field optional, an absent one stands at its easy end. Ranges are those of `docs/journal.md`. */
export const askSchema = objectOf({
  distanceM: v.optional(numberBetween(0, 400)),
  wayFraction: v.optional(numberBetween(0, 1)),
  temptation: v.optional(oneOf(TEMPTATION_NAMES)),
  handlerPlace: v.optional(oneOf(HANDLER_PLACE_NAMES)),
  cover: v.optional(numberBetween(0, 3)),
  distraction: v.optional(numberBetween(0, 3)),
  turnDeg: v.optional(numberBetween(0, 180)),
  castM: v.optional(numberBetween(0, 150)),
  otherDummies: v.optional(numberBetween(0, 6)),
  gapDeg: v.optional(numberBetween(0, 180)),
  blind: v.optional(flag),
  waitS: v.optional(numberBetween(0, 300)),
  obstacle: v.optional(numberBetween(0, 3)),
  windAcrossMPerS: v.optional(numberBetween(0, 15)),
  crew: v.optional(numberBetween(0, 12)),
});
export type Ask = v.InferOutput<typeof askSchema>;
