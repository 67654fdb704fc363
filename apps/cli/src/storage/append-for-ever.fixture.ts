import { kitFact } from '@sedgeline/journal/store-kit';
import { openFileStore } from './file-store.ts';

/**
 * A process that appends facts to the journal it is given until it is killed, and says each id once it is acknowledged.
 * Arguments: the file, the number of the first fact, the step to the next.
 */
const [path, first, step] = process.argv.slice(2);
if (path === undefined) throw new Error('expected the path of a journal');
const store = openFileStore(path);
for (let n = Number(first); ; n += Number(step)) {
  const result = await store.append([kitFact(n)]);
  if (!result.ok) throw new Error(`${result.failure.code}: ${result.failure.message}`);
  process.stdout.write(`${kitFact(n).id}\n`);
}
