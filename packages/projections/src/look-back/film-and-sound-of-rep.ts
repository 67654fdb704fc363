import { placesOnFilm } from '../film/places-on-film.ts';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { RepFilmed, RepHeard } from '../views/look-back-view.ts';

/** Where the reps of a session lie on its films, as far as marks or clocks tell. */
export function filmedOfRep(
  { films }: TrainingRecord,
  { session, reps }: SessionRecord,
): (rep: string) => readonly RepFilmed[] {
  const placed = films
    .filter((film) => film.isLinked && film.session === session)
    .map((film) => ({ film, places: placesOnFilm(film, reps) }));
  return (rep) =>
    placed.flatMap(({ film: { film, name }, places }) => {
      const atS = places.find((place) => place.rep === rep)?.atS ?? null;
      return atS === null ? [] : [{ film, name, atS }];
    });
}

/** What was joined to a rep in each sound that stands. Dogs in turn share one microphone, so the sound may be another session's. */
export function heardOfRep({ sounds }: TrainingRecord): (rep: string) => readonly RepHeard[] {
  return (rep) =>
    sounds.flatMap(({ sound, name, sha256, joins }) => {
      const own = joins.filter((join) => join.rep === rep).map(({ atS }) => atS);
      return own.length === 0 ? [] : [{ sound, name, sha256, atS: Math.min(...own) }];
    });
}
