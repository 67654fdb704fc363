import 'fake-indexeddb/auto';
import { kitFact, storeKitCases } from '@sedgeline/journal/store-kit';
import { openDB } from 'idb';
import { afterEach, describe, expect, it } from 'vitest';
import { idbPlace } from '../../e2e/storage/idb-place.ts';
import { browserFailure } from './browser-failure.ts';
import { openFactDatabase } from './idb-schema.ts';
import { deleteIdbStore, type IdbStore, openIdbStore } from './idb-store.ts';

describe('IndexedDB store keeps the storage port', () => {
  for (const { rule, name, run } of storeKitCases(idbPlace)) it(`[${rule}] ${name}`, run);
});

describe('IndexedDB store: blocks and tabs', () => {
  const NAME = 'blocks-and-tabs';
  const NOTHING_TO_HEAR = { onBlocked: () => undefined, onLost: () => undefined };
  const facts = (from: number, to: number) =>
    Array.from({ length: to - from + 1 }, (_, i) => kitFact(from + i));
  const open = async (): Promise<IdbStore> => {
    const result = await openIdbStore(NAME);
    if (!result.ok) throw new Error(result.failure.message);
    return result.value;
  };
  /** Facts of late, one append each hundred, so that they do not go into blocks at once. */
  const appendRecent = async (store: IdbStore, from: number, to: number) => {
    for (let n = from; n <= to; n += 100) await store.append(facts(n, Math.min(n + 99, to)));
  };
  const counts = async () => {
    const db = await openFactDatabase(NAME, NOTHING_TO_HEAR);
    const found = { recent: await db.count('recent'), blocks: await db.count('blocks') };
    db.close();
    return found;
  };
  afterEach(async () => {
    await deleteIdbStore(NAME);
  });

  it('packs whole blocks of 500, and the journal stays the same', async () => {
    const store = await open();
    await appendRecent(store, 1, 1100);
    expect(await counts()).toEqual({ recent: 1100, blocks: 0 });
    expect(await store.pack()).toEqual({ ok: true, value: { packed: 1000 } });
    expect(await counts()).toEqual({ recent: 100, blocks: 2 });
    expect(await store.load()).toEqual({ ok: true, value: { facts: facts(1, 1100), damage: [] } });
    await store.close();
  });

  it('packs by itself after a load of many', async () => {
    const store = await open();
    await appendRecent(store, 1, 1000);
    await store.load();
    await store.close();
    expect(await counts()).toEqual({ recent: 0, blocks: 2 });
  });

  it('knows a packed fact again, and refuses another with its id', async () => {
    const store = await open();
    await store.append(facts(1, 500));
    expect(await counts()).toEqual({ recent: 0, blocks: 1 });
    expect(await store.append(facts(490, 501))).toEqual({ ok: true, value: { added: 1 } });
    expect(await store.append(facts(1, 501))).toEqual({ ok: true, value: { added: 0 } });
    const other = await store.append([kitFact(250, { note: 'another' })]);
    expect(other.ok ? 'ok' : other.failure.code).toBe('FACT_CONFLICT');
    await store.close();
  });

  it('tells of a damaged block, saves the rest of it, and takes the lost fact again', async () => {
    const store = await open();
    await store.append(facts(1, 1000));
    const db = await openFactDatabase(NAME, NOTHING_TO_HEAR);
    const [key] = await db.getAllKeys('blocks');
    const text = (await db.get('blocks', key!))!;
    await db.put('blocks', text.slice(0, -10), key!);
    db.close();
    const loaded = await store.load();
    expect(loaded.ok && loaded.value.facts.length).toBe(999);
    expect(loaded.ok && loaded.value.damage.length).toBe(1);
    expect(await store.append(facts(1, 1000))).toEqual({ ok: true, value: { added: 1 } });
    const again = await store.load();
    expect(again.ok && again.value.facts).toEqual(facts(1, 1000));
    await store.close();
  });

  it('a pack that fails changes nothing', async () => {
    const store = await open();
    await appendRecent(store, 1, 600);
    const place = await idbPlace();
    const end = await place.failWrite(300);
    expect((await store.pack()).ok).toBe(false);
    expect(end()).toBe(true);
    expect(await counts()).toEqual({ recent: 600, blocks: 0 });
    await store.close();
    await place.dispose();
  });

  it('gives the database up to a newer version, and says that it is closed', async () => {
    const store = await open();
    await store.append(facts(1, 2));
    const newer = await openDB(NAME, 2);
    const after = await store.append(facts(3, 3));
    expect(after.ok ? 'ok' : after.failure.code).toBe('STORE_CLOSED');
    newer.close();
    const older = await openIdbStore(NAME);
    expect(older.ok ? 'ok' : older.failure.code).toBe('STORE_REFUSED');
  });

  // Names of errors: Indexed Database API 3.0, W3C, section "Exceptions".
  it.each([
    [new DOMException('', 'QuotaExceededError'), 'STORE_FULL'],
    [new DOMException('', 'UnknownError'), 'STORE_REFUSED'],
    [new DOMException('', 'AbortError'), 'STORE_REFUSED'],
    [new DOMException('The database connection is closing.', 'InvalidStateError'), 'STORE_CLOSED'],
    [new TypeError('a bug'), 'STORE_BROKEN'],
  ])('takes %s for %s', (error, code) => {
    expect(browserFailure(error).code).toBe(code);
  });
});
