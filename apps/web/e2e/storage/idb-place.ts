import type { FactStore } from '@sedgeline/journal';
import type { StorePlace } from '@sedgeline/journal/store-kit';
import { openFactDatabase } from '../../src/storage/idb-schema.ts';
import { deleteIdbStore, openIdbStore } from '../../src/storage/idb-store.ts';

const WRITES = ['put', 'add', 'delete'] as const;
const NOTHING_TO_HEAR = { onBlocked: () => undefined, onLost: () => undefined };
let places = 0;

/** A new database for one case of the contract kit: the same in Node's stand-in and in a real browser. */
export async function idbPlace(): Promise<StorePlace> {
  places += 1;
  const name = `kit-${places}`;
  const stores: FactStore[] = [];
  await deleteIdbStore(name);
  return {
    open: async () => {
      const result = await openIdbStore(name);
      if (!result.ok) throw new Error(`open: ${result.failure.code} ${result.failure.message}`);
      stores.push(result.value);
      return result.value;
    },
    damage: async () => {
      const db = await openFactDatabase(name, NOTHING_TO_HEAR);
      const [first] = await db.getAll('recent');
      if (first === undefined) throw new Error('damage: expected a recent fact to damage');
      await db.put('recent', { id: first.id, line: first.line.slice(0, 20) });
      db.close();
    },
    loseNotes: async () => {
      const db = await openFactDatabase(name, NOTHING_TO_HEAR);
      await db.clear('notes');
      db.close();
    },
    failWrite: async (n) => failWrite(n),
    dispose: async () => {
      for (const store of stores) await store.close();
      await deleteIdbStore(name);
    },
  };
}

/**
 * Makes the n-th write of any object store fail: an odd one at once, for want of room, as `put` may throw; an even one
 * later, its transaction aborted, as when the disk refuses the commit.
 */
function failWrite(n: number): () => boolean {
  const prototype = IDBObjectStore.prototype;
  const originals = WRITES.map(
    (write) => [write, Object.getOwnPropertyDescriptor(prototype, write)!] as const,
  );
  let left = n;
  for (const [write, original] of originals) {
    Object.defineProperty(prototype, write, {
      ...original,
      value: function (this: IDBObjectStore, ...args: unknown[]) {
        left -= 1;
        if (left === 0 && n % 2 === 1)
          throw new DOMException('this write was made to fail', 'QuotaExceededError');
        const request: unknown = original.value.apply(this, args);
        if (left === 0) this.transaction.abort();
        return request;
      },
    });
  }
  return () => {
    for (const [write, original] of originals) Object.defineProperty(prototype, write, original);
    return left <= 0;
  };
}
