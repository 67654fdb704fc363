import { describe, it } from 'vitest';
import { newMemoryPlace, openMemoryStore } from './memory-store.ts';
import { type StorePlace, storeKitCases } from './store-kit.ts';

async function memoryPlace(): Promise<StorePlace> {
  const place = newMemoryPlace();
  return {
    open: async () => openMemoryStore(place),
    damage: async () => {
      const [id, line] = [...place.lines].at(-1)!;
      place.lines.set(id, line.slice(0, 20));
    },
    loseNotes: async () => place.notes.clear(),
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
}

describe('memory store keeps the storage port', () => {
  for (const { rule, name, run } of storeKitCases(memoryPlace)) it(`[${rule}] ${name}`, run);
});
