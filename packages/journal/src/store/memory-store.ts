import type { Fact } from '../fact.ts';
import { orderFacts } from '../order.ts';
import { readFactLine } from '../read-fact-line.ts';
import { appendLines, newLines, storedFact } from './plan-append.ts';
import type { FactStore, StoredFacts, StoreFailure, StoreResult } from './store.ts';

/** Where a memory store keeps its lines and notes; several stores may share one. Lost with the process. */
export interface MemoryPlace {
  /** Id to line. */
  readonly lines: Map<string, string>;
  /** Name to JSON. */
  readonly notes: Map<string, string>;
  /** Called before each write; what it throws is the failure of that write. Left out: every write goes well. */
  beforeWrite?: (() => void) | undefined;
}

export function newMemoryPlace(): MemoryPlace {
  return { lines: new Map(), notes: new Map() };
}

const CLOSED: StoreFailure = { code: 'STORE_CLOSED', message: 'the store was closed' };

/**
 * A store that keeps facts as lines in memory: for tests, previews and the invented kennel. Passes the contract kit, but
 * "survives a power cut" only for as long as the process lives.
 */
export function openMemoryStore(place: MemoryPlace): FactStore {
  let isClosed = false;
  const answer = async <T>(work: () => StoreResult<T>): Promise<StoreResult<T>> => {
    if (isClosed) return { ok: false, failure: CLOSED };
    try {
      return work();
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      return { ok: false, failure: { code: 'STORE_BROKEN', message } };
    }
  };
  return {
    append: (facts) =>
      answer(() => {
        const lines = appendLines(facts);
        if (!lines.ok) return lines;
        const toWrite = newLines(lines.value, (id) => storedFact(place.lines.get(id)));
        if (!toWrite.ok) return toWrite;
        place.beforeWrite?.();
        for (const { id, line } of toWrite.value) place.lines.set(id, line);
        return { ok: true, value: { added: toWrite.value.length } };
      }),
    load: () => answer(() => ({ ok: true, value: readLines(place.lines) })),
    readNote: (name) =>
      answer(() => {
        const json = place.notes.get(name);
        return { ok: true, value: json === undefined ? undefined : (JSON.parse(json) as unknown) };
      }),
    writeNote: (name, value) =>
      answer(() => {
        place.beforeWrite?.();
        place.notes.set(name, JSON.stringify(value ?? null));
        return { ok: true, value: null };
      }),
    close: async () => {
      isClosed = true;
    },
  };
}

function readLines(lines: ReadonlyMap<string, string>): StoredFacts {
  const facts: Fact[] = [];
  const damage: { where: string; message: string }[] = [];
  for (const [id, line] of lines) {
    const reading = readFactLine(line);
    if (reading.ok) facts.push(reading.fact);
    else damage.push({ where: `fact ${id}`, message: reading.problems[0]!.message });
  }
  return { facts: orderFacts(facts), damage };
}
