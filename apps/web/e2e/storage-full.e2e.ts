import type { Page } from '@playwright/test';
import { beginWorkerWith } from './begin-worker-with.ts';
import { expect, test } from './served-app.ts';
import { allWell, exportedFacts, gradeLeg, repNumber, said, startFirst } from './steps.ts';

/**
 * Put before the worker's own script: while told so, the browser's database says that it is full, as it says it on a
 * full phone. (Chromium's own override of the quota does not reach IndexedDB.)
 */
const FULL_WHEN_TOLD = `
  let isFull = false;
  new BroadcastChannel('test-room').onmessage = ({ data }) => { isFull = data === 'full'; };
  for (const name of ['add', 'put']) {
    const write = IDBObjectStore.prototype[name];
    IDBObjectStore.prototype[name] = function (...all) {
      if (isFull) throw new DOMException('no room (the test says so)', 'QuotaExceededError');
      return write.apply(this, all);
    };
  }
`;
const REFUSED = `indexedDB.open = () => { throw new DOMException('refused (the test says so)', 'SecurityError'); };\n`;

const tellRoom = (page: Page, room: 'full' | 'free') =>
  page.evaluate((word) => {
    const channel = new BroadcastChannel('test-room');
    channel.postMessage(word);
    channel.close();
  }, room);

test('a full device is said, the rep is kept, a file is offered, and the next try saves it', async ({
  page,
}) => {
  await beginWorkerWith(page, FULL_WHEN_TOLD);
  await page.goto('/');
  await startFirst(page, 'Brent', 'stop');
  await allWell(page);
  await tellRoom(page, 'full');

  const n = await repNumber(page);
  await gradeLeg(page, 'good');
  const bar = page.locator('.work-not-saved');
  await expect(bar).toBeVisible();
  await expect(bar).toHaveAttribute('data-code', 'STORE_FULL');
  await expect(bar).toContainText(said.failures.store('STORE_FULL').what);
  // Work goes on: the leg is graded on the pad, the rep is the same.
  await expect(page.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
  expect(await repNumber(page)).toBe(n);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: said.work.notSaved.file }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  const facts = Buffer.concat(chunks)
    .toString('utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(facts.map((fact) => fact.kind)).toEqual(['rep-recorded']);

  // Room again: another try saves what waited.
  await tellRoom(page, 'free');
  await page.getByRole('button', { name: said.work.notSaved.retry }).click();
  await expect(bar).toBeHidden();
  const kinds = (await exportedFacts(page)).map((fact) => fact.kind);
  expect(kinds.filter((kind) => kind === 'rep-recorded')).toHaveLength(2);
});

test('a browser that lets nothing be kept is said, and work goes on in memory', async ({ page }) => {
  await beginWorkerWith(page, REFUSED);
  await page.goto('/');
  await startFirst(page, 'Gadwall', 'stop');
  await expect(page.locator('.work-not-saved')).toHaveAttribute('data-code', 'STORE_REFUSED');
  await allWell(page);
  await expect(page.getByRole('button', { name: said.work.notSaved.file })).toBeVisible();
});
