import * as v from 'valibot';
import { flag, id, moment, numberBetween, oneOf, text } from './fields.ts';
import { objectOf } from './object-of.ts';

/** What a mark on a film says was seen. */
export const FILM_MARK_NAMES = ['sent', 'whistle', 'halt', 'cast', 'pick-up', 'delivery'] as const;
export type FilmMarkName = (typeof FILM_MARK_NAMES)[number];

/** The longest film that is meant: a day. */
const LONGEST_S = 86_400;

/**
 * Our own kind: a film shows a session. The film itself stays where it is and is in no journal; it is known again by its size and
 * hash. A later fact of the same film says what has been found out since.
 */
export const filmLinkedSchema = objectOf({
  film: id,
  session: id,
  name: text,
  bytes: numberBetween(0, Number.MAX_SAFE_INTEGER),
  contentHash: v.optional(text),
  lengthS: v.optional(numberBetween(0, LONGEST_S)),
  startsAt: v.optional(moment),
});
export type FilmLinked = v.InferOutput<typeof filmLinkedSchema>;

/** Our own kind: the film is no film of this session (or, with `stands`, is one after all). */
export const filmUnlinkedSchema = objectOf({ film: id, session: id, stands: v.optional(flag) });
export type FilmUnlinked = v.InferOutput<typeof filmUnlinkedSchema>;

/** Our own kind: something is seen in one frame of a film. A later fact of the same mark says where it belongs after all. */
export const filmMarkedSchema = objectOf({
  mark: id,
  film: id,
  rep: id,
  what: oneOf(FILM_MARK_NAMES),
  atS: numberBetween(0, LONGEST_S),
  frameS: numberBetween(0, 60),
  heard: v.optional(flag),
});
export type FilmMarked = v.InferOutput<typeof filmMarkedSchema>;

/** Our own kind: a mark was taken off (or, with `stands`, is put back). */
export const filmUnmarkedSchema = objectOf({ mark: id, film: id, rep: id, stands: v.optional(flag) });
export type FilmUnmarked = v.InferOutput<typeof filmUnmarkedSchema>;
