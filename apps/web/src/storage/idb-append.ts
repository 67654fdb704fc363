import { type Fact, type FactLine, newLines, type StoreResult, storedFact } from '@sedgeline/journal';
import type { IDBPDatabase, IDBPTransaction } from 'idb';
import { blockText, readBlock, splitIntoBlocks } from './fact-blocks.ts';
import type { FactDatabase } from './idb-schema.ts';

const FACT_STORES = ['recent', 'blocks', 'packed'] as const;
type FactStores = (typeof FACT_STORES)[number][];
type WriteTransaction = IDBPTransaction<FactDatabase, FactStores, 'readwrite'>;
/** Above this many facts it is faster to read all ids at once than to ask for each (our judgement, measured). */
const ASK_EACH_MAX = 200;

/**
 * Runs work in one strict transaction over the facts. Resolves only when the transaction is done, on disk; where
 * anything throws, the transaction is aborted, so that nothing of it stays, and the error is thrown on.
 */
export async function inWriteTransaction<T>(
  db: IDBPDatabase<FactDatabase>,
  work: (tx: WriteTransaction) => Promise<T>,
): Promise<T> {
  const tx = db.transaction([...FACT_STORES], 'readwrite', { durability: 'strict' });
  const done = tx.done.then(
    () => ({ error: undefined }),
    (error: unknown) => ({ error }),
  );
  try {
    const value = await work(tx);
    const { error } = await done;
    if (error !== undefined) throw error;
    return value;
  } catch (error) {
    abort(tx);
    await done;
    throw error;
  }
}

/** Writes those of the lines that are not there; whole blocks of a large append at once as blocks. */
export async function writeNewLines(
  tx: WriteTransaction,
  lines: readonly FactLine[],
): Promise<StoreResult<{ readonly added: number }>> {
  const there = await factsThere(tx, lines);
  const toWrite = newLines(lines, (id) => there.get(id));
  if (!toWrite.ok) return toWrite;
  const { blocks, rest } = splitIntoBlocks(toWrite.value);
  await Promise.all([
    ...rest.map(async (one) => tx.objectStore('recent').put(one)),
    ...blocks.map((block) => putBlock(tx, block)),
  ]);
  return { ok: true, value: { added: toWrite.value.length } };
}

/** Moves recent facts that can be read into blocks, as many as fill whole ones. Gives their number. */
export async function moveIntoBlocks(tx: WriteTransaction): Promise<number> {
  const recent = await tx.objectStore('recent').getAll();
  const readable = recent.filter(({ line }) => storedFact(line) !== undefined);
  const { blocks } = splitIntoBlocks(readable);
  const moved = blocks.flat();
  await Promise.all([
    ...blocks.map((block) => putBlock(tx, block)),
    ...moved.map(async ({ id }) => tx.objectStore('recent').delete(id)),
  ]);
  return moved.length;
}

async function putBlock(tx: WriteTransaction, block: readonly FactLine[]): Promise<void> {
  const key = await tx.objectStore('blocks').add(blockText(block));
  await tx.objectStore('packed').put({ ids: block.map((one) => one.id) }, key);
}

/** What is stored, and can be read, under the ids of the lines. */
async function factsThere(
  tx: WriteTransaction,
  lines: readonly FactLine[],
): Promise<ReadonlyMap<string, Fact>> {
  const there = new Map<string, Fact>();
  const wanted = new Set(lines.map((one) => one.id));
  const blockKeys = new Set<number>();
  if (wanted.size > ASK_EACH_MAX) {
    for (const one of await tx.objectStore('recent').getAll()) addFact(there, wanted, storedFact(one.line));
    const keys = await tx.objectStore('packed').getAllKeys();
    const holdings = await tx.objectStore('packed').getAll();
    holdings.forEach(({ ids }, i) => {
      if (ids.some((id) => wanted.has(id))) blockKeys.add(keys[i]!);
    });
  } else {
    const byId = tx.objectStore('packed').index('ids');
    const found = await Promise.all(
      [...wanted].map(async (id) => {
        const [one, keys] = await Promise.all([tx.objectStore('recent').get(id), byId.getAllKeys(id)]);
        return { one, keys };
      }),
    );
    for (const { one, keys } of found) {
      addFact(there, wanted, storedFact(one?.line));
      for (const key of keys) blockKeys.add(key);
    }
  }
  const texts = await Promise.all([...blockKeys].map((key) => tx.objectStore('blocks').get(key)));
  for (const text of texts) for (const fact of readBlock(text).facts) addFact(there, wanted, fact);
  return there;
}

function addFact(there: Map<string, Fact>, wanted: ReadonlySet<string>, fact: Fact | undefined): void {
  if (fact !== undefined && wanted.has(fact.id)) there.set(fact.id, fact);
}

/** A transaction that ended by itself cannot be aborted: then there is nothing to undo. */
function abort(tx: WriteTransaction): void {
  try {
    tx.abort();
  } catch (error) {
    if (!(error instanceof Error) || error.name !== 'InvalidStateError') throw error;
  }
}
