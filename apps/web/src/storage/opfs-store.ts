import {
  appendLines,
  type FactStore,
  newLines,
  orderFacts,
  type StoredFacts,
  type StoreResult,
  storedFact,
} from '@sedgeline/journal';
import { browserFailure, CLOSED_FAILURE } from './browser-failure.ts';
import { readBlock } from './fact-blocks.ts';
import { LineIndex } from './line-index.ts';
import { type FileDoor, fileDoor, readBytes, type SyncFile } from './opfs-file.ts';
import { storedNote } from './stored-note.ts';

/** A journal as JSON Lines in the browser's private file system: the second copy of the record. */
export interface OpfsStore extends FactStore {
  /** The ids of what is there, without reading the facts themselves. */
  ids(): Promise<StoreResult<ReadonlySet<string>>>;
}

const FACTS_FILE = 'facts.jsonl';
const noteFile = (name: string): string => `note-${encodeURIComponent(name)}`;
const text = new TextDecoder();

/**
 * Opens a journal kept as a file of lines, in a worker (only there may files be written and flushed at once). Whatever is done
 * with the file is done under a lock of its name: so tabs take turns, and a tab that is killed holds nobody up. An
 * append of several facts that the power cuts off may leave the first of them: the other copy of the record has all or none.
 */
export async function openOpfsStore(name: string): Promise<StoreResult<OpfsStore>> {
  const store = storeIn(name);
  const first = await store.ids();
  return first.ok ? { ok: true, value: store } : first;
}

/** Removes such a journal and its notes for good. */
export async function deleteOpfsStore(name: string): Promise<void> {
  const root = await navigator.storage.getDirectory();
  try {
    await root.removeEntry(name, { recursive: true });
  } catch (error) {
    if (!(error instanceof DOMException) || error.name !== 'NotFoundError') throw error;
  }
}

function storeIn(name: string): OpfsStore {
  const index = new LineIndex();
  const underWay = new Set<Promise<unknown>>();
  const doors = new Map<string, FileDoor>();
  let isClosed = false;

  const doorOf = (fileName: string): FileDoor => {
    const door = doors.get(fileName) ?? fileDoor(name, fileName);
    doors.set(fileName, door);
    return door;
  };
  const withFile = <T>(
    fileName: string,
    work: (file: SyncFile) => StoreResult<T>,
  ): Promise<StoreResult<T>> => {
    const run = async (): Promise<StoreResult<T>> => {
      if (isClosed) return { ok: false, failure: CLOSED_FAILURE };
      try {
        const door = doorOf(fileName);
        return await navigator.locks.request(`sedgeline-file:${name}/${fileName}`, () => door(work));
      } catch (error) {
        return { ok: false, failure: browserFailure(error) };
      }
    };
    const promise = run();
    underWay.add(promise);
    return promise.finally(() => underWay.delete(promise));
  };
  const refused = <T>(result: StoreResult<T>) => Promise.resolve(result);

  return {
    append: (facts) => {
      const lines = isClosed ? { ok: false as const, failure: CLOSED_FAILURE } : appendLines(facts);
      if (!lines.ok) return refused(lines);
      return withFile(FACTS_FILE, (file) => {
        index.readOn(file);
        const toWrite = newLines(lines.value, (id) => storedFact(index.line(file, id)));
        if (!toWrite.ok) return toWrite;
        if (toWrite.value.length > 0)
          index.append(
            file,
            toWrite.value.map(({ line }) => line),
          );
        return { ok: true, value: { added: toWrite.value.length } };
      });
    },
    load: () => withFile(FACTS_FILE, (file) => ({ ok: true, value: readAll(file) })),
    ids: () =>
      withFile(FACTS_FILE, (file) => {
        index.readOn(file);
        return { ok: true, value: index.ids };
      }),
    readNote: (note) =>
      withFile(noteFile(note), (file) => ({ ok: true, value: storedNote(text.decode(readBytes(file, 0))) })),
    writeNote: (note, value) =>
      withFile(noteFile(note), (file) => {
        const bytes = new TextEncoder().encode(JSON.stringify(value ?? null));
        file.truncate(0);
        file.write(bytes, { at: 0 });
        file.flush();
        return { ok: true, value: null };
      }),
    close: async () => {
      isClosed = true;
      await Promise.allSettled(underWay);
    },
  };
}

function readAll(file: SyncFile): StoredFacts {
  const all = text.decode(readBytes(file, 0));
  if (all === '') return { facts: [], damage: [] };
  const { facts, unreadable } = readBlock(all.endsWith('\n') ? all.slice(0, -1) : all);
  if (unreadable === 0) return { facts: orderFacts(facts), damage: [] };
  const message = `${unreadable} of its lines cannot be read; the others are here`;
  return { facts: orderFacts(facts), damage: [{ where: FACTS_FILE, message }] };
}
