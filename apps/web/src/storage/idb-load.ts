import { type Fact, orderFacts, type StoredFacts, storedFact } from '@sedgeline/journal';
import type { IDBPDatabase } from 'idb';
import { readBlock } from './fact-blocks.ts';
import type { FactDatabase } from './idb-schema.ts';

/** Reads every fact in one transaction, so that a pack between the two reads can neither hide nor double one. */
export async function loadFacts(
  db: IDBPDatabase<FactDatabase>,
): Promise<StoredFacts & { readonly recent: number }> {
  const tx = db.transaction(['recent', 'blocks'], 'readonly');
  const blocks = tx.objectStore('blocks');
  const [keys, texts, recent] = await Promise.all([
    blocks.getAllKeys(),
    blocks.getAll(),
    tx.objectStore('recent').getAll(),
    tx.done,
  ]);
  const facts: Fact[] = [];
  const damage: { where: string; message: string }[] = [];
  texts.forEach((text, i) => {
    const reading = readBlock(text);
    for (const fact of reading.facts) facts.push(fact);
    if (reading.unreadable > 0) {
      const message = `${reading.unreadable} of its facts cannot be read; the others are here`;
      damage.push({ where: `block ${keys[i]}`, message });
    }
  });
  for (const { id, line } of recent) {
    const fact = storedFact(line);
    if (fact !== undefined) facts.push(fact);
    else damage.push({ where: `fact ${id}`, message: 'this fact cannot be read; the others are here' });
  }
  return { facts: orderFacts(facts), damage, recent: recent.length };
}
