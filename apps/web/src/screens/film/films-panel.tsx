import type { FilmOfSession } from '@sedgeline/projections';
import { type ReactNode, useId } from 'react';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** The films of the session, to be opened, taken off and brought back. */
export function FilmsPanel({
  films,
  shown,
  onOpen,
  onShow,
  onLink,
}: {
  readonly films: readonly FilmOfSession[];
  /** The film whose marks are shown. */
  readonly shown: string | null;
  readonly onOpen: (file: File, wanted: string | null) => void;
  /** `null` while a film is open: its marks are shown. */
  readonly onShow: ((film: string) => void) | null;
  readonly onLink: (film: FilmOfSession, stands: boolean) => void;
}) {
  const { films: words, openNamed } = useWords().film;
  if (films.length === 0) return null;
  return (
    <section className="film-films" aria-labelledby="film-films-title">
      <h2 id="film-films-title">{words.title}</h2>
      <ul>
        {films
          .filter(({ isLinked }) => isLinked)
          .map((film) => (
            <li key={film.film}>
              <p>
                <b>{film.name}</b>{' '}
                <span className="soft">
                  {words.line(film.bytes, film.lengthS, film.marks.length, film.marked.length)}
                </span>
              </p>
              <div className="film-hand-on-keys">
                <FilmFileKey onOpen={(file) => onOpen(file, film.film)}>{openNamed(film.name)}</FilmFileKey>
                {onShow !== null && film.film !== shown && (
                  <Button onClick={() => onShow(film.film)}>{words.show(film.name)}</Button>
                )}
                <Button look="quiet" onClick={() => onLink(film, false)}>
                  {words.unlink(film.name)}
                </Button>
              </div>
            </li>
          ))}
      </ul>
      {films
        .filter(({ isLinked }) => !isLinked)
        .map((film) => (
          <Notice
            key={film.film}
            action={<Button onClick={() => onLink(film, true)}>{words.bringBack(film.name)}</Button>}
          >
            {words.unlinked(film.name, film.marks.length)}
          </Notice>
        ))}
    </section>
  );
}

/** A key that asks the device for a film. */
export function FilmFileKey({
  look = 'plain',
  onOpen,
  children,
}: {
  readonly look?: 'main' | 'plain';
  readonly onOpen: (file: File) => void;
  readonly children: ReactNode;
}) {
  const id = useId();
  return (
    <span className="film-file">
      <input
        id={id}
        type="file"
        accept="video/*,.mp4,.mov,.m4v,.webm,.mkv"
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          // The same file chosen again is opened again.
          event.target.value = '';
          if (file !== undefined) onOpen(file);
        }}
      />
      <label htmlFor={id} className={`button button-${look}`}>
        {children}
      </label>
    </span>
  );
}
