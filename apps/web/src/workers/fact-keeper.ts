import type { Fact, FactStore, StoredFacts, StoreFailure, StoreResult } from '@sedgeline/journal';
import type { NotSaved } from './kennel-calls.ts';

/** Writes facts to the store, and holds on to those it would not take. */
export interface FactKeeper {
  /** What the store holds, with nothing lost if it cannot be read: then the failure is stated and the list is empty. */
  load(): Promise<StoredFacts>;
  /** Resolves when the facts are on disk (`true`), or kept in memory for another try (`false`). One write at a time. */
  keep(facts: readonly Fact[]): Promise<boolean>;
  /** Tries again what is in memory alone. */
  retry(): Promise<boolean>;
  readonly notSaved: NotSaved | null;
  readonly notSavedFacts: readonly Fact[];
  readNote(name: string): Promise<unknown>;
  /** Notes are rebuildable: one that cannot be written is let go. */
  writeNote(name: string, value: unknown): Promise<void>;
  close(): Promise<void>;
}

/** A keeper over a store that may not even open; it is asked for again at every write until it does. */
export function createFactKeeper(openStore: () => Promise<StoreResult<FactStore>>): FactKeeper {
  let store: FactStore | null = null;
  let failure: StoreFailure | null = null;
  let inMemory: readonly Fact[] = [];
  let last: Promise<unknown> = Promise.resolve();

  const opened = async (): Promise<FactStore | null> => {
    if (store !== null) return store;
    const result = await openStore();
    if (result.ok) store = result.value;
    else failure = result.failure;
    return store;
  };
  const write = async (facts: readonly Fact[]): Promise<boolean> => {
    inMemory = [...inMemory, ...facts];
    if (inMemory.length === 0) return true;
    const open = await opened();
    if (open === null) return false;
    const result = await open.append(inMemory);
    failure = result.ok ? null : result.failure;
    if (result.ok) inMemory = [];
    // A store that was closed under us (another tab, the system) is opened afresh at the next write.
    else if (result.failure.code === 'STORE_CLOSED') store = null;
    return result.ok;
  };
  const inTurn = <T>(job: () => Promise<T>): Promise<T> => {
    const result = last.then(job);
    last = result.catch(() => undefined);
    return result;
  };
  return {
    load: () =>
      inTurn(async () => {
        const open = await opened();
        const result = open === null ? null : await open.load();
        if (result?.ok === true) return result.value;
        if (result !== null) failure = result.failure;
        return { facts: [], damage: [] };
      }),
    keep: (facts) => inTurn(() => write(facts)),
    retry: () => inTurn(() => write([])),
    get notSaved() {
      return failure === null ? null : { count: inMemory.length, failure };
    },
    get notSavedFacts() {
      return inMemory;
    },
    readNote: async (name) => {
      const open = await opened();
      const result = await open?.readNote(name);
      return result?.ok === true ? result.value : undefined;
    },
    writeNote: async (name, value) => {
      await store?.writeNote(name, value);
    },
    close: () =>
      inTurn(async () => {
        await store?.close();
        store = null;
      }),
  };
}
