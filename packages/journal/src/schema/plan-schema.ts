import * as v from 'valibot';
import { flag, id, listOf, numberBetween, text } from './fields.ts';
import { objectOf } from './object-of.ts';
import { plannedLegSchema } from './rep-schema.ts';

/** Our own kind: a session that was planned and kept. A later fact of the same plan says how it was changed. */
export const sessionPlannedSchema = objectOf({
  plan: id,
  dog: id,
  minutes: numberBetween(0, 1440),
  reps: listOf(objectOf({ purpose: text, legs: listOf(plannedLegSchema), locked: v.optional(flag) })),
  breaks: v.optional(listOf(objectOf({ afterRep: numberBetween(1, 100), minutes: numberBetween(0, 1440) }))),
  ground: v.optional(id),
  layout: v.optional(id),
  seed: v.optional(numberBetween(0, Number.MAX_SAFE_INTEGER)),
});
export type SessionPlanned = v.InferOutput<typeof sessionPlannedSchema>;
