import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import webvtt from 'webvtt-parser';
import entities from 'webvtt-parser/html-entities.json';
import { clipsOfFilm } from './clips-of-film.ts';
import { captionsOfFilm } from './film-captions.ts';
import type { FilmRecord } from './film-record.ts';
import { csvText } from './write-csv.ts';
import { filmTime, shownLines, vttText } from './write-vtt.ts';

/** Texts that have broken writers of these formats before. */
const HOSTILE = [
  '-->',
  '00:00:01.000 --> 00:00:02.000',
  'a\n\nb',
  'a\r\nb\rc',
  'WEBVTT',
  'NOTE not a note',
  'STYLE\n::cue { color: red }',
  '<script>alert(1)</script>',
  '<c.wren>Wren</c>',
  '&amp; &lt; &nbsp; & &bogus;',
  '\u0000\u0007',
  '\ufeffWren',
  '"quoted", "twice""',
  '=1+1',
  ' leading and trailing ',
  '',
  'Grünau 🐕 犬',
];
const hostile = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.string({ unit: 'grapheme' }),
  fc
    .array(fc.constantFrom(...HOSTILE, '\n', '\r', ',', '"'), { maxLength: 6 })
    .map((parts) => parts.join('')),
);
const momentS = fc.integer({ min: 0, max: 400_000_000 }).map((ms) => ms / 1000);
const cue = fc
  .record({
    startS: momentS,
    lengthS: fc.integer({ min: 1, max: 60_000 }).map((ms) => ms / 1000),
    text: hostile,
  })
  .map(({ startS, lengthS, text }) => ({ startS, endS: startS + lengthS, text }));

/** What the judge reads: it knows no references but the spec's, and hands back the text they stand for. */
function readBack(vtt: string) {
  const { cues, errors } = new webvtt.WebVTTParser(entities).parse(vtt, 'metadata');
  return { cues, errors };
}
const toMs = (s: number): number => Math.round(s * 1000);
const unescaped = (text: string) =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');

describe('WebVTT, read back by another program', () => {
  it('has the cues that were written, whatever their texts hold', () => {
    fc.assert(
      fc.property(fc.array(cue, { maxLength: 8 }), (cues) => {
        const { cues: read, errors } = readBack(vttText(cues));
        expect(errors).toEqual([]);
        // By their start, then the longer first, as the standard orders them.
        const wanted = cues.toSorted(
          (a, b) => toMs(a.startS) - toMs(b.startS) || toMs(b.endS) - toMs(a.endS),
        );
        expect(read.map(({ text }) => unescaped(text).split('\n'))).toEqual(
          wanted.map(({ text }) => (shownLines(text).length === 0 ? ['-'] : shownLines(text))),
        );
        read.forEach(({ startTime, endTime }, n) => {
          // Half a millisecond: the format has no finer times.
          expect(Math.abs(startTime - wanted[n]!.startS)).toBeLessThan(0.0006);
          expect(endTime).toBeGreaterThan(startTime);
        });
      }),
      { numRuns: 400 },
    );
  });

  it('every text is a plain text to the judge of captions and of chapters too: no tag, no reference it does not know', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const vtt = vttText([{ startS: 0, endS: 1, text }]);
        for (const mode of ['captions', 'chapters'] as const) {
          const { cues, errors } = new webvtt.WebVTTParser(entities).parse(vtt, mode);
          expect(errors).toEqual([]);
          const texts = cues[0]?.tree.children.map(({ type, value }) => [type, value]);
          expect(texts).toEqual([['text', shownLines(text).join('\n') || '-']]);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('a film of a whole day, by hand', () => {
    const day = vttText([{ startS: 86_399.9996, endS: 86_400, text: 'Last' }]);
    expect(day).toBe('WEBVTT\n\n24:00:00.000 --> 24:00:00.001\nLast\n');
    expect(filmTime(3725.5)).toBe('01:02:05.500');
  });

  it('a time that is none is the caller’s bug', () => {
    for (const startS of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => vttText([{ startS, endS: 1, text: 'x' }])).toThrow(RangeError);
    }
  });
});

describe('the clip list, read back by another program', () => {
  it('has the fields that were written', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(hostile, { minLength: 5, maxLength: 5 }), { minLength: 1, maxLength: 6 }),
        (rows) => {
          const { data, errors } = Papa.parse<string[]>(csvText(rows), { delimiter: ',', newline: '\r\n' });
          expect(errors).toEqual([]);
          // A line end after the last record, as the standard has it, is read as a last empty record.
          expect(data).toEqual([...rows, ['']]);
        },
      ),
      { numRuns: 400 },
    );
  });

  it('by hand, after RFC 4180, 2.5 to 2.7', () => {
    expect(csvText([['a', 'b "c"', 'd,e', 'f\ng']])).toBe('a,"b ""c""","d,e","f\ng"\r\n');
  });
});

const filmOf = (marks: readonly { readonly rep: string; readonly atS: number }[], lengthS: number | null) =>
  ({
    lengthS,
    marks: marks
      .map((mark, n) => ({
        ...mark,
        mark: `k${n}`,
        film: 'm',
        what: 'sent' as const,
        frameS: 0.04,
        heard: false,
      }))
      .sort((a, b) => a.atS - b.atS),
  }) as unknown as FilmRecord;

describe('clips and captions: laws', () => {
  const REPS = ['a', 'b', 'c', 'd'];
  const marks = fc.array(
    fc.record({
      rep: fc.constantFrom(...REPS, 'taken-out'),
      atS: fc.double({ min: 0, max: 120, noNaN: true }),
    }),
    { maxLength: 12 },
  );

  it('every marked rep has one clip, none overlap, all lie on the film, and each begins by its first mark', () => {
    fc.assert(
      fc.property(marks, fc.option(fc.constant(121)), (some, lengthS) => {
        const clips = clipsOfFilm(filmOf(some, lengthS), REPS);
        const wanted = new Set(some.map(({ rep }) => rep).filter((rep) => REPS.includes(rep)));
        expect(new Set(clips.map(({ rep }) => rep))).toEqual(wanted);
        expect(clips).toHaveLength(wanted.size);
        clips.forEach(({ rep, inS, outS }, n) => {
          expect(outS).toBeGreaterThan(inS);
          expect(inS).toBeGreaterThanOrEqual(clips[n - 1]?.outS ?? 0);
          const firstS = Math.min(...some.filter((mark) => mark.rep === rep).map(({ atS }) => atS));
          // A millisecond for each clip before it, where several reps are marked in one and the same frame.
          expect(inS).toBeLessThanOrEqual(firstS + 0.001 * n + 1e-9);
          if (lengthS !== null) expect(outS).toBeLessThanOrEqual(lengthS);
        });
      }),
      { numRuns: 500 },
    );
  });

  it('apart, reps have two seconds before and after; close by, they are parted half-way', () => {
    const film = filmOf(
      [
        { rep: 'a', atS: 10 },
        { rep: 'a', atS: 20 },
        { rep: 'b', atS: 23 },
        { rep: 'c', atS: 60 },
      ],
      61,
    );
    expect(clipsOfFilm(film, REPS)).toEqual([
      { rep: 'a', inS: 8, outS: 21.5 },
      { rep: 'b', inS: 21.5, outS: 25 },
      { rep: 'c', inS: 58, outS: 61 },
    ]);
  });

  it('every mark of a rep that stands is in one caption, which begins in its frame and never reaches into the next', () => {
    fc.assert(
      fc.property(marks, (some) => {
        const film = filmOf(some, null);
        const captions = captionsOfFilm(film, REPS);
        expect(captions.flatMap((caption) => caption.marks)).toEqual(
          film.marks.filter(({ rep }) => REPS.includes(rep)),
        );
        captions.forEach(({ startS, endS, marks: shown }, n) => {
          expect(shown.every(({ atS }) => atS === startS)).toBe(true);
          expect(endS).toBeGreaterThan(startS);
          expect(endS).toBeLessThanOrEqual(captions[n + 1]?.startS ?? Number.POSITIVE_INFINITY);
        });
      }),
    );
  });
});
