import * as v from 'valibot';
import { flag, id } from './fields.ts';
import { objectOf } from './object-of.ts';

/** Our own kind: a ground that is offered no more, or (with `back`) is again. The latest one counts. */
export const groundPutAwaySchema = objectOf({ ground: id, back: v.optional(flag) });
export type GroundPutAway = v.InferOutput<typeof groundPutAwaySchema>;

/** Our own kind: the same of a layout. */
export const layoutPutAwaySchema = objectOf({ layout: id, back: v.optional(flag) });
export type LayoutPutAway = v.InferOutput<typeof layoutPutAwaySchema>;
