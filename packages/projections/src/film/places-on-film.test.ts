import { describe, expect, it } from 'vitest';
import type { FilmMark, FilmRecord } from './film-record.ts';
import { placesOnFilm } from './places-on-film.ts';

const NINE_MS = Date.parse('2026-03-01T09:00:00Z');
/** Reps written down at 9:01, 9:02:30 and 9:20, and one put in from memory. */
const REPS = [
  { rep: 'a', atMs: NINE_MS + 60_000, fromMemory: false },
  { rep: 'b', atMs: NINE_MS + 150_000, fromMemory: false },
  { rep: 'c', atMs: NINE_MS + 1_200_000, fromMemory: false },
  { rep: 'd', atMs: NINE_MS + 1_200_001, fromMemory: true },
];
const film = (more: Partial<FilmRecord>): FilmRecord => ({
  film: 'm',
  session: 's',
  orderKey: { ms: 0, counter: 0, device: '', id: 'm' },
  ids: ['m'],
  name: 'hedge.mp4',
  bytes: 1,
  contentHash: null,
  files: [],
  lengthS: 600,
  startsAtMs: null,
  isLinked: true,
  marks: [],
  takenOff: [],
  ...more,
});
const sent = (rep: string, atS: number): FilmMark => ({
  mark: `sent-${rep}`,
  film: 'm',
  rep,
  what: 'sent',
  atS,
  frameS: 0.04,
  heard: false,
});
const place = (found: ReturnType<typeof placesOnFilm>, rep: string) => found.find((one) => one.rep === rep);

describe('where a rep is to be looked for on a film', () => {
  it('nowhere in particular where nothing tells', () => {
    for (const found of placesOnFilm(film({}), REPS)) {
      expect(found).toMatchObject({ from: 'unknown', atS: null, isOutside: false });
    }
  });

  it('by one send that is marked: as long before its tap as there', () => {
    // Rep a was sent 40 s into the film and written down at 9:01; rep b was written down 90 s later: sent at about 130 s.
    const found = placesOnFilm(film({ marks: [sent('a', 40)] }), REPS);
    expect(place(found, 'a')).toMatchObject({ from: 'marked', atS: 37 });
    expect(place(found, 'b')).toMatchObject({ from: 'other-reps', atS: 127, isOutside: false });
    // Rep c would be 1180 s in, and the film ends at 600 s.
    expect(place(found, 'c')).toMatchObject({ from: 'other-reps', atS: null, isOutside: true });
    expect(place(found, 'd')).toMatchObject({ from: 'unknown', atS: null });
  });

  it('by the time of the file: the stretch before the tap, since the rep before', () => {
    // The film began at 9:01:30: before it rep a was over; rep b was written down 60 s in, 90 s after rep a.
    const found = placesOnFilm(film({ startsAtMs: NINE_MS + 90_000 }), REPS);
    expect(place(found, 'a')).toMatchObject({ from: 'file-time', atS: null, isOutside: true });
    expect(place(found, 'b')).toMatchObject({ from: 'file-time', atS: 0, isOutside: false });
    const longer = placesOnFilm(film({ startsAtMs: NINE_MS, lengthS: 3000 }), REPS);
    expect(place(longer, 'b')?.atS).toBe(90);
    expect(place(longer, 'c')?.atS).toBe(1140);
  });

  it('marks go before the time of the file, which a camera may have wrong', () => {
    const found = placesOnFilm(film({ startsAtMs: NINE_MS + 3_600_000, marks: [sent('a', 40)] }), REPS);
    expect(place(found, 'b')).toMatchObject({ from: 'other-reps', atS: 127 });
  });
});
