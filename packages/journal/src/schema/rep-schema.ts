import * as v from 'valibot';
import { askSchema, skillSchema } from './ask-schema.ts';
import { flag, id, listOf, numberBetween, oneOf, text } from './fields.ts';
import { objectOf } from './object-of.ts';

export const GRADE_NAMES = ['good', 'fair', 'missed'] as const;
export type GradeName = (typeof GRADE_NAMES)[number];
export const CAUSE_NAMES = ['dog', 'handler', 'setup', 'unsure'] as const;
export type CauseName = (typeof CAUSE_NAMES)[number];
export const REWARD_NAMES = ['marker', 'food', 'play', 'retrieve', 'praise'] as const;
export const EXPECTATION_NAMES = ['none', 'hangs-back', 'stops-unasked'] as const;

/** One thing asked of the dog and how it went. `cause` is left out on `good`; left out elsewhere it means `dog`. */
export const legSchema = v.pipe(
  objectOf({
    skill: skillSchema,
    ask: askSchema,
    grade: oneOf(GRADE_NAMES),
    cause: v.optional(oneOf(CAUSE_NAMES)),
    latencyS: v.optional(numberBetween(0, 60)),
    note: v.optional(text),
    planned: v.optional(askSchema),
  }),
  v.forward(
    v.check((leg) => leg.grade !== 'good' || leg.cause === undefined, 'FIELD_VALUE no cause on a good leg'),
    ['cause'],
  ),
);
export type Leg = v.InferOutput<typeof legSchema>;

/** A leg as planned, not yet graded. */
export const plannedLegSchema = objectOf({ skill: skillSchema, ask: askSchema });
export type PlannedLeg = v.InferOutput<typeof plannedLegSchema>;

const expectation = v.optional(oneOf(EXPECTATION_NAMES));
const reward = v.optional(listOf(oneOf(REWARD_NAMES)));

export const repRecordedSchema = objectOf({
  rep: id,
  session: id,
  legs: listOf(legSchema),
  clean: v.optional(flag),
  layout: v.optional(id),
  dummiesOut: v.optional(numberBetween(0, 100)),
  reward,
  gotItAnyway: v.optional(flag),
  expectation,
  note: v.optional(text),
  chain: v.optional(listOf(plannedLegSchema)),
  purpose: v.optional(text),
  planRep: v.optional(numberBetween(1, 100)),
  fromMemory: v.optional(flag),
});
export type RepRecorded = v.InferOutput<typeof repRecordedSchema>;

export const repAmendedSchema = objectOf({
  rep: id,
  legs: v.optional(listOf(legSchema)),
  clean: v.optional(flag),
  expectation,
  note: v.optional(text),
  reward,
  gotItAnyway: v.optional(flag),
  undoes: v.optional(id),
});
export type RepAmended = v.InferOutput<typeof repAmendedSchema>;

export const repStruckSchema = objectOf({ rep: id, why: v.optional(text), undoes: v.optional(id) });
export type RepStruck = v.InferOutput<typeof repStruckSchema>;

/** Our own kind: a strike is taken back, and the rep stands as before it. */
export const repRestoredSchema = objectOf({ rep: id, undoes: id });
export type RepRestored = v.InferOutput<typeof repRestoredSchema>;

/** Our own kind: the chain of this rep is over (or, with `ended` false, goes on after all). */
export const repEndedSchema = objectOf({ rep: id, ended: v.optional(flag), undoes: v.optional(id) });
export type RepEnded = v.InferOutput<typeof repEndedSchema>;
