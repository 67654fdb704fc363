import type { FactStore, StoredFacts, StoreResult } from '../store.ts';

/** An empty place where facts can be kept, as the adapter's own tests set it up. */
export interface StorePlace {
  /** A new handle on this place; the first creates it. */
  open(): Promise<FactStore>;
  /** Ruins something of what is stored that holds one fact at least (a torn line, a damaged block). */
  damage(): Promise<void>;
  /** Throws all notes away, as a browser short of room or a careful cleaner might. */
  loseNotes(): Promise<void>;
  /**
   * From now on the n-th write to this place fails (n counts from 1; once, the ones after it go well). Gives back a
   * function that ends this and tells whether it came to that.
   */
  failWrite(n: number): Promise<() => boolean>;
  /** Closes what is open and removes the place. */
  dispose(): Promise<void>;
}

/** One case of the kit, ready to be registered as a test named `[rule] name`. */
export interface KitCase {
  readonly rule: string;
  readonly name: string;
  /** Resolves where the store keeps the rule, rejects with an Error where it does not. */
  run(): Promise<void>;
}

/** A case as the kit writes it: it is given its place. */
export interface PlaceCase {
  readonly rule: string;
  readonly name: string;
  run(place: StorePlace): Promise<void>;
}

/** Throws an Error with both values where they are not the same JSON. */
export function mustBe(actual: unknown, expected: unknown, what: string): void {
  const actualJson = JSON.stringify(actual);
  const expectedJson = JSON.stringify(expected);
  if (actualJson !== expectedJson) throw new Error(`${what}: expected ${expectedJson}, got ${actualJson}`);
}

/** The value of a result that must be good. */
export function mustBeGood<T>(result: StoreResult<T>, what: string): T {
  if (result.ok) return result.value;
  throw new Error(`${what}: expected to go well, got ${result.failure.code} (${result.failure.message})`);
}

/** Throws where a result is good or has another code. */
export function mustFail(result: StoreResult<unknown>, codes: readonly string[], what: string): void {
  const got = result.ok ? 'ok' : result.failure.code;
  if (!codes.includes(got)) throw new Error(`${what}: expected ${codes.join(' or ')}, got ${got}`);
}

/** Loads and insists that it goes well. */
export async function loaded(store: FactStore): Promise<StoredFacts> {
  return mustBeGood(await store.load(), 'load');
}

/** The ids in the order in which they are loaded. */
export async function loadedIds(store: FactStore): Promise<readonly string[]> {
  return (await loaded(store)).facts.map((fact) => fact.id);
}

/** Appends and insists that it goes well. */
export async function mustAppend(
  store: FactStore,
  ...facts: Parameters<FactStore['append']>[0]
): Promise<number> {
  return mustBeGood(await store.append(facts), 'append').added;
}
