import type { FilmRecord } from './film-record.ts';

/** The stretch of a film that shows a rep, seconds. */
export interface FilmClip {
  readonly rep: string;
  readonly inS: number;
  readonly outS: number;
}

/** What is shown before the first mark of a rep and after its last (our judgement, 2026). */
const LEAD_S = 2;
const TAIL_S = 2;
/** The shortest clip: one millisecond, since WebVTT counts no finer. */
const SHORTEST_S = 0.001;

/**
 * A clip for each rep that has a mark on the film, by time: from a little before its first mark to a little after its last. Clips
 * never overlap: two that would are parted half-way between the last mark of the one and the first of the other, and
 * where marks of two reps are mixed, at the first mark of the later rep. All lie within the film, and are at least a millisecond long.
 * Reps that are not in `reps` (taken out, say) have none.
 */
export function clipsOfFilm(film: FilmRecord, reps: readonly string[]): readonly FilmClip[] {
  const ends = reps.flatMap((rep) => {
    const times = film.marks.filter((mark) => mark.rep === rep).map(({ atS }) => atS);
    return times.length === 0 ? [] : [{ rep, firstS: Math.min(...times), lastS: Math.max(...times) }];
  });
  ends.sort((a, b) => a.firstS - b.firstS);
  const endS = film.lengthS ?? Number.POSITIVE_INFINITY;
  let fromS = 0;
  return ends.map(({ rep, firstS, lastS }, n) => {
    const next = ends[n + 1];
    const inS = Math.max(fromS, firstS - LEAD_S);
    const wantedS = Math.min(lastS + TAIL_S, Math.max(endS, lastS));
    const partedS = next === undefined ? wantedS : Math.min(wantedS, partingS(lastS, next.firstS));
    const outS = Math.max(partedS, inS + SHORTEST_S);
    fromS = outS;
    return { rep, inS, outS };
  });
}

/** Where two reps are parted: half-way, unless each has its own lead and tail. */
function partingS(lastS: number, nextFirstS: number): number {
  if (nextFirstS <= lastS) return nextFirstS;
  return nextFirstS - lastS >= LEAD_S + TAIL_S ? lastS + TAIL_S : (lastS + nextFirstS) / 2;
}
