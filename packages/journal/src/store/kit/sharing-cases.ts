import { loaded, loadedIds, mustAppend, mustBe, mustBeGood, type PlaceCase } from './kit-case.ts';
import { kitFact, kitFacts } from './kit-facts.ts';

/** Several handles, several appends at once: two tabs, two programs. */
export const sharingCases: readonly PlaceCase[] = [
  {
    rule: 'S9',
    name: 'appends that were not waited for are all there',
    run: async (place) => {
      const store = await place.open();
      const results = await Promise.all(kitFacts(1, 40).map((fact) => store.append([fact])));
      mustBe(
        results.map((result) => mustBeGood(result, 'append').added),
        Array(40).fill(1),
        'added',
      );
      mustBe((await loaded(await place.open())).facts, kitFacts(1, 40), 'facts');
    },
  },
  {
    rule: 'S10',
    name: 'two handles write at once and both see everything',
    run: async (place) => {
      const [left, right] = [await place.open(), await place.open()];
      const appends = kitFacts(1, 30).map((fact, i) => (i % 2 === 0 ? left : right).append([fact]));
      for (const append of appends) mustBe(mustBeGood(await append, 'append').added, 1, 'added');
      mustBe((await loaded(left)).facts, kitFacts(1, 30), 'facts of the one');
      mustBe((await loaded(right)).facts, kitFacts(1, 30), 'facts of the other');
    },
  },
  {
    rule: 'S10',
    name: 'two handles that add the same fact add it once; of two that disagree one is refused',
    run: async (place) => {
      const [left, right] = [await place.open(), await place.open()];
      const same = await Promise.all([left.append([kitFact(1)]), right.append([kitFact(1)])]);
      mustBe(
        same.reduce((sum, result) => sum + mustBeGood(result, 'append').added, 0),
        1,
        'added by both',
      );
      const other = kitFact(2, { note: 'another' });
      const quarrel = await Promise.all([left.append([kitFact(2)]), right.append([other])]);
      mustBe(quarrel.filter((result) => result.ok).length, 1, 'appends that went well');
      const failure = quarrel.find((result) => !result.ok);
      mustBe(failure?.ok === false ? failure.failure.code : 'none', 'FACT_CONFLICT', 'code');
      mustBe(await loadedIds(left), ['fact-000001', 'fact-000002'], 'ids');
      mustBe((await loaded(left)).facts, (await loaded(right)).facts, 'facts of both');
    },
  },
  {
    rule: 'S10',
    name: 'one handle closed leaves the other at work',
    run: async (place) => {
      const [left, right] = [await place.open(), await place.open()];
      await mustAppend(left, kitFact(1));
      await left.close();
      await mustAppend(right, kitFact(2));
      mustBe(await loadedIds(right), ['fact-000001', 'fact-000002'], 'ids');
    },
  },
];
