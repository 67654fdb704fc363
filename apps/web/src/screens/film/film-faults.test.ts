import { describe, expect, it } from 'vitest';
import type { FilmIndex } from '../../devices/film-reader.ts';
import { filmFaults } from './film-faults.ts';

const index = (more: Partial<FilmIndex> = {}): FilmIndex => ({
  coding: 'vp9',
  hasSound: true,
  lengthS: 60,
  frameAt: () => Promise.reject(new Error('not asked here')),
  close: () => undefined,
  ...more,
});
const shown = { picture: 'there', brokenAtS: null, lengthS: 60.4 } as const;

describe('what is wrong with a film', () => {
  it('nothing, with a picture, sound, and as long as it says', () => {
    expect(filmFaults(index(), shown)).toEqual([]);
    expect(filmFaults('reading', { ...shown, picture: 'waiting' })).toEqual([]);
  });

  it('no picture: for want of one, of a coding, or of a film', () => {
    const none = { ...shown, picture: 'none' } as const;
    expect(filmFaults('no-picture', none)).toEqual(['no-picture']);
    expect(filmFaults(index({ coding: 'hevc', hasSound: false }), none)).toEqual(['cannot-show']);
    expect(filmFaults('unreadable', none)).toEqual(['not-a-film']);
  });

  it('a picture without frames that can be counted', () => {
    expect(filmFaults('unreadable', shown)).toEqual(['no-index']);
  });

  it('cut short by more than a second, broken off, silent', () => {
    expect(filmFaults(index({ lengthS: 59 }), shown)).toEqual(['cut-short']);
    expect(filmFaults(index({ hasSound: false }), { ...shown, brokenAtS: 3 })).toEqual([
      'breaks-off',
      'no-sound',
    ]);
  });
});
