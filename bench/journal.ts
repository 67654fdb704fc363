import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  type Fact,
  mergeFacts,
  newMemoryPlace,
  openMemoryStore,
  orderFacts,
  readJournal,
  writeJournal,
} from '@sedgeline/journal';
import { openFileStore } from '../apps/cli/src/storage/file-store.ts';

/** Facts in the bench's journal: some 30 dogs over ten years. */
const FACTS = 100_000;
/** Each measure is taken so often, and the median told; the plain array's is taken beside it each time. */
const ROUNDS = 5;
const START_MS = 1_772_355_600_000;

/** An invented rep of three legs. */
function rep(n: number): Fact {
  const legs = ['line', 'stop', 'cast-left'].map((skill) => ({
    skill,
    ask: { distanceM: 40 + (n % 60), wayFraction: 0.5, turnDeg: 90, otherDummies: n % 3 },
    grade: n % 4 === 0 ? 'fair' : 'good',
  }));
  return {
    id: `fact-${n.toString(36)}`,
    kind: 'rep-recorded',
    at: new Date(START_MS + n * 40_000).toISOString(),
    body: { rep: `rep-${n}`, session: `session-${Math.floor(n / 12)}`, legs },
    clock: `${START_MS + n * 40_000}-0000-phone`,
    device: 'phone',
  };
}

const facts = Array.from({ length: FACTS }, (_, n) => rep(n));
/** The same facts in an order that has nothing to do with time: a multiplier prime to their number walks through all. */
const shuffled = facts.map((_, n) => facts[(n * 7919) % FACTS]!);
const text = writeJournal(facts);
const shuffledText = writeJournal(shuffled);

async function measureMs(work: () => unknown): Promise<number> {
  const startMs = performance.now();
  await work();
  return performance.now() - startMs;
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!;

/** Runs both in turn and prints the medians and their ratio. */
async function compare(
  name: string,
  ours: () => unknown,
  plainName: string,
  plain: () => unknown,
): Promise<void> {
  const oursMs: number[] = [];
  const plainMs: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    plainMs.push(await measureMs(plain));
    oursMs.push(await measureMs(ours));
  }
  const [our, other] = [median(oursMs), median(plainMs)];
  console.log(
    `${name}: ${our.toFixed(0)} ms, ${(our / other).toFixed(2)} times ${plainName} (${other.toFixed(0)} ms)`,
  );
}

const plainRead = () =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Fact);
const plainWrite = () => facts.map((fact) => `${JSON.stringify(fact)}\n`).join('');

console.log(`${FACTS} facts of ${Math.round(text.length / FACTS)} bytes, median of ${ROUNDS}`);
await compare(
  'read text into validated, ordered facts',
  () => readJournal(text),
  'an array of JSON.parse',
  plainRead,
);
await compare(
  'the same, lines in no order',
  () => readJournal(shuffledText),
  'an array of JSON.parse',
  plainRead,
);
await compare(
  'order facts that stand in no order',
  () => orderFacts(shuffled),
  'an array of JSON.parse',
  plainRead,
);
await compare(
  'merge two halves that overlap',
  () => mergeFacts(facts.slice(0, 60_000), facts.slice(40_000)),
  'an array of JSON.parse',
  plainRead,
);
await compare(
  'append all to a memory store',
  () => openMemoryStore(newMemoryPlace()).append(facts),
  'an array of JSON.stringify',
  plainWrite,
);

const folder = await mkdtemp(join(tmpdir(), 'bench-journal-'));
let files = 0;
try {
  const append = async () => {
    files += 1;
    const result = await openFileStore(join(folder, `${files}.jsonl`)).append(facts);
    if (!result.ok) throw new Error(result.failure.message);
  };
  const load = async () => {
    const result = await openFileStore(join(folder, '1.jsonl')).load();
    if (!result.ok || result.value.facts.length !== FACTS) throw new Error('load: expected every fact');
  };
  await compare('append all to a file, fsync included', append, 'an array of JSON.stringify', plainWrite);
  await compare('load all from a file', load, 'an array of JSON.parse', plainRead);
} finally {
  await rm(folder, { recursive: true });
}
