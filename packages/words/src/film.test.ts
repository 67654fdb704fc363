import { describe, expect, it } from 'vitest';
import { FILM_MARK_CODES, filmMoment, type ToldFigures, type ToldFilm } from './film.ts';
import { words } from './words.ts';

const NOTHING: ToldFigures = {
  marks: 1,
  halts: [],
  out: null,
  back: null,
  untilWhistle: null,
  speedOut: null,
  speedToHalt: null,
  speedBack: null,
};
const time = (s: number, slackS: number) => ({ s, lowS: s - slackS, highS: s + slackS, byHand: true });
const FIGURES: ToldFigures = {
  ...NOTHING,
  marks: 5,
  halts: [{ leg: 1, latency: time(0.84, 0.08), blasts: 2, held: time(1.5, 0.08) }],
  out: time(8, 0.08),
  speedToHalt: { mPerS: 7.5, lowMPerS: 7.29, highMPerS: 7.72, overM: 21 },
};
const FILM: ToldFilm = {
  dogName: 'Wren',
  groundName: 'Long bank',
  atMs: Date.parse('2026-03-01T12:00:00Z'),
  film: 'hedge.mp4',
  lengthS: 842,
  reps: [
    {
      legs: [
        { skill: 'line', ask: {}, grade: 'good' },
        { skill: 'stop', ask: { distanceM: 21 }, grade: 'fair' },
      ],
      marks: Array.from({ length: 5 }, () => ({ heard: false })),
      figures: FIGURES,
    },
    { legs: [{ skill: 'recall', ask: {}, grade: 'good' }], marks: [], figures: null },
  ],
};

describe('moments of a film', () => {
  it.each([
    [0, '0:00.000'],
    [59.9996, '1:00.000'],
    [127.433, '2:07.433'],
    [3727.4, '1:02:07.400'],
    [-1, '0:00.000'],
  ])('%d s is %s', (atS, text) => {
    expect(filmMoment(atS)).toBe(text);
  });

  it('without decimals where they are not wanted', () => {
    expect(filmMoment(7220.4, 0)).toBe('2:00:20');
  });
});

describe('what was seen on a film, in words', () => {
  const { filmFigures } = words();

  it('every mark has a name of its own', () => {
    const names = FILM_MARK_CODES.map((what) => filmFigures.mark(what));
    expect(new Set(names).size).toBe(FILM_MARK_CODES.length);
  });

  it('a figure has its range, and a speed its distance', () => {
    expect(filmFigures.figures(FIGURES)).toEqual([
      'halted 0.84 s (0.76 to 0.92) after the whistle, counted from the first of 2 blasts',
      'held 1.5 s (1.42 to 1.58) before the cast',
      'out 8 s (7.92 to 8.08)',
      'to the halt at 7.5 m/s (7.3 to 7.7) over the 21 m asked',
    ]);
  });

  it('a speed that no dog has is not passed over', () => {
    const speedOut = { mPerS: 60, lowMPerS: 50, highMPerS: null, overM: 60 };
    expect(filmFigures.figures({ ...NOTHING, speedOut })).toEqual([
      'straight out at 60 m/s (50 to more) over the 60 m asked: no dog runs so fast, look at the marks and the distance',
    ]);
  });

  it('in yards a speed is in miles an hour: 7.5 m/s is 16.8 mph', () => {
    const { figures } = words('en-US', 'yards').filmFigures;
    expect(figures({ ...NOTHING, speedToHalt: FIGURES.speedToHalt })[0]).toContain('16.8 mph');
  });

  it('the summary tells every rep, what was timed, how sure it is, and who made the marks', () => {
    const text = filmFigures.summary(FILM);
    expect(text).toContain(
      'Wren, 1 Mar 2026, Long bank\n2 reps; 1 marked on the film hedge.mp4, 14:02 long.',
    );
    expect(text).toContain('Rep 1: ');
    expect(text).toContain('  On film: halted 0.84 s (0.76 to 0.92) after the whistle');
    expect(text).toContain('Rep 2: ');
    expect(text).toContain('One halt timed: 0.84 s (0.76 to 0.92) after the whistle.');
    expect(text).toContain('All 5 marks were made by hand');
    expect(text).toContain('a frame early or late');
    expect(text).toContain('not measured');
  });

  it('says which marks the program heard', () => {
    const [first, ...rest] = FILM.reps;
    const marks = [{ heard: true }, { heard: false }, { heard: false }];
    const told = filmFigures.summary({ ...FILM, reps: [{ ...first!, marks }, ...rest] });
    expect(told).toContain(
      '2 of 3 marks were made by hand, each on a frame of the film; 1 was found by the program',
    );
  });

  it('a name that is no name stays on its line', () => {
    const told = filmFigures.summary({ ...FILM, film: 'a\n\nb.mp4' });
    expect(told).toContain('marked on the film a b.mp4,');
  });

  it('nothing marked is said, and nothing is made up', () => {
    const reps = FILM.reps.map((rep) => ({ ...rep, marks: [], figures: null }));
    const told = filmFigures.summary({ ...FILM, reps });
    expect(told).toContain('Nothing is marked on the film yet.');
    expect(told).not.toContain('by hand');
  });
});
