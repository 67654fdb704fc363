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
      readonly kind: 'known' | 'renamed' | 'by-name' | 'taken-off' | 'checking';
      readonly film: FilmOfSession;
    }
  /** None of them; `wanted` is the one that was asked for, where one was. */
  | { readonly kind: 'fresh' | 'another'; readonly wanted: FilmOfSession | null };

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
  if (mine !== undefined) return { kind: 'known', film: mine };
  const sameSize = films.filter(({ bytes }) => bytes === file.bytes);
  const hash = file.contentHash?.toLowerCase();
  const same = sameSize.filter(
    ({ contentHash }) => contentHash !== null && contentHash.toLowerCase() === hash,
  );
  const film = same.find(({ isLinked }) => isLinked) ?? same[0];
  if (film !== undefined) {
    if (!film.isLinked) return { kind: 'taken-off', film };
    return { kind: film.name === file.name ? 'known' : 'renamed', film };
  }
  const linked = sameSize.filter(({ isLinked }) => isLinked);
  const byName = linked.find(
    ({ name, contentHash }) => name === file.name && (contentHash === null || hash === undefined),
  );
  if (hash === undefined && !file.isHashOver && linked[0] !== undefined) {
    return { kind: 'checking', film: byName ?? linked[0] };
  }
  if (byName !== undefined) return { kind: 'by-name', film: byName };
  const asked = films.find((one) => one.film === wanted) ?? null;
  return { kind: asked === null ? 'fresh' : 'another', wanted: asked };
}
