import { kitFact, storeKitCases } from '@sedgeline/journal/store-kit';
import { openIdbStore } from '../../src/storage/idb-store.ts';
import { type OpfsStore, openOpfsStore } from '../../src/storage/opfs-store.ts';
import { type Port, serveCalls } from '../../src/workers/rpc.ts';
import { opfsPlace } from './opfs-place.ts';

/** What the worker does for the test that drives it: only workers have files that are flushed at once. */
export type OpfsKitCalls = {
  /** Runs the case of that place in the kit's list; rejects where the store breaks the rule. */
  readonly runCase: (index: number) => Promise<void>;
  /** Appends facts `from` to `to`, so many at a time; gives how many were added. */
  readonly append: (of: {
    readonly name: string;
    readonly from: number;
    readonly to: number;
    readonly each: number;
  }) => Promise<number>;
  /** Appends one fact after another to the file and to the browser's database by turns; milliseconds of each append. */
  readonly race: (
    facts: number,
  ) => Promise<{ readonly file: readonly number[]; readonly database: readonly number[] }>;
  /** What is there: how many, and how long it took to look at their ids and to read them. */
  readonly load: (name: string) => Promise<{
    readonly count: number;
    readonly ids: number;
    readonly idsMs: number;
    readonly loadMs: number;
    readonly damage: number;
  }>;
};

const cases = storeKitCases(opfsPlace);

async function open(name: string): Promise<OpfsStore> {
  const result = await openOpfsStore(name);
  if (!result.ok) throw new Error(result.failure.message);
  return result.value;
}

const calls: OpfsKitCalls = {
  runCase: async (index) => {
    const one = cases[index];
    if (one === undefined) throw new Error(`expected a case ${index}, got none`);
    await one.run();
  },
  append: async ({ name, from, to, each }) => {
    const store = await open(name);
    let added = 0;
    for (let n = from; n <= to; n += each) {
      const facts = Array.from({ length: Math.min(each, to - n + 1) }, (_, i) => kitFact(n + i));
      const result = await store.append(facts);
      if (!result.ok) throw new Error(result.failure.message);
      added += result.value.added;
    }
    await store.close();
    return added;
  },
  race: async (facts) => {
    const stores = { file: await openOpfsStore('race'), database: await openIdbStore('race') };
    const took = { file: [] as number[], database: [] as number[] };
    for (let n = 1; n <= facts; n += 1) {
      for (const name of ['file', 'database'] as const) {
        const store = stores[name];
        if (!store.ok) throw new Error(store.failure.message);
        const startMs = performance.now();
        const result = await store.value.append([kitFact(n)]);
        if (!result.ok) throw new Error(result.failure.message);
        took[name].push(performance.now() - startMs);
      }
    }
    return took;
  },
  load: async (name) => {
    const startMs = performance.now();
    const store = await open(name);
    const ids = await store.ids();
    const readMs = performance.now();
    const result = await store.load();
    const endMs = performance.now();
    if (!ids.ok || !result.ok) throw new Error('expected the store to load');
    await store.close();
    const { facts, damage } = result.value;
    return {
      count: facts.length,
      ids: ids.value.size,
      idsMs: readMs - startMs,
      loadMs: endMs - readMs,
      damage: damage.length,
    };
  },
};

serveCalls(globalThis as unknown as Port, calls);
