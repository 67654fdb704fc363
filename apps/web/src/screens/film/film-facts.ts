import type { FilmMark, FilmOfSession, TapFact } from '@sedgeline/projections';
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

/** A mark is taken off, or put back. */
export const unmarkFact = (
  { mark, film, rep }: Pick<FilmMark, 'mark' | 'film' | 'rep'>,
  stands: boolean,
): TapFact => ({
  kind: 'film-unmarked',
  body: { mark, film, rep, ...(stands ? { stands } : {}) },
});
