import type { FilmOfSession } from '@sedgeline/projections';

/** A file that was opened: what tells it from others. `contentHash` is `null` while it is being worked out, or could not be. */
export interface OpenedFile {
  readonly name: string;
  readonly bytes: number;
  readonly contentHash: string | null;
  /** True once no hash is to be waited for. */
  readonly isHashOver: boolean;
}

/** Which film of the session a file is. */
export type Known =
  | {
      readonly kind: 'own' | 'known' | 'renamed' | 'by-name' | 'taken-off' | 'checking';
      readonly film: FilmOfSession;
    }
  /** None of them, and not the one that was asked for. */
  | { readonly kind: 'another'; readonly wanted: FilmOfSession }
  | { readonly kind: 'fresh' };

/**
 * Which of a session's films a file is. A film of another size is another film; one of the same size is the same once the hashes agree, and by
 * its name where it was never hashed. Before the hash is there nothing is said for sure. A film that was linked from this very
 * file (`own`) is itself.
 */
export function knownFilm(
  films: readonly FilmOfSession[],
  file: OpenedFile,
  own: string,
  wanted: string | null,
): Known {
  const mine = films.find(({ ids, isLinked }) => isLinked && ids.includes(own));
  if (mine !== undefined) return { kind: 'own', film: mine };
  const hash = file.contentHash?.toLowerCase();
  const sameSize = films.flatMap((film) =>
    film.files.filter(({ bytes }) => bytes === file.bytes).map((said) => ({ film, said })),
  );
  const same = sameSize.filter(({ said }) => hash !== undefined && said.contentHash?.toLowerCase() === hash);
  const found = same.find(({ film }) => film.isLinked) ?? same[0];
  if (found !== undefined) {
    if (!found.film.isLinked) return { kind: 'taken-off', film: found.film };
    return { kind: found.said.name === file.name ? 'known' : 'renamed', film: found.film };
  }
  const linked = sameSize.filter(({ film }) => film.isLinked);
  const byName = linked.find(
    ({ said }) => said.name === file.name && (said.contentHash === null || hash === undefined),
  );
  const likely = byName ?? linked[0];
  if (hash === undefined && !file.isHashOver && likely !== undefined) {
    return { kind: 'checking', film: likely.film };
  }
  if (byName !== undefined) return { kind: 'by-name', film: byName.film };
  const asked = films.find((one) => one.film === wanted) ?? null;
  return asked === null ? { kind: 'fresh' } : { kind: 'another', wanted: asked };
}
