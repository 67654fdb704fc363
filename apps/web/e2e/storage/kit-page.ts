import { kitFact, storeKitCases } from '@sedgeline/journal/store-kit';
import { deleteIdbStore, type IdbStore, openIdbStore } from '../../src/storage/idb-store.ts';
import { callThrough, type Remote } from '../../src/workers/rpc.ts';
import { idbPlace } from './idb-place.ts';
import type { OpfsKitCalls } from './opfs-kit-worker.ts';

/** What the page offers to the test that drives it. */
export interface KitPage {
  /** Runs the case of that place in the kit's list; rejects where the store breaks the rule. */
  runCase(index: number): Promise<void>;
  /** Appends facts `from` to `to`, a hundred at a time as taps and merges come, or all in one. */
  append(name: string, from: number, to: number, each: number): Promise<string>;
  /** Appends one fact after another for ever, and tells each that was acknowledged. */
  appendForEver(name: string): Promise<void>;
  /** The ids that are there and how long reading them took; only so many ids of a large journal. */
  load(name: string): Promise<{ count: number; ids: readonly string[]; ms: number; damage: number }>;
  deleteStore(name: string): Promise<void>;
}

const cases = storeKitCases(idbPlace);
const IDS_MAX = 5000;

async function open(name: string): Promise<IdbStore> {
  const result = await openIdbStore(name);
  if (!result.ok) throw new Error(result.failure.message);
  return result.value;
}

const kitPage: KitPage = {
  runCase: (index) => {
    const one = cases[index];
    if (one === undefined) throw new Error(`expected a case ${index}, got none`);
    return one.run();
  },
  append: async (name, from, to, each) => {
    const store = await open(name);
    for (let n = from; n <= to; n += each) {
      const facts = Array.from({ length: Math.min(each, to - n + 1) }, (_, i) => kitFact(n + i));
      const result = await store.append(facts);
      if (!result.ok) return result.failure.code;
    }
    await store.close();
    return 'ok';
  },
  appendForEver: async (name) => {
    const store = await open(name);
    for (let n = 1; ; n += 1) {
      const result = await store.append([kitFact(n)]);
      if (!result.ok) throw new Error(result.failure.message);
      console.log(`acknowledged ${kitFact(n).id}`);
    }
  },
  load: async (name) => {
    const startMs = performance.now();
    const store = await open(name);
    const result = await store.load();
    const ms = performance.now() - startMs;
    if (!result.ok) throw new Error(result.failure.message);
    const { facts, damage } = result.value;
    await store.close();
    return {
      count: facts.length,
      ids: facts.slice(0, IDS_MAX).map((fact) => fact.id),
      ms,
      damage: damage.length,
    };
  },
  deleteStore: async (name) => {
    await deleteIdbStore(name);
  },
};

declare global {
  interface Window {
    kitPage: KitPage;
    opfsKit: Remote<OpfsKitCalls>;
  }
}
window.kitPage = kitPage;
window.opfsKit = callThrough<OpfsKitCalls, never>(new Worker('/opfs-kit-worker.js'), () => undefined);
