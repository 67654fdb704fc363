import * as v from 'valibot';
import { id, numberBetween, text } from './fields.ts';
import { objectOf } from './object-of.ts';

/** Our own kind: something was said of a rep. The sound itself stays on the device that heard it, under this id. */
export const voiceNotedSchema = objectOf({
  voice: id,
  rep: id,
  lengthS: numberBetween(0, 3600),
  bytes: numberBetween(0, 1e9),
  sha256: text,
  type: v.optional(text),
});
export type VoiceNoted = v.InferOutput<typeof voiceNotedSchema>;

/** Our own kind: a voice note was thrown away. */
export const voiceDroppedSchema = objectOf({ voice: id, rep: id });
export type VoiceDropped = v.InferOutput<typeof voiceDroppedSchema>;
