import { expect, test } from '@playwright/test';
import { storeKitCases } from '@sedgeline/journal/store-kit';
import type {} from './kit-page.ts';
import { type KitServer, startKitServer } from './kit-server.ts';

/**
 * How many times the median append to the database the median append to the file may take (our judgement: both run side by side within
 * a tap; 3 was measured on two cores with twelve processes waiting, where every step to the browser's own process waits its turn).
 */
const FILE_TO_DATABASE_MAX = 8;

const median = (values: readonly number[]) =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;

let server: KitServer;
test.beforeAll(async () => {
  server = await startKitServer();
});
test.afterAll(async () => {
  await server.close();
});

test.describe('the file of lines in a real browser keeps the storage port', () => {
  const noPlace = () => Promise.reject(new Error('the cases run in the worker'));
  storeKitCases(noPlace).forEach(({ rule, name }, index) => {
    test(`[${rule}] ${name}`, async ({ page }) => {
      await page.goto(server.url);
      await page.evaluate((i) => window.opfsKit.runCase(i), index);
    });
  });

  test('[S10] two tabs write at once and both see everything', async ({ context }) => {
    const [left, right] = [await context.newPage(), await context.newPage()];
    for (const page of [left, right]) await page.goto(server.url);
    const append = (from: number, to: number) => (page: typeof left) =>
      page.evaluate(
        ([a, b]) => window.opfsKit.append({ name: 'tabs', from: a!, to: b!, each: 1 }),
        [from, to],
      );
    await Promise.all([append(1, 40)(left), append(31, 70)(right)]);
    for (const page of [left, right]) {
      const { count, ids, damage } = await page.evaluate(() => window.opfsKit.load('tabs'));
      expect({ count, ids, damage }).toEqual({ count: 70, ids: 70, damage: 0 });
    }
  });

  test('a fact costs a tap little more than the database does: times are printed', async ({ page }) => {
    await page.goto(server.url);
    const { file, database } = await page.evaluate(() => window.opfsKit.race(150));
    const [fileMs, databaseMs] = [median(file), median(database)];
    console.log(
      `append of one fact, median: file ${fileMs.toFixed(2)}, database ${databaseMs.toFixed(2)} ms`,
    );
    expect(fileMs / databaseMs).toBeLessThan(FILE_TO_DATABASE_MAX);
  });

  test('20,000 facts are looked through for their ids, and read', async ({ page }) => {
    await page.goto(server.url);
    await page.evaluate(() => window.opfsKit.append({ name: 'many', from: 1, to: 20_000, each: 5000 }));
    const { count, ids, idsMs, loadMs } = await page.evaluate(() => window.opfsKit.load('many'));
    expect({ count, ids }).toEqual({ count: 20_000, ids: 20_000 });
    console.log(`20,000 facts in the file: ids ${idsMs.toFixed(0)} ms, load ${loadMs.toFixed(0)} ms`);
  });

  test('a file that was thrown away while it was in use is made anew', async ({ page }) => {
    await page.goto(server.url);
    const before = await page.evaluate(async () => {
      const keep = await window.opfsKit.append({ name: 'gone', from: 1, to: 3, each: 1 });
      await (await navigator.storage.getDirectory()).removeEntry('gone', { recursive: true });
      return keep;
    });
    const after = await page.evaluate(() => window.opfsKit.append({ name: 'gone', from: 1, to: 5, each: 1 }));
    expect([before, after]).toEqual([3, 5]);
  });
});
