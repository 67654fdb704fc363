import { openAsBlob } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type FilmFrame, readFilmIndex } from './film-reader.ts';
import { filmTakenAt } from './film-taken-at.ts';

const film = (name: string) => openAsBlob(fileURLToPath(new URL(`../../e2e/films/${name}`, import.meta.url)));

async function indexOf(name: string) {
  const index = await readFilmIndex(await film(name));
  if (typeof index === 'string') throw new Error(`${name}: expected an index, got ${index}`);
  return index;
}

/** Walks a film frame by frame, as the keys do. */
async function walk(name: string): Promise<FilmFrame[]> {
  const index = await indexOf(name);
  const frames: FilmFrame[] = [];
  for (let at: number | null = 0; at !== null; at = frames.at(-1)!.nextS)
    frames.push(await index.frameAt(at));
  index.close();
  return frames;
}

/** What `make-films.mjs` drew: the times that ffprobe reads from the files too, to the millisecond of WebM. */
const UNEVEN_MS = Array.from({ length: 80 }, (_, n) => Math.floor(n / 4) * 220 + [0, 17, 67, 100][n % 4]!);

describe('the frames of a film, by its index', () => {
  it('uneven frames: each at its own time, none twice, none left out', async () => {
    const frames = await walk('uneven.webm');
    expect(frames.map(({ startS }) => Math.round(startS * 1000))).toEqual(UNEVEN_MS);
    expect(frames.map(({ beforeS }) => beforeS)).toEqual([
      null,
      ...frames.slice(0, -1).map(({ startS }) => startS),
    ]);
  });

  it('frames stored out of order are walked in the order in which they are shown', async () => {
    const frames = await walk('squares.mp4');
    expect(frames.map(({ startS }) => Math.round(startS * 1000))).toEqual(
      Array.from({ length: 100 }, (_, n) => n * 40),
    );
  });

  it('two hours long: the frame of any moment, without a walk', async () => {
    const index = await indexOf('two-hours.webm');
    expect(index.lengthS).toBe(7220);
    expect(await index.frameAt(7000.5)).toEqual({ startS: 7000, nextS: 7020, beforeS: 6980 });
    expect(await index.frameAt(99_999)).toEqual({ startS: 7200, nextS: null, beforeS: 7180 });
    expect(await index.frameAt(0)).toEqual({ startS: 0, nextS: 20, beforeS: null });
  });

  it('tells coding, sound and when it was taken', async () => {
    expect(await indexOf('squares.webm')).toMatchObject({ coding: 'vp8', hasSound: true });
    expect(await indexOf('uneven.webm')).toMatchObject({ coding: 'vp9', hasSound: false });
    expect(await indexOf('squares.mp4')).toMatchObject({ coding: 'avc', hasSound: true });
    expect(await indexOf('hevc.mp4')).toMatchObject({ coding: 'hevc', hasSound: false });
    expect(await filmTakenAt(await film('squares.mp4'))).toBe(Date.parse('2026-03-01T09:00:00Z'));
    expect(await filmTakenAt(await film('squares.webm'))).toBeNull();
    expect(await filmTakenAt(await film('hevc.mp4'))).toBeNull();
  });

  it('says what is no film, and what has no picture', async () => {
    expect(await readFilmIndex(new Blob(['this is no film']))).toBe('unreadable');
    expect(await readFilmIndex(new Blob([]))).toBe('unreadable');
    expect(await readFilmIndex(await film('only-sound.webm'))).toBe('no-picture');
    expect(await filmTakenAt(new Blob(['this is no film at all, not even a box']))).toBeNull();
  });

  it('a film that is cut anywhere is read or refused, and never hangs or throws', async () => {
    for (const name of ['squares.mp4', 'squares.webm', 'uneven.webm']) {
      const whole = await film(name);
      for (let bytes = 0; bytes < whole.size; bytes += Math.ceil(whole.size / 40)) {
        const cut = whole.slice(0, bytes);
        expect([null, Date.parse('2026-03-01T09:00:00Z')]).toContain(await filmTakenAt(cut));
        const index = await readFilmIndex(cut);
        if (typeof index === 'string') continue;
        expect((await index.frameAt(index.lengthS)).nextS).toBeNull();
        index.close();
      }
    }
  });
});
