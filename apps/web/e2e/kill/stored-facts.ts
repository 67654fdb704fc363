import type { Page } from '@playwright/test';

/** A fact as far as these tests look into it. */
export interface StoredFact {
  readonly id: string;
  readonly kind: string;
  readonly at: string;
  readonly clock: string;
  readonly body: {
    readonly rep?: string;
    readonly session?: string;
    readonly legs?: readonly { readonly grade: string }[];
  };
}

/** The facts of the browser's database, read by another hand than the program's, in the order of their clocks, then ids. */
export async function factsInDatabase(page: Page): Promise<readonly StoredFact[]> {
  const texts = await page.evaluate(
    () =>
      new Promise<string[]>((resolve, reject) => {
        const open = indexedDB.open('sedgeline');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const db = open.result;
          const lines: string[] = [];
          const tx = db.transaction(['recent', 'blocks']);
          const recent = tx.objectStore('recent').getAll();
          const blocks = tx.objectStore('blocks').getAll();
          tx.onerror = () => reject(tx.error);
          tx.oncomplete = () => {
            db.close();
            for (const { line } of recent.result) lines.push(line);
            resolve([...lines, ...blocks.result]);
          };
        };
      }),
  );
  return inOrder(texts.join('\n'));
}

/** The facts of the second copy, likewise. */
export async function factsInCopy(page: Page): Promise<readonly StoredFact[]> {
  const text = await page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('sedgeline-copy');
    return (await (await folder.getFileHandle('facts.jsonl')).getFile()).text();
  });
  return inOrder(text);
}

function inOrder(text: string): readonly StoredFact[] {
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line): StoredFact => JSON.parse(line))
    .toSorted((a, b) => (`${a.clock} ${a.id}` < `${b.clock} ${b.id}` ? -1 : 1));
}

/** The reps of a record in their order, each with the grades it has by now. */
export function repsOf(
  facts: readonly StoredFact[],
): readonly { readonly rep: string; readonly grades: readonly string[] }[] {
  const reps = new Map<string, readonly string[]>();
  for (const { kind, body } of facts) {
    if (kind !== 'rep-recorded' && kind !== 'rep-amended') continue;
    if (body.rep !== undefined && body.legs !== undefined)
      reps.set(
        body.rep,
        body.legs.map(({ grade }) => grade),
      );
  }
  return Array.from(reps, ([rep, grades]) => ({ rep, grades }));
}
