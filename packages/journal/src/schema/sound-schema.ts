import * as v from 'valibot';
import { flag, id, listOf, moment, numberBetween, oneOf, text } from './fields.ts';
import { objectOf } from './object-of.ts';

/** The longest sound that is meant: a day. */
const LONGEST_S = 86_400;
const onSound = numberBetween(0, LONGEST_S);
const share = numberBetween(0, 1);

const whistleSchema = objectOf({
  startS: onSound,
  endS: onSound,
  kind: oneOf(['long', 'pip']),
  pitchHz: numberBetween(100, 20_000),
  sureness: v.optional(share),
});

const clickSchema = objectOf({ timeS: onSound, sureness: v.optional(share) });

/** Our own kind: what was heard in a sound of a session. The sound itself is in no journal; it may lie on the device under this id. */
export const soundHeardSchema = objectOf({
  sound: id,
  session: id,
  from: oneOf(['file', 'microphone']),
  name: text,
  lengthS: onSound,
  startsAt: v.optional(moment),
  bytes: v.optional(numberBetween(0, Number.MAX_SAFE_INTEGER)),
  sha256: v.optional(text),
  whistles: listOf(whistleSchema),
  clicks: listOf(clickSchema),
});
export type SoundHeard = v.InferOutput<typeof soundHeardSchema>;

const joinSchema = objectOf({
  rep: id,
  leg: v.optional(numberBetween(0, 100)),
  atS: onSound,
  by: oneOf(['program', 'handler']),
});

/** Our own kind: which of what was heard belongs to which rep, as the handler let it stand. The latest one of a sound counts whole. */
export const soundJoinedSchema = objectOf({ sound: id, session: id, joins: listOf(joinSchema) });
export type SoundJoined = v.InferOutput<typeof soundJoinedSchema>;

/** Our own kind: what was heard counts for nothing (or, with `stands`, does after all). */
export const soundDroppedSchema = objectOf({ sound: id, session: id, stands: v.optional(flag) });
export type SoundDropped = v.InferOutput<typeof soundDroppedSchema>;
