import { loaded, mustAppend, mustBe, mustBeGood, type PlaceCase } from './kit-case.ts';
import { kitFact, kitFacts } from './kit-facts.ts';

/** Notes that may be lost, and stored parts that cannot be read. */
export const damageCases: readonly PlaceCase[] = [
  {
    rule: 'S14',
    name: 'a note comes back as it was written last; one never written is undefined',
    run: async (place) => {
      const store = await place.open();
      mustBe(mustBeGood(await store.readNote('state'), 'readNote') === undefined, true, 'undefined at first');
      mustBeGood(await store.writeNote('state', { upTo: 'fact-000001', means: [0.5, -1] }), 'writeNote');
      mustBeGood(await store.writeNote('state', { upTo: 'fact-000002', means: [] }), 'writeNote');
      mustBeGood(await store.writeNote('other/../name', 'text'), 'writeNote');
      for (const handle of [store, await place.open()]) {
        const state = mustBeGood(await handle.readNote('state'), 'readNote');
        mustBe(state, { upTo: 'fact-000002', means: [] }, 'state');
        mustBe(mustBeGood(await handle.readNote('other/../name'), 'readNote'), 'text', 'the other note');
      }
      mustBe(await loaded(store), { facts: [], damage: [] }, 'the facts');
    },
  },
  {
    rule: 'S14',
    name: 'notes lost lose nothing',
    run: async (place) => {
      const store = await place.open();
      await mustAppend(store, kitFact(1));
      mustBeGood(await store.writeNote('state', { upTo: 'fact-000001' }), 'writeNote');
      await place.loseNotes();
      const again = await place.open();
      mustBe(mustBeGood(await again.readNote('state'), 'readNote') === undefined, true, 'the note is gone');
      mustBe(await loaded(again), { facts: [kitFact(1)], damage: [] }, 'the facts');
      mustBeGood(await again.writeNote('state', 1), 'writeNote');
    },
  },
  {
    rule: 'S15',
    name: 'damage is told, not fatal: the facts around it load, and the store goes on',
    run: async (place) => {
      const store = await place.open();
      await mustAppend(store, ...kitFacts(1, 9));
      await store.close();
      await place.damage();
      const again = await place.open();
      const before = await loaded(again);
      if (before.damage.length === 0) throw new Error('damage: expected to be told of it, got none');
      const intact = before.facts.length;
      if (intact < 8) throw new Error(`expected 8 facts at least to be whole, got ${intact}`);
      mustBe(await mustAppend(again, kitFact(20)), 1, 'added');
      const after = (await loaded(await place.open())).facts;
      mustBe(after, [...before.facts, kitFact(20)], 'facts afterwards');
    },
  },
  {
    rule: 'S15',
    name: 'a fact that was damaged can be appended again',
    run: async (place) => {
      const store = await place.open();
      await mustAppend(store, ...kitFacts(1, 9));
      await store.close();
      await place.damage();
      const again = await place.open();
      mustBeGood(await again.append(kitFacts(1, 9)), 'append');
      mustBe((await loaded(await place.open())).facts, kitFacts(1, 9), 'facts');
    },
  },
];
