import type { Fact } from '@sedgeline/journal';
import { openIdbStore } from '../../apps/web/src/storage/idb-store.ts';

/** So many facts in one transaction: a merge's size. */
const EACH = 5000;

/** In the page: reads the facts that the bench serves and writes them to the app's own database. */
async function fillStore(): Promise<number> {
  const lines = (await (await fetch('/bench/facts.jsonl')).text()).split('\n').filter((line) => line !== '');
  const opened = await openIdbStore('sedgeline');
  if (!opened.ok) throw new Error(opened.failure.message);
  for (let i = 0; i < lines.length; i += EACH) {
    const facts = lines.slice(i, i + EACH).map((line) => JSON.parse(line) as Fact);
    const result = await opened.value.append(facts);
    if (!result.ok) throw new Error(result.failure.message);
  }
  await opened.value.close();
  return lines.length;
}

Object.assign(globalThis, { fillStore });
