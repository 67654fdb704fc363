import type { Fact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { foldRecord } from '../record/record-builder.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';

const MARK = { film: 'm', rep: 'a', what: 'halt', atS: 12, frameS: 0.04 };
const FILM = { session: 's', name: 'hedge.mp4', bytes: 900 };

/** A session with one rep and a film, and whatever a test adds to it. */
const dayWithFilm = () =>
  new TrainingDay('2026-03-01T08:00:00Z')
    .dog('wren')
    .open('s', 'wren')
    .rep([{ skill: 'stop' }], { rep: 'a' })
    .write('film-linked', { film: 'm', ...FILM, contentHash: 'aa' });

/** The only film, the same whichever way round the facts arrive. */
function onlyFilm(facts: readonly Fact[]) {
  const record = foldRecord(facts);
  expect(foldRecord(facts.toReversed()).films).toEqual(record.films);
  expect(record.films).toHaveLength(1);
  return record.films[0]!;
}

describe('films and what is marked on them', () => {
  it('a mark stands, is taken off, and put back', () => {
    const day = dayWithFilm().write('film-marked', { mark: 'k', ...MARK });
    expect(onlyFilm(day.facts)).toMatchObject({
      marks: [{ mark: 'k', atS: 12, heard: false }],
      takenOff: [],
    });
    day.write('film-unmarked', { mark: 'k', film: 'm', rep: 'a' });
    expect(onlyFilm(day.facts)).toMatchObject({ marks: [], takenOff: [{ mark: 'k' }] });
    day.write('film-unmarked', { mark: 'k', film: 'm', rep: 'a', stands: true });
    expect(onlyFilm(day.facts)).toMatchObject({ marks: [{ mark: 'k' }], takenOff: [] });
  });

  it('a mark is where it was put last', () => {
    const day = dayWithFilm()
      .write('film-marked', { mark: 'k', ...MARK })
      .write('film-marked', { mark: 'k', ...MARK, what: 'whistle', atS: 11.96 });
    expect(onlyFilm(day.facts).marks).toMatchObject([{ mark: 'k', what: 'whistle', atS: 11.96 }]);
  });

  it('what is found out later is added, and what a later fact leaves out stays', () => {
    const day = dayWithFilm().write('film-linked', {
      film: 'm',
      ...FILM,
      name: 'hedge (1).mp4',
      lengthS: 61,
    });
    expect(onlyFilm(day.facts)).toMatchObject({ name: 'hedge (1).mp4', contentHash: 'aa', lengthS: 61 });
  });

  it('another file that was said to hold it is one of its files, and the first is not forgotten', () => {
    const day = dayWithFilm().write('film-linked', { film: 'm', ...FILM, bytes: 500, contentHash: 'bb' });
    expect(onlyFilm(day.facts)).toMatchObject({
      bytes: 500,
      contentHash: 'bb',
      files: [
        { bytes: 900, contentHash: 'aa' },
        { bytes: 500, contentHash: 'bb' },
      ],
    });
  });

  it('one file linked on two devices is one film with the marks of both', () => {
    const day = dayWithFilm()
      .write('film-marked', { mark: 'k', ...MARK })
      .write('film-linked', {
        film: 'm-of-another',
        ...FILM,
        name: 'copy.mp4',
        contentHash: 'AA',
        lengthS: 61,
      })
      .write('film-marked', { mark: 'l', ...MARK, film: 'm-of-another', atS: 3 });
    const film = onlyFilm(day.facts);
    expect(film).toMatchObject({ film: 'm', name: 'hedge.mp4', lengthS: 61, ids: ['m', 'm-of-another'] });
    expect(film.marks.map(({ mark }) => mark)).toEqual(['l', 'k']);
  });

  it('the same file is another film in another session, and so is a file that nobody hashed', () => {
    const day = dayWithFilm()
      .open('t', 'wren')
      .write('film-linked', { film: 'm2', ...FILM, session: 't', contentHash: 'aa' })
      .write('film-linked', { film: 'm3', ...FILM });
    expect(foldRecord(day.facts).films.map(({ film }) => film)).toEqual(['m', 'm2', 'm3']);
  });

  it('an unlinked film keeps its marks and comes back with them', () => {
    const day = dayWithFilm()
      .write('film-marked', { mark: 'k', ...MARK })
      .write('film-unlinked', { film: 'm', session: 's' });
    expect(onlyFilm(day.facts)).toMatchObject({ isLinked: false, marks: [{ mark: 'k' }] });
    day.write('film-unlinked', { film: 'm', session: 's', stands: true });
    expect(onlyFilm(day.facts).isLinked).toBe(true);
  });

  it('what hangs on a session, rep or film that is not there is set aside, and counted once', () => {
    const day = dayWithFilm()
      .write('film-linked', { film: 'x', ...FILM, session: 'nowhere' })
      .write('film-marked', { mark: 'k1', ...MARK, film: 'x' })
      .write('film-marked', { mark: 'k2', ...MARK, film: 'unheard-of' })
      .write('film-marked', { mark: 'k3', ...MARK, rep: 'unheard-of' })
      .write('film-unmarked', { mark: 'k4', film: 'm', rep: 'a' });
    expect(foldRecord(day.facts)).toMatchObject({ setAside: 5, unknown: 0, facts: 9 });
  });
});
