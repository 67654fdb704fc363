import * as v from 'valibot';
import { skillSchema } from './ask-schema.ts';
import { id, numberBetween, text } from './fields.ts';
import { objectOf } from './object-of.ts';

/** The weather seen at a session. */
export const weatherSchema = objectOf({
  airC: v.optional(numberBetween(-60, 60)),
  humidityPct: v.optional(numberBetween(0, 100)),
  windMPerS: v.optional(numberBetween(0, 100)),
  windFromDeg: v.optional(numberBetween(0, 360)),
});
export type Weather = v.InferOutput<typeof weatherSchema>;

export const sessionOpenedSchema = objectOf({
  session: id,
  dog: id,
  handler: v.optional(id),
  ground: v.optional(id),
  layout: v.optional(id),
  weather: v.optional(weatherSchema),
  plan: v.optional(id),
  class: v.optional(id),
});
export type SessionOpened = v.InferOutput<typeof sessionOpenedSchema>;

const minutes = numberBetween(0, 1440);

export const breakTakenSchema = objectOf({ session: id, minutes });
export type BreakTaken = v.InferOutput<typeof breakTakenSchema>;

export const sessionClosedSchema = objectOf({ session: id, note: v.optional(text) });
export type SessionClosed = v.InferOutput<typeof sessionClosedSchema>;

/** Our own kind: what this session is about. */
export const sessionFocusedSchema = objectOf({ session: id, skill: skillSchema });
export type SessionFocused = v.InferOutput<typeof sessionFocusedSchema>;

/** Our own kind: a break has begun and is meant to last so long. */
export const breakStartedSchema = objectOf({ session: id, minutes });
export type BreakStarted = v.InferOutput<typeof breakStartedSchema>;
