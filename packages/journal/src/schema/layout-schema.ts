import * as v from 'valibot';
import { flag, id, listOf, numberBetween, oneOf, text } from './fields.ts';
import { objectOf } from './object-of.ts';

export const THING_KINDS = ['post', 'dummy', 'hazard', 'jump', 'other'] as const;
export const THING_HOWS = ['placed', 'thrown', 'launched'] as const;

const eastM = numberBetween(-10_000, 10_000);
const northM = numberBetween(-10_000, 10_000);

/** A place on the drawing: metres east and north of an origin of the drawer's choice. */
export const placeSchema = objectOf({ eastM, northM });
export type Place = v.InferOutput<typeof placeSchema>;

export const thingSchema = objectOf({
  thing: id,
  kind: oneOf(THING_KINDS),
  eastM,
  northM,
  how: v.optional(oneOf(THING_HOWS)),
  label: v.optional(text),
  /** The dog did not see it put there. */
  blind: v.optional(flag),
});
export type Thing = v.InferOutput<typeof thingSchema>;

export const layoutDrawnSchema = objectOf({
  layout: id,
  ground: v.optional(id),
  name: v.optional(text),
  handlerAt: placeSchema,
  sendFrom: v.optional(placeSchema),
  things: listOf(thingSchema),
  windFromDeg: v.optional(numberBetween(0, 360)),
  windMPerS: v.optional(numberBetween(0, 100)),
});
export type LayoutDrawn = v.InferOutput<typeof layoutDrawnSchema>;
