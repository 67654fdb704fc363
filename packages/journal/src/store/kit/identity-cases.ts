import { loaded, loadedIds, mustAppend, mustBe, mustFail, type PlaceCase } from './kit-case.ts';
import { kitFact } from './kit-facts.ts';

/** A fact with what careless stores lose: unknown fields, odd keys and texts, empty things, nested lists. */
const STRANGE_LINE =
  '{"id":"fact-000007","kind":"kind-of-another-program","at":"2026-03-01T10:00:00+01:00","zeal":{"b":1,"a":[null,true,[]]},' +
  '"body":{"quotes \\" and \\\\":"line\\nend\\u2028tab\\tnull\\u0000","__proto__":{"x":1},"constructor":"c","":"",' +
  '"half":"\\ud83d","emoji":"🐕","umlaut":"Hündin","tiny":5e-324,"big":1.7976931348623157e+308,"third":0.1},"by":"h1"}';

/** One id is one fact, and a fact stays what it was. */
export const identityCases: readonly PlaceCase[] = [
  {
    rule: 'S4',
    name: 'a fact that is there already is let pass, alone, beside new ones and twice in one append',
    run: async (place) => {
      const store = await place.open();
      mustBe(await mustAppend(store, kitFact(1)), 1, 'added at first');
      mustBe(await mustAppend(store, kitFact(1)), 0, 'added the second time');
      mustBe(await mustAppend(store, kitFact(1), kitFact(2), kitFact(2)), 1, 'added beside a new one');
      mustBe(await loadedIds(store), ['fact-000001', 'fact-000002'], 'ids');
    },
  },
  {
    rule: 'S4',
    name: 'the order of keys makes no other fact',
    run: async (place) => {
      const store = await place.open();
      const { id, kind, at, body, clock, device } = kitFact(1, { a: 1, b: { c: 2, d: 3 } });
      await mustAppend(store, { id, kind, at, body, clock, device });
      const turned = { device, clock, body: { b: { d: 3, c: 2 }, a: 1 }, at, kind, id };
      mustBe(await mustAppend(store, turned), 0, 'added');
    },
  },
  {
    rule: 'S5',
    name: 'the same id with other contents is refused, named, and changes nothing',
    run: async (place) => {
      const store = await place.open();
      await mustAppend(store, kitFact(1));
      const other = kitFact(1, { note: 'another' });
      for (const handle of [store, await place.open()]) {
        const result = await handle.append([other]);
        mustFail(result, ['FACT_CONFLICT'], 'append');
        if (!result.ok) mustBe(result.failure.factId, 'fact-000001', 'factId');
        mustBe((await loaded(handle)).facts, [kitFact(1)], 'facts');
      }
      mustFail(
        await store.append([kitFact(2), kitFact(2, { note: 'another' })]),
        ['FACT_CONFLICT'],
        'in one append',
      );
    },
  },
  {
    rule: 'S6',
    name: 'facts load in the order of clock, then id, however they were appended',
    run: async (place) => {
      const store = await place.open();
      const late = { ...kitFact(3), id: 'a' };
      const twin = { ...kitFact(3), id: 'b' };
      await mustAppend(store, kitFact(5), twin, kitFact(1));
      await mustAppend(store, late, kitFact(4));
      const inOrder = ['fact-000001', 'a', 'b', 'fact-000004', 'fact-000005'];
      mustBe(await loadedIds(store), inOrder, 'ids');
      mustBe(await loadedIds(await place.open()), inOrder, 'ids of another handle');
    },
  },
  {
    rule: 'S7',
    name: 'unknown kinds and fields come back to the byte',
    run: async (place) => {
      const store = await place.open();
      await mustAppend(store, JSON.parse(STRANGE_LINE));
      for (const handle of [store, await place.open()]) {
        const { facts, damage } = await loaded(handle);
        mustBe(damage, [], 'damage');
        mustBe(
          facts.map((fact) => JSON.stringify(fact)),
          [JSON.stringify(JSON.parse(STRANGE_LINE))],
          'lines',
        );
        mustBe(await mustAppend(handle, JSON.parse(STRANGE_LINE)), 0, 'added again');
      }
    },
  },
  {
    rule: 'S8',
    name: 'what the caller changes afterwards changes nothing in the store',
    run: async (place) => {
      const store = await place.open();
      const body = { note: 'as it was' };
      const under = store.append([kitFact(1, body)]);
      body.note = 'changed';
      await under;
      const loadedBody = (await loaded(store)).facts[0]?.body as { note?: string } | undefined;
      mustBe(loadedBody?.note, 'as it was', 'note');
      if (loadedBody !== undefined) loadedBody.note = 'changed too';
      mustBe((await loaded(store)).facts, [kitFact(1, { note: 'as it was' })], 'facts');
      mustBe(await mustAppend(store, kitFact(1, { note: 'as it was' })), 0, 'added again');
    },
  },
];
