import type { Fact, FactStore, StoredFacts, StoreFailure, StoreResult } from '@sedgeline/journal';
import type { NotSaved } from './kennel-calls.ts';

/** The second copy of a record: a store that can tell which facts it holds without reading them. */
export interface SecondCopy extends FactStore {
  ids(): Promise<StoreResult<ReadonlySet<string>>>;
}

/** Writes facts to the store and to its second copy, and holds on to those the store would not take. */
export interface FactKeeper {
  /**
   * What the store holds; where that is nothing, or cannot be read, what the second copy holds, put back into the store. Nothing is
   * lost if neither can be read: then the failure is stated and the list is empty.
   */
  load(): Promise<StoredFacts>;
  /** Resolves when the facts are on disk (`true`), or kept in memory for another try (`false`). One write at a time. */
  keep(facts: readonly Fact[]): Promise<boolean>;
  /** Tries again what is in memory alone. */
  retry(): Promise<boolean>;
  /** Brings store and second copy together where one lacks what the other has; gives facts of the copy that are not among `known`. */
  compare(known: readonly Fact[]): Promise<readonly Fact[]>;
  /** How many facts were gone from the store and came back from the second copy. */
  readonly restored: number;
  /** There is a second copy, and it took what it was given last. */
  readonly hasCopy: boolean;
  readonly notSaved: NotSaved | null;
  readonly notSavedFacts: readonly Fact[];
  readNote(name: string): Promise<unknown>;
  /** Notes are rebuildable: one that cannot be written is let go. */
  writeNote(name: string, value: unknown): Promise<void>;
  close(): Promise<void>;
}

/** Where a keeper keeps: a store that may not even open (asked for again at every write until it does), and a copy where there can be one. */
export interface KeeperDoors {
  readonly openStore: () => Promise<StoreResult<FactStore>>;
  readonly openCopy: () => Promise<SecondCopy | null>;
}

export function createFactKeeper({ openStore, openCopy }: KeeperDoors): FactKeeper {
  let store: FactStore | null = null;
  let copying: Promise<SecondCopy | null> | null = null;
  let failure: StoreFailure | null = null;
  let inMemory: readonly Fact[] = [];
  /** Facts of the copy that the store still lacks, since it could not be opened. */
  let owed: readonly Fact[] = [];
  let restored = 0;
  let hasCopy = false;
  let last: Promise<unknown> = Promise.resolve();

  const opened = async (): Promise<FactStore | null> => {
    if (store !== null) return store;
    const result = await openStore();
    if (result.ok) store = result.value;
    else failure = result.failure;
    return store;
  };
  const copyOpened = (): Promise<SecondCopy | null> => {
    copying ??= openCopy();
    return copying;
  };
  const writeStore = async (): Promise<boolean> => {
    if (owed.length + inMemory.length === 0) return true;
    const open = await opened();
    if (open === null) return false;
    const result = await open.append([...owed, ...inMemory]);
    failure = result.ok ? null : result.failure;
    if (result.ok) {
      inMemory = [];
      owed = [];
    }
    // A store that was closed under us (another tab, the system) is opened afresh at the next write.
    else if (result.failure.code === 'STORE_CLOSED') store = null;
    return result.ok;
  };
  const writeCopy = async (facts: readonly Fact[]): Promise<void> => {
    const copy = await copyOpened();
    if (copy === null) return;
    const result = await copy.append(facts);
    hasCopy = result.ok;
  };
  /** Side by side: a tap waits for the slower of the two alone. What the copy would not take, it is given at the next start. */
  const write = async (facts: readonly Fact[]): Promise<boolean> => {
    inMemory = [...inMemory, ...facts];
    const [saved] = await Promise.all([writeStore(), facts.length === 0 ? null : writeCopy(facts)]);
    return saved;
  };
  /** Puts facts of the copy back into the store; counts those that were gone from it. */
  const putBack = async (facts: readonly Fact[]): Promise<void> => {
    const result = await (await opened())?.append(facts);
    if (result?.ok === true) {
      restored += result.value.added;
      return;
    }
    restored += facts.length;
    owed = [...owed, ...facts];
    if (result !== undefined) failure = result.failure;
  };
  const copyFacts = async (): Promise<readonly Fact[]> => {
    const read = await (await copyOpened())?.load();
    return read?.ok === true ? read.value.facts : [];
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
        if (result?.ok === true && result.value.facts.length > 0) return result.value;
        if (result?.ok === false) failure = result.failure;
        const facts = await copyFacts();
        if (facts.length > 0) await putBack(facts);
        return { facts, damage: result?.ok === true ? result.value.damage : [] };
      }),
    keep: (facts) => inTurn(() => write(facts)),
    retry: () => inTurn(() => write([])),
    compare: (known) =>
      inTurn(async () => {
        const copy = await copyOpened();
        const ids = await copy?.ids();
        hasCopy = ids?.ok === true;
        if (ids?.ok !== true) return [];
        const knownIds = new Set(known.map(({ id }) => id));
        const lacking = known.filter(({ id }) => !ids.value.has(id));
        if (lacking.length > 0) await writeCopy(lacking);
        if (![...ids.value].some((id) => !knownIds.has(id))) return [];
        const found = (await copyFacts()).filter(({ id }) => !knownIds.has(id));
        if (found.length > 0) await putBack(found);
        return found;
      }),
    get restored() {
      return restored;
    },
    get hasCopy() {
      return hasCopy;
    },
    get notSaved() {
      return failure === null ? null : { count: inMemory.length, failure };
    },
    get notSavedFacts() {
      return inMemory;
    },
    readNote: async (name) => {
      const open = (await opened()) ?? (await copyOpened());
      const result = await open?.readNote(name);
      return result?.ok === true ? result.value : undefined;
    },
    writeNote: async (name, value) => {
      await (store ?? (await copyOpened()))?.writeNote(name, value);
    },
    close: () =>
      inTurn(async () => {
        await store?.close();
        await (await copying)?.close();
        store = null;
        copying = null;
      }),
  };
}
