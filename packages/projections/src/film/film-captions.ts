import type { FilmMark, FilmRecord } from './film-record.ts';

/** Marks to be read while a stretch of the film is shown, seconds. */
export interface FilmCaption {
  readonly startS: number;
  readonly endS: number;
  readonly marks: readonly FilmMark[];
}

/** How long a mark stays to be read (our judgement, 2026). */
const SHOWN_S = 2;

/**
 * A caption for each moment of the film that has a mark of one of `reps`, by time: from that frame until the next mark, at
 * most two seconds. Marks of one frame stand in one caption.
 */
export function captionsOfFilm(film: FilmRecord, reps: readonly string[]): readonly FilmCaption[] {
  const shown = film.marks.filter(({ rep }) => reps.includes(rep));
  const moments = [...new Set(shown.map(({ atS }) => atS))];
  return moments.map((atS, n) => ({
    startS: atS,
    endS: Math.min(moments[n + 1] ?? Number.POSITIVE_INFINITY, atS + SHOWN_S),
    marks: shown.filter((mark) => mark.atS === atS),
  }));
}
