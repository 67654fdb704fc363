import type { RepRecord } from '../record/training-record.ts';
import type { FilmRecord } from './film-record.ts';

/** How it is known where a rep lies on a film. */
export type PlaceFrom = 'marked' | 'other-reps' | 'file-time' | 'unknown';

/** Where on a film a rep is to be looked for. */
export interface RepPlace {
  readonly rep: string;
  readonly from: PlaceFrom;
  /** Seconds into the film; `null` where nothing tells, or it lies outside. */
  readonly atS: number | null;
  /** The rep was worked before the film began or after it ended, as far as the clocks tell. */
  readonly isOutside: boolean;
}

/** Looked for from so long before a rep was written down, unless another was written down since (our judgement, 2026). */
const BEFORE_TAP_S = 60;
/** Looked for from so long before the moment that is expected or marked (our judgement, 2026). */
const LEAD_S = 3;

type WorkedRep = Pick<RepRecord, 'rep' | 'atMs' | 'fromMemory'>;

/**
 * Where each rep lies on a film, as far as that is known. Marks tell at once. Where the send of another rep is marked, a rep is
 * expected as long after its own first tap's time as was usual there: `sent = tap - median(tap - sent)`. Else the time that the
 * file gives its first frame, from which only a stretch before the tap is known. A rep put in from memory has no time of its own.
 */
export function placesOnFilm(film: FilmRecord, reps: readonly WorkedRep[]): readonly RepPlace[] {
  const lags = reps.flatMap(({ rep, atMs, fromMemory }) => {
    const sent = film.marks.find((mark) => mark.rep === rep && mark.what === 'sent');
    return sent === undefined || fromMemory ? [] : [atMs / 1000 - sent.atS];
  });
  const lagS = median(lags);
  return reps.map(({ rep, atMs, fromMemory }, n): RepPlace => {
    const marked = film.marks.find((mark) => mark.rep === rep);
    if (marked !== undefined)
      return { rep, from: 'marked', atS: Math.max(0, marked.atS - LEAD_S), isOutside: false };
    if (fromMemory) return { rep, from: 'unknown', atS: null, isOutside: false };
    if (lagS !== null) return within(rep, 'other-reps', atMs / 1000 - lagS, LEAD_S, film);
    if (film.startsAtMs === null) return { rep, from: 'unknown', atS: null, isOutside: false };
    const tapS = (atMs - film.startsAtMs) / 1000;
    const before = reps.slice(0, n).findLast((one) => !one.fromMemory);
    const sinceS = before === undefined ? BEFORE_TAP_S : Math.max(0, (atMs - before.atMs) / 1000);
    return within(rep, 'file-time', tapS, Math.min(sinceS, BEFORE_TAP_S), film);
  });
}

function within(rep: string, from: PlaceFrom, momentS: number, leadS: number, film: FilmRecord): RepPlace {
  const isOutside = momentS < 0 || (film.lengthS !== null && momentS - leadS > film.lengthS);
  return { rep, from, atS: isOutside ? null : Math.max(0, momentS - leadS), isOutside };
}

function median(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
