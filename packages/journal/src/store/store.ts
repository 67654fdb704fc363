import type { Fact } from '../fact.ts';

/** Stable codes of a store's failures; the screens turn each into a sentence that says what to do. */
export type StoreFailureCode =
  | 'STORE_FULL'
  | 'STORE_REFUSED'
  | 'STORE_BROKEN'
  | 'STORE_CLOSED'
  | 'FACT_CONFLICT';

/** The world said no: what, and where it can be said, which fact. */
export interface StoreFailure {
  readonly code: StoreFailureCode;
  readonly message: string;
  readonly factId?: string | undefined;
}

export type StoreResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly failure: StoreFailure };

/** What was read from a store, and what could not be. Order is the journal's: clock, then id. */
export interface StoredFacts {
  readonly facts: readonly Fact[];
  /** Parts that could not be read (a torn last line, a damaged block), in words; nothing else is lost. */
  readonly damage: readonly { readonly where: string; readonly message: string }[];
}

/**
 * The storage port: where a journal is kept. Rules are numbered in `docs/storage-port.md`; every adapter passes the
 * same contract kit (`@sedgeline/journal/store-kit`), each test named by its rule.
 */
export interface FactStore {
  /** Adds facts, all or none; resolves only when they would survive a power cut. A fact already there is let pass. */
  append(facts: readonly Fact[]): Promise<StoreResult<{ readonly added: number }>>;
  /** Every fact. */
  load(): Promise<StoreResult<StoredFacts>>;
  /** Small rebuildable values beside the journal (checkpoints); losing them loses nothing. */
  readNote(name: string): Promise<StoreResult<unknown>>;
  writeNote(name: string, value: unknown): Promise<StoreResult<null>>;
  close(): Promise<void>;
}
