import {
  captionsOfFilm,
  clipsOfFilm,
  csvText,
  type FilmBenchView,
  type FilmOfSession,
  filmTime,
  vttText,
} from '@sedgeline/projections';
import type { Words } from '@sedgeline/words';

/** A text to hand on, and the file that it is saved as. */
export interface FilmText {
  readonly name: string;
  readonly text: string;
  readonly type: string;
}

type Say = Pick<Words, 'filmFigures'>;

/** What of a file's name may stand in another: its last part without its ending, and no sign that a device would not take. */
function stem(name: string): string {
  const bare = name
    .replace(/\.[^.]*$/, '')
    .replace(/[^\p{L}\p{N} ._-]+/gu, '-')
    .trim();
  return bare === '' ? 'film' : bare.slice(0, 80);
}

const repIds = (view: FilmBenchView): readonly string[] => view.reps.map(({ rep }) => rep);
const numberOf = (view: FilmBenchView, rep: string): number => repIds(view).indexOf(rep) + 1;
const legsOf = (view: FilmBenchView, rep: string) => view.reps.find((one) => one.rep === rep)?.legs ?? [];

/** Chapters as WebVTT: one for each rep that is marked. */
export function chaptersText(view: FilmBenchView, film: FilmOfSession, { filmFigures }: Say): FilmText {
  const cues = clipsOfFilm(film, repIds(view)).map(({ rep, inS, outS }) => ({
    startS: inS,
    endS: outS,
    text: filmFigures.chapter(numberOf(view, rep), legsOf(view, rep)),
  }));
  return { name: `${stem(film.name)}.chapters.vtt`, text: vttText(cues), type: 'text/vtt' };
}

/** Captions as WebVTT: every mark as it is reached, a halt with its time after the whistle. */
export function captionsText(view: FilmBenchView, film: FilmOfSession, { filmFigures }: Say): FilmText {
  const latencies = new Map(
    film.marked.flatMap(({ figures }) => figures.halts.map(({ mark, latency }) => [mark, latency] as const)),
  );
  const cues = captionsOfFilm(film, repIds(view)).map(({ startS, endS, marks }) => ({
    startS,
    endS,
    text: marks
      .map(({ mark, rep, what }) =>
        filmFigures.caption(numberOf(view, rep), what, latencies.get(mark) ?? null),
      )
      .join('\n'),
  }));
  return { name: `${stem(film.name)}.captions.vtt`, text: vttText(cues), type: 'text/vtt' };
}

/** The clip list as CSV: film, in, out, rep, what it shows. */
export function clipsText(view: FilmBenchView, film: FilmOfSession, { filmFigures }: Say): FilmText {
  const rows = clipsOfFilm(film, repIds(view)).map(({ rep, inS, outS }) => [
    film.name,
    filmTime(inS),
    filmTime(outS),
    String(numberOf(view, rep)),
    filmFigures.shows(legsOf(view, rep)),
  ]);
  const text = csvText([filmFigures.clipColumns, ...rows]);
  return { name: `${stem(film.name)}.clips.csv`, text, type: 'text/csv' };
}

/** The session in plain words, with what was seen on the film. */
export function summaryText(view: FilmBenchView, film: FilmOfSession, { filmFigures }: Say): FilmText {
  const text = filmFigures.summary({
    dogName: view.dogName,
    groundName: view.groundName,
    atMs: view.openedAtMs,
    film: film.name,
    lengthS: film.lengthS,
    reps: view.reps.map(({ rep, legs }) => ({
      legs,
      marks: film.marks.filter((mark) => mark.rep === rep),
      figures: film.marked.find((one) => one.rep === rep)?.figures ?? null,
    })),
  });
  return { name: `${stem(film.name)}.txt`, text, type: 'text/plain' };
}
