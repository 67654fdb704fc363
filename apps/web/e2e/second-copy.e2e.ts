import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { beginWorkerWith } from './begin-worker-with.ts';
import { factsInCopy, factsInDatabase } from './kill/stored-facts.ts';
import { expect, test } from './served-app.ts';
import { allWell, gradeLeg, repNumber, said, startFirst, wideKey } from './steps.ts';
import { violations } from './violations.ts';

const { keeping } = said;

/** Leaves the program for a page of the same site that holds nothing open. */
const leaveProgram = (page: Page) => page.goto('/icon.svg');

const emptyDatabase = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const gone = indexedDB.deleteDatabase('sedgeline');
        gone.onsuccess = () => resolve();
        gone.onerror = () => reject(gone.error);
      }),
  );

const emptyCopy = (page: Page) =>
  page.evaluate(async () => {
    await (await navigator.storage.getDirectory()).removeEntry('sedgeline-copy', { recursive: true });
  });

/** Some reps and a graded leg; gives how many facts there are, once both copies have them and the marker says so. */
async function recordSome(page: Page): Promise<number> {
  await page.goto('/');
  await startFirst(page, 'Scoter', 'stop');
  for (let rep = 0; rep < 3; rep++) await allWell(page);
  await gradeLeg(page, 'fair');
  const facts = (await factsInDatabase(page)).length;
  await expect.poll(async () => (await factsInCopy(page)).length).toBe(facts);
  await expect.poll(() => page.evaluate(() => localStorage.getItem('sedgeline.record'))).toBe(String(facts));
  return facts;
}

test('a database that was emptied comes back from the second copy, said plainly, and Work opens where it was', async ({
  page,
}) => {
  const facts = await recordSome(page);
  const rep = await repNumber(page);
  await leaveProgram(page);
  await emptyDatabase(page);
  await page.goto('/');
  await expect(page.getByText(keeping.restored(facts))).toBeVisible();
  await expect(page).toHaveURL(/\/work\/.+/);
  // The news takes its room from the card: the pad stays whole under the thumb.
  await expect(wideKey(page)).toBeInViewport({ ratio: 1 });
  expect(await violations(page)).toEqual([]);
  expect(await repNumber(page)).toBe(rep);
  await expect(page.locator('.work-leg[data-grade="fair"]')).toHaveCount(1);
  expect(await factsInDatabase(page)).toEqual(await factsInCopy(page));
  await page.getByRole('button', { name: keeping.read }).click();
  await expect(page.getByText(keeping.restored(facts))).toBeHidden();
  await allWell(page);
  // Said once: the next time all is as it should be.
  await page.reload();
  await expect(page.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
  await expect(page.getByRole('button', { name: keeping.read })).toBeHidden();
});

test('facts that are gone from the database alone come back one by one', async ({ page }) => {
  await recordSome(page);
  const before = await factsInDatabase(page);
  const lost = before.filter(({ kind }) => kind === 'rep-recorded').map(({ id }) => id);
  await leaveProgram(page);
  await page.evaluate(
    (ids) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('sedgeline');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const tx = open.result.transaction('recent', 'readwrite');
          for (const id of ids) tx.objectStore('recent').delete(id);
          tx.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    lost,
  );
  await page.goto('/');
  await expect(page.getByText(keeping.restored(lost.length))).toBeVisible();
  expect(await factsInDatabase(page)).toEqual(before);
});

test('a second copy that was thrown away is made anew, in silence', async ({ page }) => {
  await recordSome(page);
  const before = await factsInDatabase(page);
  await leaveProgram(page);
  await emptyCopy(page);
  await page.goto('/');
  await expect(page.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
  await expect.poll(async () => (await factsInCopy(page).catch(() => [])).length).toBe(before.length);
  expect(await factsInCopy(page)).toEqual(before);
  await expect(page.getByRole('button', { name: keeping.read })).toBeHidden();
});

test('with both gone it is said what is missing and what to do, and an export brings it back', async ({
  page,
}) => {
  const facts = await recordSome(page);
  await page.goto('/setup');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: said.setup.record.export }).click(),
  ]);
  const file = {
    name: download.suggestedFilename(),
    mimeType: 'application/x-ndjson',
    buffer: await readFile(await download.path()),
  };
  await expect(page.getByText(keeping.copy)).toBeVisible();
  await leaveProgram(page);
  await emptyDatabase(page);
  await emptyCopy(page);
  await page.goto('/');
  const gone = page.getByText(keeping.missing(facts));
  await expect(gone).toBeVisible();
  expect(await violations(page)).toEqual([]);
  // It stands until it is read, or until what is missing is there again.
  await page.reload();
  await expect(gone).toBeVisible();
  await page.getByRole('link', { name: keeping.toSetup }).click();
  await page.locator('input[type="file"]').setInputFiles({ ...file, buffer: Buffer.from('no export') });
  await expect(page.getByText(keeping.notAnExport)).toBeVisible();
  await page.locator('input[type="file"]').setInputFiles(file);
  await expect(
    page.getByText(keeping.broughtBack({ added: facts, known: 0, differing: 0, unreadable: 0 })),
  ).toBeVisible();
  await page.locator('input[type="file"]').setInputFiles(file);
  await expect(
    page.getByText(keeping.broughtBack({ added: 0, known: facts, differing: 0, unreadable: 0 })),
  ).toBeVisible();
  await page.goto('/');
  await expect(page).toHaveURL(/\/work\/.+/);
  await expect(page.locator('.work-leg[data-grade="fair"]')).toHaveCount(1);
  await expect(gone).toBeHidden();
  expect(await factsInDatabase(page)).toEqual(await factsInCopy(page));
});

test('where the database cannot be opened, the record is read from the second copy and goes on there', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ serviceWorkers: 'block', baseURL });
  const page = await context.newPage();
  await recordSome(page);
  const rep = await repNumber(page);
  await leaveProgram(page);
  await beginWorkerWith(
    context,
    `indexedDB.open = () => { throw new DOMException('refused (the test says so)', 'UnknownError'); };\n`,
  );
  await page.goto('/');
  await expect(page.locator('.work-not-saved')).toBeVisible();
  await expect.poll(() => repNumber(page)).toBe(rep);
  await allWell(page);
  await expect(page.getByRole('button', { name: said.work.notSaved.file })).toBeVisible();
  await page.goto('/');
  // The first picture is the last one that was noted; the true one follows it.
  await expect.poll(() => repNumber(page)).toBe(rep + 1);
  await context.close();
});

test('the invented kennel has no second copy, and leaves the handler’s own alone', async ({ page }) => {
  const facts = await recordSome(page);
  await page.goto('/setup');
  await page.getByRole('button', { name: said.setup.demo.enter }).click();
  await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
  expect((await factsInCopy(page)).length).toBe(facts);
  await page.getByRole('button', { name: said.shell.leaveDemo }).first().click();
  await expect(page.getByText('Scoter').first()).toBeVisible();
  expect((await factsInCopy(page)).length).toBe(facts);
  await expect(page.getByRole('button', { name: keeping.read })).toBeHidden();
});

test('an export that is chosen before the record has been read is brought back all the same', async ({
  page,
}) => {
  await beginWorkerWith(
    page,
    `{ const from = performance.now(); while (performance.now() - from < 1500); }\n`,
  );
  await page.goto('/setup');
  const fact = {
    id: 'f1',
    kind: 'dog-added',
    at: '2026-03-01T09:00:00Z',
    body: { dog: 'd', name: 'Garganey' },
  };
  const buffer = Buffer.from(JSON.stringify(fact));
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'one.jsonl', mimeType: 'application/x-ndjson', buffer });
  await expect(
    page.getByText(keeping.broughtBack({ added: 1, known: 0, differing: 0, unreadable: 0 })),
  ).toBeVisible();
  await page.getByRole('link', { name: said.shell.places.dogs }).click();
  await expect(page.getByText('Garganey').first()).toBeVisible();
});
