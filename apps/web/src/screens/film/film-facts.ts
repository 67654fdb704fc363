import type { FilmMark, FilmOfSession, HeardWhistle, TapFact } from '@sedgeline/projections';
import type { MarkedFrame } from './film-player.ts';

/** What is known of a file as it joins a session, or is found out of it since. */
export interface FilmSaid {
  readonly film: string;
  readonly session: string;
  readonly name: string;
  readonly bytes: number;
  readonly contentHash: string | null;
  readonly lengthS: number | null;
  readonly startsAtMs: number | null;
}

/** The fact that a film shows a session; what is not known is left out. */
export function linkFact({ contentHash, lengthS, startsAtMs, ...said }: FilmSaid): TapFact {
  return {
    kind: 'film-linked',
    body: {
      ...said,
      ...(contentHash === null ? {} : { contentHash }),
      ...(lengthS === null ? {} : { lengthS }),
      ...(startsAtMs === null ? {} : { startsAt: new Date(startsAtMs).toISOString() }),
    },
  };
}

/** What a film on record lacks and the open file tells; `null` where it lacks nothing. */
export function moreOfFilm(film: FilmOfSession, said: FilmSaid): TapFact | null {
  const isMore = (['contentHash', 'lengthS', 'startsAtMs'] as const).some(
    (key) => film[key] === null && said[key] !== null,
  );
  return isMore ? linkFact({ ...said, film: film.film, name: film.name }) : null;
}

/** Every id under which a film was linked is taken off, or stands again. */
export const unlinkFacts = (film: FilmOfSession, stands: boolean): readonly TapFact[] =>
  film.ids.map((id) => ({
    kind: 'film-unlinked',
    body: { film: id, session: film.session, ...(stands ? { stands } : {}) },
  }));

/** Something is seen in a frame; said again of the same mark, it is moved there. */
export const markFact = (mark: Omit<FilmMark, 'atS' | 'frameS' | 'heard'>, frame: MarkedFrame): TapFact => ({
  kind: 'film-marked',
  body: { mark: mark.mark, film: mark.film, rep: mark.rep, what: mark.what, ...frame },
});

/** What was heard lies within this of the true moment, seconds (the aim of docs/sound-study.md). */
const HEARD_WITHIN_S = 0.05;

/** A whistle that was heard in the film's own sound. */
export const heardFact = (mark: string, film: string, { rep, atS }: HeardWhistle): TapFact => ({
  kind: 'film-marked',
  body: { mark, film, rep, what: 'whistle', atS, frameS: HEARD_WITHIN_S, heard: true },
});

/** A mark is taken off, or put back. */
export const unmarkFact = (
  { mark, film, rep }: Pick<FilmMark, 'mark' | 'film' | 'rep'>,
  stands: boolean,
): TapFact => ({
  kind: 'film-unmarked',
  body: { mark, film, rep, ...(stands ? { stands } : {}) },
});
