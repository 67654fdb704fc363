import type { FilmOfSession } from '@sedgeline/projections';
import { describe, expect, it } from 'vitest';
import { knownFilm, type OpenedFile } from './known-film.ts';

const film = (id: string, more: Partial<FilmOfSession> = {}): FilmOfSession => {
  const file = { name: 'hedge.mp4', bytes: 900, contentHash: 'aa', ...more };
  return filmOfFiles(id, [{ name: file.name, bytes: file.bytes, contentHash: file.contentHash }], more);
};
const filmOfFiles = (
  id: string,
  files: FilmOfSession['files'],
  more: Partial<FilmOfSession> = {},
): FilmOfSession => ({
  film: id,
  session: 's',
  orderKey: { ms: 0, counter: 0, device: '', id },
  ids: [id],
  ...files.at(-1)!,
  files,
  lengthS: 60,
  startsAtMs: null,
  isLinked: true,
  marks: [],
  takenOff: [],
  places: [],
  marked: [],
  ...more,
});
const file = (more: Partial<OpenedFile> = {}): OpenedFile => ({
  name: 'hedge.mp4',
  bytes: 900,
  contentHash: 'aa',
  isHashOver: true,
  ...more,
});
const waiting = { contentHash: null, isHashOver: false };
const kind = (
  films: readonly FilmOfSession[],
  opened: OpenedFile,
  own = 'new',
  wanted: string | null = null,
) => {
  const known = knownFilm(films, opened, own, wanted);
  return 'film' in known ? `${known.kind} ${known.film.film}` : known.kind;
};

describe('which film a file is', () => {
  it('the same bytes are the same film, whatever it is called', () => {
    expect(kind([film('m')], file())).toBe('known m');
    expect(kind([film('m')], file({ name: 'copy of hedge.mp4' }))).toBe('renamed m');
    expect(kind([film('m', { contentHash: 'AA' })], file())).toBe('known m');
  });

  it('another size is another film at once, before anything is hashed', () => {
    expect(kind([film('m')], file({ bytes: 899, ...waiting }))).toBe('fresh');
    expect(kind([film('m')], file({ bytes: 899, ...waiting }), 'new', 'm')).toBe('another');
  });

  it('of the same size nothing is said for sure until the hash is there', () => {
    expect(kind([film('m')], file(waiting), 'new', 'm')).toBe('checking m');
    expect(kind([film('m')], file({ contentHash: 'bb' }), 'new', 'm')).toBe('another');
    expect(kind([film('m')], file({ contentHash: 'bb' }))).toBe('fresh');
  });

  it('a film that was never hashed is known by name and size', () => {
    const unhashed = film('m', { contentHash: null });
    expect(kind([unhashed], file())).toBe('by-name m');
    expect(kind([unhashed], file({ name: 'field.mp4' }))).toBe('fresh');
  });

  it('a file that can’t be hashed is known by name and size, and by nothing less', () => {
    expect(kind([film('m')], file({ contentHash: null }))).toBe('by-name m');
    expect(kind([film('m')], file({ contentHash: null, name: 'field.mp4' }))).toBe('fresh');
  });

  it('each of the files that were said to hold a film is that film', () => {
    const two = filmOfFiles('m', [
      { name: 'hedge.mp4', bytes: 900, contentHash: 'aa' },
      { name: 'shared.mp4', bytes: 500, contentHash: 'bb' },
    ]);
    expect(kind([two], file())).toBe('known m');
    expect(kind([two], file({ name: 'shared.mp4', bytes: 500, contentHash: 'bb' }))).toBe('known m');
    expect(kind([two], file({ bytes: 500 }))).toBe('fresh');
  });

  it('a film that was taken off is told, and one that stands goes before it', () => {
    const off = film('m', { isLinked: false });
    expect(kind([off], file())).toBe('taken-off m');
    expect(kind([off, film('n')], file())).toBe('known n');
    expect(kind([off], file(waiting))).toBe('fresh');
  });

  it('what was linked from this very file is itself, hashed or not', () => {
    expect(kind([film('new', { contentHash: null })], file(waiting))).toBe('own new');
    expect(kind([film('m', { ids: ['m', 'new'] })], file(waiting))).toBe('own m');
  });
});
