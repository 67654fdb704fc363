import { loaded, loadedIds, mustAppend, mustBe, mustBeGood, mustFail, type PlaceCase } from './kit-case.ts';
import { kitFact, kitFacts } from './kit-facts.ts';

const FAILURES = ['STORE_FULL', 'STORE_REFUSED', 'STORE_BROKEN'];
/** More writes than any adapter makes for the appends of one case. */
const WRITES_MAX = 200;

/** What is acknowledged stays; what is not leaves nothing behind. */
export const durabilityCases: readonly PlaceCase[] = [
  {
    rule: 'S1',
    name: 'what append acknowledged is there for a handle opened afterwards',
    run: async (place) => {
      const store = await place.open();
      mustBe(await mustAppend(store, kitFact(1), kitFact(2)), 2, 'added');
      await store.close();
      const again = await place.open();
      mustBe(await loadedIds(again), ['fact-000001', 'fact-000002'], 'ids');
    },
  },
  {
    rule: 'S1',
    name: 'and without the first handle being closed, as after a crash',
    run: async (place) => {
      const store = await place.open();
      await mustAppend(store, kitFact(1));
      mustBe(await loadedIds(await place.open()), ['fact-000001'], 'ids');
    },
  },
  {
    rule: 'S2',
    name: 'a refused append adds none of its facts',
    run: async (place) => {
      const store = await place.open();
      await mustAppend(store, kitFact(1));
      const facts = [kitFact(2), kitFact(1, { note: 'another' }), kitFact(3)];
      mustFail(await store.append(facts), ['FACT_CONFLICT'], 'append');
      mustBe(await loadedIds(store), ['fact-000001'], 'ids');
      mustBe(await loadedIds(await place.open()), ['fact-000001'], 'ids of another handle');
    },
  },
  {
    rule: 'S2',
    name: 'the n-th write fails, for n = 1 until nothing fails: all or none, nothing acknowledged lost, and it goes on',
    run: async (place) => {
      const kept = [kitFact(1)];
      await mustAppend(await place.open(), kitFact(1));
      for (let n = 1; n <= WRITES_MAX; n += 1) {
        const store = await place.open();
        const end = await place.failWrite(n);
        for (const next of [10 * n, 10 * n + 5]) {
          const facts = [kitFact(next), kitFact(next + 1), kitFact(next + 2)];
          const result = await store.append(facts);
          if (result.ok) kept.push(...facts);
          else mustFail(result, FAILURES, `append while write ${n} fails`);
          mustBe((await loaded(store)).facts, kept, `facts after write ${n} failed`);
        }
        const itFailed = end();
        mustBe(
          (await loaded(await place.open())).facts,
          kept,
          `facts of a new handle after write ${n} failed`,
        );
        await store.close();
        if (!itFailed) {
          if (n === 1) throw new Error('failWrite(1): expected a write to fail, none did');
          return;
        }
      }
      throw new Error(`expected an append to need fewer than ${WRITES_MAX} writes`);
    },
  },
  {
    rule: 'S3',
    name: 'appending nothing adds nothing, and an empty place holds nothing',
    run: async (place) => {
      const store = await place.open();
      mustBe(await loaded(store), { facts: [], damage: [] }, 'an empty place');
      mustBe(await mustAppend(store), 0, 'added');
      mustBe(await loaded(store), { facts: [], damage: [] }, 'after appending nothing');
    },
  },
  {
    rule: 'S11',
    name: 'two thousand facts in one append, and a fact of a million bytes',
    run: async (place) => {
      const store = await place.open();
      mustBe(await mustAppend(store, ...kitFacts(1, 2000)), 2000, 'added');
      const large = kitFact(2001, { note: 'x'.repeat(1_000_000) });
      mustBe(await mustAppend(store, large), 1, 'added');
      const { facts, damage } = await loaded(await place.open());
      mustBe(damage, [], 'damage');
      mustBe(facts, [...kitFacts(1, 2000), large], 'facts');
    },
  },
  {
    rule: 'S12',
    name: 'a fact that could not be read back is refused, and nothing of its append is kept',
    run: async (place) => {
      const store = await place.open();
      let deep: unknown = 'the bottom';
      for (let level = 0; level < 40; level += 1) deep = [deep];
      const unfit = [
        kitFact(2, { note: 'x'.repeat(1_048_576) }),
        kitFact(2, { deep }),
        { ...kitFact(2), at: 'yesterday' },
        { ...kitFact(2), kind: 'dog-added', body: { dog: 'd1' } },
      ];
      for (const fact of unfit) mustFail(await store.append([kitFact(1), fact]), ['STORE_REFUSED'], 'append');
      mustBe(await loaded(store), { facts: [], damage: [] }, 'the place');
    },
  },
  {
    rule: 'S13',
    name: 'after close everything answers STORE_CLOSED; what was under way is finished first',
    run: async (place) => {
      const store = await place.open();
      const underWay = store.append([kitFact(1)]);
      await store.close();
      mustBe(mustBeGood(await underWay, 'the append under way').added, 1, 'added');
      mustFail(await store.append([kitFact(2)]), ['STORE_CLOSED'], 'append');
      mustFail(await store.load(), ['STORE_CLOSED'], 'load');
      mustFail(await store.readNote('a'), ['STORE_CLOSED'], 'readNote');
      mustFail(await store.writeNote('a', 1), ['STORE_CLOSED'], 'writeNote');
      await store.close();
      mustBe(await loadedIds(await place.open()), ['fact-000001'], 'ids');
    },
  },
];
