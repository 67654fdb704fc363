import {
  type Fact,
  type MemoryPlace,
  newMemoryPlace,
  openMemoryStore,
  type StoreResult,
} from '@sedgeline/journal';
import { kitFact } from '@sedgeline/journal/store-kit';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createFactKeeper, type FactKeeper } from './fact-keeper.ts';
import { openMemoryCopy } from './host-in-hand.ts';

/** What happens to a record: a tap, with either place refusing it or not; a loss of one place; the program opened afresh. */
const HAPPENINGS = fc.array(
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc.record({
        do: fc.constant('tap' as const),
        storeFails: fc.boolean(),
        copyFails: fc.boolean(),
      }),
    },
    {
      weight: 1,
      arbitrary: fc.record({
        do: fc.constantFrom('lose-store' as const, 'lose-copy' as const, 'retry' as const),
      }),
    },
  ),
  { maxLength: 25 },
);
const SEEN = async (keeper: FactKeeper): Promise<readonly Fact[]> => {
  const { facts } = await keeper.load();
  return [...facts, ...(await keeper.compare(facts))];
};
const idsOf = (facts: readonly Fact[]): string[] => facts.map(({ id }) => id).toSorted();

function placesInHand(): { store: MemoryPlace; copy: MemoryPlace; open: () => FactKeeper } {
  const store = newMemoryPlace();
  const copy = newMemoryPlace();
  const open = () =>
    createFactKeeper({
      openStore: async () => ({ ok: true, value: openMemoryStore(store) }),
      openCopy: async () => openMemoryCopy(copy),
    });
  return { store, copy, open };
}

describe('two copies of a record', () => {
  it('lose no acknowledged fact while one of them is left, and double none', async () => {
    await fc.assert(
      fc.asyncProperty(HAPPENINGS, async (happenings) => {
        const { store, copy, open } = placesInHand();
        let keeper = open();
        const acknowledged = new Set<string>();
        /** In memory alone: gone with the program that held them, unless a copy took them. */
        const waiting: string[] = [];
        const fail = (place: MemoryPlace, fails: boolean) => {
          place.beforeWrite = fails
            ? () => {
                throw new Error('this write was made to fail');
              }
            : undefined;
        };
        let n = 0;
        for (const happening of happenings) {
          if (happening.do === 'tap') {
            n += 1;
            fail(store, happening.storeFails);
            fail(copy, happening.copyFails);
            waiting.push(kitFact(n).id);
            if (await keeper.keep([kitFact(n)])) for (const id of waiting.splice(0)) acknowledged.add(id);
            fail(store, false);
            fail(copy, false);
            continue;
          }
          if (happening.do === 'retry') {
            if (await keeper.retry()) for (const id of waiting.splice(0)) acknowledged.add(id);
            continue;
          }
          // The program is opened afresh, so that both copies are whole; then one of them goes, and it is opened again.
          await SEEN(open());
          (happening.do === 'lose-store' ? store : copy).lines.clear();
          keeper = open();
          waiting.length = 0;
          const seen = await SEEN(keeper);
          expect(new Set(idsOf(seen)).size).toBe(seen.length);
          for (const id of acknowledged) expect(idsOf(seen)).toContain(id);
          expect([...store.lines.keys()].toSorted()).toEqual(idsOf(seen));
          expect([...copy.lines.keys()].toSorted()).toEqual(idsOf(seen));
        }
      }),
      { numRuns: 150 },
    );
  });

  it('says how many facts came back, and only of those that were gone', async () => {
    const { store, open } = placesInHand();
    await open().keep([kitFact(1), kitFact(2), kitFact(3)]);
    store.lines.delete(kitFact(2).id);
    const once = open();
    expect(idsOf(await SEEN(once))).toEqual([1, 2, 3].map((n) => kitFact(n).id));
    expect(once.restored).toBe(1);
    const again = open();
    await SEEN(again);
    expect(again.restored).toBe(0);
    store.lines.clear();
    const emptied = open();
    await SEEN(emptied);
    expect(emptied.restored).toBe(3);
  });

  it('read the record from the copy where the store cannot be opened, and give it to the store when it can', async () => {
    const { store, copy, open } = placesInHand();
    await open().keep([kitFact(1), kitFact(2)]);
    store.lines.clear();
    let opening: StoreResult<ReturnType<typeof openMemoryStore>> = {
      ok: false,
      failure: { code: 'STORE_BROKEN', message: 'the test says so' },
    };
    const keeper = createFactKeeper({
      openStore: async () => opening,
      openCopy: async () => openMemoryCopy(copy),
    });
    expect(idsOf((await keeper.load()).facts)).toEqual([1, 2].map((n) => kitFact(n).id));
    expect(keeper.restored).toBe(2);
    expect(keeper.notSaved).toMatchObject({ count: 0, failure: { code: 'STORE_BROKEN' } });
    expect(await keeper.keep([kitFact(3)])).toBe(false);
    expect(copy.lines.size).toBe(3);
    opening = { ok: true, value: openMemoryStore(store) };
    expect(await keeper.retry()).toBe(true);
    expect([...store.lines.keys()].toSorted()).toEqual([1, 2, 3].map((n) => kitFact(n).id));
    expect(keeper.notSaved).toBeNull();
  });
});
