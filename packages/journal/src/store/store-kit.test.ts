import { describe, expect, it } from 'vitest';
import type { Fact } from '../fact.ts';
import { type MemoryPlace, newMemoryPlace, openMemoryStore } from './memory-store.ts';
import type { FactStore } from './store.ts';
import { kitRules, type StorePlace, storeKitCases } from './store-kit.ts';

/** What a saboteur may change: a store over its place, and what happens to the place between two openings. */
interface Sabotage {
  readonly store?: (good: FactStore, place: MemoryPlace) => FactStore;
  readonly onOpen?: (place: MemoryPlace) => void;
  readonly loseNotes?: (place: MemoryPlace) => void;
}

const factsOf = async (store: FactStore): Promise<readonly Fact[]> => {
  const result = await store.load();
  return result.ok ? result.value.facts : [];
};
const loading = (good: FactStore, change: (facts: readonly Fact[]) => readonly Fact[]): FactStore => ({
  ...good,
  load: async () => {
    const result = await good.load();
    return result.ok ? { ok: true, value: { ...result.value, facts: change(result.value.facts) } } : result;
  },
});

/** For each rule a store that breaks it and does everything else well: proof that the rule's cases can fail. */
const SABOTAGES: Readonly<Record<string, Sabotage>> = {
  S1: { onOpen: (place) => place.lines.clear() },
  S2: {
    store: (good) => ({
      ...good,
      append: async (facts) => {
        let added = 0;
        for (const fact of facts) {
          const result = await good.append([fact]);
          if (!result.ok) return result;
          added += result.value.added;
        }
        return { ok: true, value: { added } };
      },
    }),
  },
  S3: {
    store: (good) => ({
      ...good,
      append: (facts) =>
        facts.length > 0
          ? good.append(facts)
          : Promise.resolve({ ok: false, failure: { code: 'STORE_REFUSED', message: 'nothing to add' } }),
    }),
  },
  S4: {
    store: (good) => ({
      ...good,
      append: async (facts) => {
        const result = await good.append(facts);
        return result.ok ? { ok: true, value: { added: facts.length } } : result;
      },
    }),
  },
  S5: {
    store: (good, place) => ({
      ...good,
      append: (facts) => {
        for (const fact of facts) place.lines.delete(fact.id);
        return good.append(facts);
      },
    }),
  },
  S6: { store: (good) => loading(good, (facts) => facts.toReversed()) },
  S7: {
    store: (good) =>
      loading(good, (facts) =>
        facts.map(({ id, kind, at, body, clock, device, by }) => ({ id, kind, at, body, clock, device, by })),
      ),
  },
  S8: {
    store: (good) => {
      const kept = new Map<string, Fact>();
      return {
        ...good,
        append: (facts) => {
          for (const fact of facts) if (!kept.has(fact.id)) kept.set(fact.id, fact);
          return good.append(facts);
        },
        load: async () => {
          const facts = await factsOf(good);
          return { ok: true, value: { facts: facts.map((fact) => kept.get(fact.id) ?? fact), damage: [] } };
        },
      };
    },
  },
  S9: {
    store: (good) => {
      let isBusy = false;
      return {
        ...good,
        append: async (facts) => {
          if (isBusy) return { ok: true, value: { added: facts.length } };
          isBusy = true;
          const result = await good.append(facts);
          isBusy = false;
          return result;
        },
      };
    },
  },
  S10: {
    store: (good) => {
      let first: Promise<readonly Fact[]> | undefined;
      return {
        ...good,
        append: (facts) => {
          first ??= factsOf(good);
          return good.append(facts);
        },
        load: async () => {
          first ??= factsOf(good);
          return { ok: true, value: { facts: await first, damage: [] } };
        },
      };
    },
  },
  S11: {
    store: (good) => ({ ...good, append: (facts) => good.append(facts.slice(0, 1000)) }),
  },
  S12: {
    store: (good, place) => ({
      ...good,
      append: async (facts) => {
        for (const fact of facts) place.lines.set(fact.id, JSON.stringify(fact));
        return { ok: true, value: { added: facts.length } };
      },
    }),
  },
  S13: { store: (good) => ({ ...good, close: async () => undefined }) },
  S14: { loseNotes: (place) => place.lines.clear() },
  S15: {
    store: (good) => ({
      ...good,
      load: async () => {
        const result = await good.load();
        if (!result.ok || result.value.damage.length === 0) return result;
        return { ok: false, failure: { code: 'STORE_BROKEN', message: 'something cannot be read' } };
      },
    }),
  },
};

function placeWith(sabotage: Sabotage): () => Promise<StorePlace> {
  return async () => {
    const place = newMemoryPlace();
    return {
      open: async () => {
        sabotage.onOpen?.(place);
        const good = openMemoryStore(place);
        return sabotage.store?.(good, place) ?? good;
      },
      damage: async () => {
        const [id, line] = [...place.lines].at(-1)!;
        place.lines.set(id, line.slice(0, 20));
      },
      loseNotes: async () => {
        place.notes.clear();
        sabotage.loseNotes?.(place);
      },
      failWrite: async (n) => {
        let left = n;
        place.beforeWrite = () => {
          left -= 1;
          if (left === 0) throw new Error('this write was made to fail');
        };
        return () => {
          place.beforeWrite = undefined;
          return left <= 0;
        };
      },
      dispose: async () => place.lines.clear(),
    };
  };
}

describe('the contract kit finds a store that breaks a rule', () => {
  it('has a saboteur for every rule', () => {
    expect(Object.keys(SABOTAGES)).toEqual(kitRules(storeKitCases(placeWith({}))));
  });

  it.each(Object.entries(SABOTAGES))('%s', async (rule, sabotage) => {
    const ofTheRule = storeKitCases(placeWith(sabotage)).filter((one) => one.rule === rule);
    const outcomes = await Promise.allSettled(ofTheRule.map((one) => one.run()));
    expect(outcomes.some((outcome) => outcome.status === 'rejected')).toBe(true);
  });
});
