import * as v from 'valibot';
import { askSchema, skillSchema } from './ask-schema.ts';
import { date, flag, id, listOf, numberBetween, oneOf, text } from './fields.ts';
import { objectOf } from './object-of.ts';

export const handlerAddedSchema = objectOf({
  handler: id,
  name: text,
  reactionS: v.optional(numberBetween(0, 10)),
});
export type HandlerAdded = v.InferOutput<typeof handlerAddedSchema>;

export const dogAddedSchema = objectOf({
  dog: id,
  name: text,
  born: v.optional(date),
  sex: v.optional(text),
  breed: v.optional(text),
  weightKg: v.optional(numberBetween(0, 200)),
  runSpeedMPerS: v.optional(numberBetween(0, 30)),
});
export type DogAdded = v.InferOutput<typeof dogAddedSchema>;

export const groundAddedSchema = objectOf({
  ground: id,
  name: text,
  latDeg: v.optional(numberBetween(-90, 90)),
  lonDeg: v.optional(numberBetween(-180, 180)),
  note: v.optional(text),
});
export type GroundAdded = v.InferOutput<typeof groundAddedSchema>;

/** One thing a goal asks for: a skill, how hard, and the wanted chance of a good leg (0..1). */
export const goalAskSchema = objectOf({ skill: skillSchema, ask: askSchema, chance: numberBetween(0, 1) });
export type GoalAsk = v.InferOutput<typeof goalAskSchema>;

export const goalSetSchema = objectOf({
  goal: id,
  dog: id,
  name: text,
  asks: listOf(goalAskSchema),
  by: v.optional(date),
});
export type GoalSet = v.InferOutput<typeof goalSetSchema>;

/** Our own kind: a dog that is not to be worked for now, or (with `over`) is again. The latest one counts. */
export const dogRestedSchema = objectOf({
  dog: id,
  until: v.optional(date),
  over: v.optional(flag),
});
export type DogRested = v.InferOutput<typeof dogRestedSchema>;

/**
 * Our own kind: how far out a dog lately did a skill well, as its handler tells it, and on how strange a ground. The latest one of a dog and
 * skill counts, from its time on; with `withdrawn` nothing is told any more.
 */
export const levelStatedSchema = objectOf({
  dog: id,
  skill: skillSchema,
  farthestM: v.optional(numberBetween(0, 400)),
  ground: v.optional(oneOf(['home', 'known', 'new'])),
  withdrawn: v.optional(flag),
});
export type LevelStated = v.InferOutput<typeof levelStatedSchema>;
