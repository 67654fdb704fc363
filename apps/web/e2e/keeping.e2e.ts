import type { Page } from '@playwright/test';
import { beginWorkerWith } from './begin-worker-with.ts';
import { expect, test } from './served-app.ts';
import { allWell, said, startFirst } from './steps.ts';

const { record } = said.setup;

/** What the browser answers when it is asked whether it keeps the record. */
const answerKeeping = (page: Page, persisted: boolean, persist: boolean) =>
  page.addInitScript(
    (says) => {
      navigator.storage.persisted = async () => says.persisted;
      navigator.storage.persist = async () => says.persist;
    },
    { persisted, persist },
  );

test('a browser that says no is told of plainly', async ({ page }) => {
  await answerKeeping(page, false, false);
  await page.goto('/setup');
  await expect(page.getByText(record.notKept)).toBeVisible();
  await page.getByRole('button', { name: record.askToKeep }).click();
  await expect(page.getByText(record.refused)).toBeVisible();
});

test('a promise that is taken back is told from one that was never given', async ({ page }) => {
  await answerKeeping(page, false, true);
  await page.goto('/setup');
  await page.getByRole('button', { name: record.askToKeep }).click();
  await expect(page.getByText(record.kept)).toBeVisible();
  await page.reload();
  await expect(page.getByText(said.keeping.revoked)).toBeVisible();
  await expect(page.getByRole('button', { name: record.askToKeep })).toBeVisible();
});

test('where nothing can be kept at all (no database, no files, no settings), work goes on and it is said', async ({
  page,
}) => {
  await beginWorkerWith(
    page,
    `
    indexedDB.open = () => { throw new DOMException('refused (the test says so)', 'SecurityError'); };
    navigator.storage.getDirectory = async () => { throw new DOMException('refused (the test says so)', 'SecurityError'); };
    `,
  );
  await page.addInitScript(() => {
    const refuse = () => {
      throw new DOMException('refused (the test says so)', 'SecurityError');
    };
    Storage.prototype.getItem = refuse;
    Storage.prototype.setItem = refuse;
  });
  await page.goto('/');
  await startFirst(page, 'Whimbrel', 'stop');
  await allWell(page);
  await expect(page.locator('.work-not-saved')).toHaveAttribute('data-code', 'STORE_REFUSED');
  await expect(page.getByRole('button', { name: said.work.notSaved.file })).toBeVisible();
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('button', { name: said.work.panel.end, exact: true }).click();
  await page.getByRole('link', { name: said.shell.places.setup, exact: true }).click();
  await expect(page.getByText(said.keeping.noCopy)).toBeVisible();
  await expect(page.getByRole('button', { name: record.export })).toBeEnabled();
});
