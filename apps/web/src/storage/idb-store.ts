import { appendLines, type FactStore, type StoredFacts, type StoreResult } from '@sedgeline/journal';
import { deleteDB, type IDBPDatabase } from 'idb';
import { browserFailure, CLOSED_FAILURE } from './browser-failure.ts';
import { inWriteTransaction, moveIntoBlocks, writeNewLines } from './idb-append.ts';
import { loadFacts } from './idb-load.ts';
import { type FactDatabase, openFactDatabase } from './idb-schema.ts';
import { storedNote } from './stored-note.ts';

/** The journal in the browser's database. */
export interface IdbStore extends FactStore {
  /** Moves recent facts into blocks, in one transaction; gives how many. Also done by itself after a load of many. */
  pack(): Promise<StoreResult<{ readonly packed: number }>>;
}

/** So many recent facts are packed after a load: below, loading them one by one is not felt (our judgement). */
const PACK_FROM = 1000;

/**
 * Opens a journal kept in IndexedDB. An append resolves when its transaction is done with `durability: 'strict'`: flushed
 * to the disk. Tabs may share a database; the browser runs their transactions one after another. A tab with a newer
 * version of the program takes the database over: this store then answers STORE_CLOSED until it is opened again.
 */
export async function openIdbStore(name: string): Promise<StoreResult<IdbStore>> {
  let isLost = false;
  try {
    const opened = await openOrBlocked(name, () => {
      isLost = true;
    });
    if (opened === 'blocked') {
      const message = 'another tab holds an older version of the record open; close it';
      return { ok: false, failure: { code: 'STORE_REFUSED', message } };
    }
    return { ok: true, value: storeOver(opened, () => isLost) };
  } catch (error) {
    return { ok: false, failure: browserFailure(error) };
  }
}

/** Removes a journal and its notes for good. */
export async function deleteIdbStore(name: string): Promise<StoreResult<null>> {
  try {
    await deleteDB(name);
    return { ok: true, value: null };
  } catch (error) {
    return { ok: false, failure: browserFailure(error) };
  }
}

/** Opening waits for ever behind a tab that does not let go; then the connection is closed should it come after all. */
async function openOrBlocked(
  name: string,
  onLost: () => void,
): Promise<IDBPDatabase<FactDatabase> | 'blocked'> {
  let tellBlocked: () => void = () => undefined;
  const blocked = new Promise<'blocked'>((resolve) => {
    tellBlocked = () => resolve('blocked');
  });
  const opening = openFactDatabase(name, { onBlocked: () => tellBlocked(), onLost });
  const first = await Promise.race([opening, blocked]);
  if (first === 'blocked') {
    opening.then(
      (db) => db.close(),
      () => undefined,
    );
  }
  return first;
}

function storeOver(db: IDBPDatabase<FactDatabase>, isLost: () => boolean): IdbStore {
  let isClosed = false;
  const underWay = new Set<Promise<unknown>>();

  const answer = <T>(work: () => Promise<StoreResult<T>>): Promise<StoreResult<T>> => {
    const run = async (): Promise<StoreResult<T>> => {
      if (isClosed || isLost()) return { ok: false, failure: CLOSED_FAILURE };
      try {
        return await work();
      } catch (error) {
        return { ok: false, failure: isLost() ? CLOSED_FAILURE : browserFailure(error) };
      }
    };
    const promise = run();
    underWay.add(promise);
    return promise.finally(() => underWay.delete(promise));
  };

  const pack = () =>
    answer(async () => ({ ok: true, value: { packed: await inWriteTransaction(db, moveIntoBlocks) } }));

  return {
    append: (facts) =>
      answer(async () => {
        const lines = appendLines(facts);
        if (!lines.ok) return lines;
        if (lines.value.length === 0) return { ok: true, value: { added: 0 } };
        return inWriteTransaction(db, (tx) => writeNewLines(tx, lines.value));
      }),
    load: () =>
      answer<StoredFacts>(async () => {
        const { facts, damage, recent } = await loadFacts(db);
        if (recent >= PACK_FROM) void pack();
        return { ok: true, value: { facts, damage } };
      }),
    readNote: (name) => answer(async () => ({ ok: true, value: storedNote(await db.get('notes', name)) })),
    writeNote: (name, value) =>
      answer(async () => {
        await db.put('notes', JSON.stringify(value ?? null), name);
        return { ok: true, value: null };
      }),
    pack,
    close: async () => {
      isClosed = true;
      await Promise.allSettled(underWay);
      db.close();
    },
  };
}
