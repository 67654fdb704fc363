import { useCallback, useEffect, useRef, useState } from 'react';
import { type HashState, startFilmHash } from '../../devices/film-hash.ts';
import { type FilmIndex, type IndexFault, readFilmIndex } from '../../devices/film-reader.ts';
import { filmTakenAt } from '../../devices/film-taken-at.ts';

/** A film that is open: the file itself stays where it is. */
export interface FilmFile {
  readonly file: File;
  /** The id under which it joins the session, should it be a new one. */
  readonly own: string;
  /** The film that was asked for as it was opened. */
  readonly wanted: string | null;
  /** Address of the file within this page. */
  readonly url: string;
  readonly index: FilmIndex | IndexFault | 'reading';
  readonly takenAtMs: number | null;
  readonly hash: HashState;
}

/** Opens a film from the device: its index and its fingerprint are read beside one another, and all is let go with it. */
export function useFilmFile(newId: () => string) {
  const [film, setFilm] = useState<FilmFile | null>(null);
  const stop = useRef<() => void>(() => undefined);
  const letGo = useRef<() => void>(() => undefined);
  const shut = useCallback(() => {
    letGo.current();
    letGo.current = () => undefined;
    setFilm(null);
  }, []);
  const open = useCallback(
    (file: File, wanted: string | null) => {
      letGo.current();
      const url = URL.createObjectURL(file);
      const own = newId();
      let isLeft = false;
      let index: FilmIndex | null = null;
      const found = (part: Partial<FilmFile>) => {
        if (!isLeft) setFilm((last) => (last?.url === url ? { ...last, ...part } : last));
      };
      setFilm({
        file,
        own,
        wanted,
        url,
        index: 'reading',
        takenAtMs: null,
        hash: { kind: 'working', share: 0, leftS: null },
      });
      stop.current = startFilmHash(file, (hash) => found({ hash }));
      void filmTakenAt(file).then(
        (takenAtMs) => found({ takenAtMs }),
        () => undefined,
      );
      void readFilmIndex(file).then((read) => {
        index = typeof read === 'string' ? null : read;
        if (isLeft) index?.close();
        else found({ index: read });
      });
      letGo.current = () => {
        isLeft = true;
        stop.current();
        index?.close();
        URL.revokeObjectURL(url);
      };
    },
    [newId],
  );
  const stopHash = useCallback(() => {
    stop.current();
    setFilm((last) => (last === null ? null : { ...last, hash: { kind: 'stopped' } }));
  }, []);
  useEffect(() => () => letGo.current(), []);
  return { film, open, shut, stopHash };
}
