import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { FilmBenchView, FilmOfSession } from '../views/film-view.ts';
import { repSummary } from '../work/rep-summary.ts';
import type { FilmRecord } from './film-record.ts';
import { foundLatencies } from './keep-latencies.ts';
import { placesOnFilm } from './places-on-film.ts';
import { repFigures } from './rep-figures.ts';

/** A session beside its films; `null` for a session that no fact names. */
export function filmBenchView(record: TrainingRecord, session: string): FilmBenchView | null {
  const found = record.sessions.find((one) => one.session === session);
  if (found === undefined) return null;
  const { dog, ground, openedAtMs, closedAtMs, reps } = found;
  return {
    session,
    dog,
    dogName: record.dogs.get(dog)?.name ?? dog,
    groundName: ground === null ? null : (record.grounds.get(ground)?.name ?? ground),
    openedAtMs,
    closedAtMs,
    reps: reps.map(repSummary),
    sounds: record.sounds
      .filter((sound) => sound.session === session)
      .map(({ name, bytes, whistles, joins }) => ({ name, bytes, whistles, joins })),
    films: record.films.filter((film) => film.session === session).map((film) => filmOfSession(film, found)),
  };
}

function filmOfSession(film: FilmRecord, { reps }: SessionRecord): FilmOfSession {
  const marked = reps.flatMap(({ rep, legs }) => {
    const marks = film.marks.filter((mark) => mark.rep === rep);
    if (marks.length === 0) return [];
    const figures = repFigures(marks, legs);
    return [{ rep, figures, found: foundLatencies(legs, figures) }];
  });
  return { ...film, places: placesOnFilm(film, reps), marked };
}
