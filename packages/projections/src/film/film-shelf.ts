import {
  compareKeys,
  type FilmLinked,
  type FilmMarked,
  type FilmUnlinked,
  type FilmUnmarked,
  readTime,
} from '@sedgeline/journal';
import { grouped } from '../grouped.ts';
import { earlier, insertInOrder, type Keyed, later } from '../record/keyed.ts';
import type { FilmFileSaid, FilmMark, FilmRecord } from './film-record.ts';

/** Every fact about one id of a film. */
interface FilmThread {
  readonly linked: Keyed<FilmLinked>[];
  unlinked: Keyed<FilmUnlinked> | null;
  facts: number;
}

/** Every fact about one mark. */
interface MarkThread {
  first: Keyed<FilmMarked> | null;
  marked: Keyed<FilmMarked> | null;
  unmarked: Keyed<FilmUnmarked> | null;
  facts: number;
}

/** What of the record films hang on. */
interface Standing {
  readonly hasSession: (session: string) => boolean;
  readonly hasRep: (rep: string) => boolean;
}

/**
 * Facts about films and what is marked on them. What comes out depends on the set of facts alone, whatever order they
 * came in. Linked twice under two ids, a file of one session is still one film: the hash tells.
 */
export class FilmShelf {
  readonly #films = new Map<string, FilmThread>();
  readonly #marks = new Map<string, MarkThread>();

  addLinked(fact: Keyed<FilmLinked>): void {
    insertInOrder(this.#film(fact.body.film).linked, fact);
  }

  addUnlinked(fact: Keyed<FilmUnlinked>): void {
    const thread = this.#film(fact.body.film);
    thread.unlinked = later(thread.unlinked, fact);
  }

  addMarked(fact: Keyed<FilmMarked>): void {
    const thread = this.#mark(fact.body.mark);
    thread.first = earlier(thread.first, fact);
    thread.marked = later(thread.marked, fact);
  }

  addUnmarked(fact: Keyed<FilmUnmarked>): void {
    const thread = this.#mark(fact.body.mark);
    thread.unmarked = later(thread.unmarked, fact);
  }

  /** The films as they stand, in the order in which they were linked, and how many facts hang on nothing. */
  folded({ hasSession, hasRep }: Standing): {
    readonly films: readonly FilmRecord[];
    readonly setAside: number;
  } {
    let setAside = 0;
    const known = new Map<string, Linking>();
    for (const [film, thread] of this.#films) {
      const linking = linkingOf(film, thread);
      if (linking !== null && hasSession(linking.session)) known.set(film, linking);
      else setAside += thread.facts;
    }
    const byFilm = new Map<string, MarkThread[]>();
    for (const thread of this.#marks.values()) {
      const body = thread.marked?.body;
      if (body === undefined || !known.has(body.film) || !hasRep(body.rep)) setAside += thread.facts;
      else byFilm.set(body.film, [...(byFilm.get(body.film) ?? []), thread]);
    }
    const films = [...grouped(known.values(), sameFilm).values()]
      .map((linkings) => filmOf(linkings, byFilm))
      .sort((a, b) => compareKeys(a.orderKey, b.orderKey));
    return { films, setAside };
  }

  #film(id: string): FilmThread {
    const thread = this.#films.get(id) ?? { linked: [], unlinked: null, facts: 0 };
    thread.facts += 1;
    this.#films.set(id, thread);
    return thread;
  }

  #mark(id: string): MarkThread {
    const thread = this.#marks.get(id) ?? { first: null, marked: null, unmarked: null, facts: 0 };
    thread.facts += 1;
    this.#marks.set(id, thread);
    return thread;
  }
}

/** What the facts of one id of a film come to. */
type Linking = Omit<FilmRecord, 'ids' | 'marks' | 'takenOff'>;

function linkingOf(film: string, { linked, unlinked }: FilmThread): Linking | null {
  const [first] = linked;
  const last = linked.at(-1);
  if (first === undefined || last === undefined) return null;
  const lastSaid = <Key extends keyof FilmLinked>(key: Key): FilmLinked[Key] | undefined =>
    linked.findLast(({ body }) => body[key] !== undefined)?.body[key];
  const files = filesSaid(linked.map(({ body }) => body));
  const starts = readTime(lastSaid('startsAt') ?? '');
  return {
    film,
    session: last.body.session,
    orderKey: first.key,
    ...files.at(-1)!,
    files,
    lengthS: lastSaid('lengthS') ?? null,
    startsAtMs: starts.ok ? starts.ms : null,
    isLinked: unlinked === null || unlinked.body.stands === true,
  };
}

/** The files that facts about a film speak of. One of the same size is the same unless the hashes differ; what is known of it is put together. */
function filesSaid(said: readonly FilmLinked[]): readonly FilmFileSaid[] {
  let files: readonly FilmFileSaid[] = [];
  for (const { name, bytes, contentHash = null } of said) {
    const same = files.find(
      (file) =>
        file.bytes === bytes &&
        (file.contentHash === null || contentHash === null || file.contentHash === contentHash),
    );
    const file = { name, bytes, contentHash: contentHash ?? same?.contentHash ?? null };
    files = [...files.filter((one) => one !== same), file];
  }
  return files;
}

/** One key for every id of the same file of the same session; an unlinked one and one without a hash stand alone. */
function sameFilm({ film, session, contentHash, isLinked }: Linking): string {
  return contentHash === null || !isLinked
    ? JSON.stringify([film])
    : JSON.stringify([session, contentHash.toLowerCase()]);
}

function filmOf(
  linkings: readonly Linking[],
  byFilm: ReadonlyMap<string, readonly MarkThread[]>,
): FilmRecord {
  const inOrder = linkings.toSorted((a, b) => compareKeys(a.orderKey, b.orderKey));
  const first = inOrder[0]!;
  const ids = inOrder.map(({ film }) => film);
  const threads = ids.flatMap((id) => byFilm.get(id) ?? []);
  const isOff = ({ unmarked }: MarkThread) => unmarked !== null && unmarked.body.stands !== true;
  const standing = threads.filter((thread) => !isOff(thread));
  const off = threads.filter(isOff);
  return {
    ...first,
    files: inOrder.flatMap(({ files }) => files),
    lengthS: inOrder.find(({ lengthS }) => lengthS !== null)?.lengthS ?? null,
    startsAtMs: inOrder.find(({ startsAtMs }) => startsAtMs !== null)?.startsAtMs ?? null,
    ids,
    marks: standing.toSorted(byTime).map(markOf),
    takenOff: off.toSorted((a, b) => compareKeys(b.unmarked!.key, a.unmarked!.key)).map(markOf),
  };
}

function byTime(a: MarkThread, b: MarkThread): number {
  return a.marked!.body.atS - b.marked!.body.atS || compareKeys(a.first!.key, b.first!.key);
}

function markOf({ marked }: MarkThread): FilmMark {
  const { mark, film, rep, what, atS, frameS, heard } = marked!.body;
  return { mark, film, rep, what, atS, frameS, heard: heard ?? false };
}
