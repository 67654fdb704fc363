import type { FilmRecord } from '../film/film-record.ts';
import type { ListenedTo } from '../film/heard-whistles.ts';
import type { FoundLatency } from '../film/keep-latencies.ts';
import type { RepPlace } from '../film/places-on-film.ts';
import type { RepFigures } from '../film/rep-figures.ts';
import type { RepSummary } from './views.ts';

/** What the marks of a rep on one film come to. */
export interface RepOnFilm {
  readonly rep: string;
  readonly figures: RepFigures;
  /** Halt latencies that could be kept with the rep's legs. */
  readonly found: readonly FoundLatency[];
}

/** A film of a session, with where each rep lies on it and what the marks come to. */
export interface FilmOfSession extends FilmRecord {
  readonly places: readonly RepPlace[];
  /** Reps that have a mark on it, in the session's order. */
  readonly marked: readonly RepOnFilm[];
}

/** A session and its films. */
export interface FilmBenchView {
  readonly session: string;
  readonly dog: string;
  readonly dogName: string;
  readonly groundName: string | null;
  readonly openedAtMs: number;
  readonly closedAtMs: number | null;
  /** Reps that stand, in order: the first is rep 1. */
  readonly reps: readonly RepSummary[];
  /** Those that were unlinked too, so that they can be brought back. */
  readonly films: readonly FilmOfSession[];
  /** Sounds of the session that were listened to: one of them may be that of a film. */
  readonly sounds: readonly ListenedTo[];
}
