import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { storeKitCases } from '@sedgeline/journal/store-kit';
import { startKillableBrowser } from './killable-browser.ts';
import type {} from './kit-page.ts';
import { type KitServer, startKitServer } from './kit-server.ts';

/** Facts acknowledged before the browser is killed (our judgement: enough for a flush to be under way). */
const ACKNOWLEDGED_MIN = 50;

let server: KitServer;
test.beforeAll(async () => {
  server = await startKitServer();
});
test.afterAll(async () => {
  await server.close();
});

test.describe('IndexedDB in a real browser keeps the storage port', () => {
  const noPlace = () => Promise.reject(new Error('the cases run in the page'));
  storeKitCases(noPlace).forEach(({ rule, name }, index) => {
    test(`[${rule}] ${name}`, async ({ page }) => {
      await page.goto(server.url);
      await page.evaluate((i) => window.kitPage.runCase(i), index);
    });
  });

  test('[S10] two tabs write at once and both see everything', async ({ context }) => {
    const [left, right] = [await context.newPage(), await context.newPage()];
    for (const page of [left, right]) await page.goto(server.url);
    const append = (from: number, to: number) => async (page: typeof left) =>
      page.evaluate(([a, b]) => window.kitPage.append('tabs', a!, b!, 1), [from, to]);
    expect(await Promise.all([append(1, 40)(left), append(31, 70)(right)])).toEqual(['ok', 'ok']);
    for (const page of [left, right]) {
      const { count, damage } = await page.evaluate(() => window.kitPage.load('tabs'));
      expect({ count, damage }).toEqual({ count: 70, damage: 0 });
    }
  });

  test('100,000 facts: written, and read in a time that is printed', async ({ page }) => {
    test.setTimeout(180_000);
    await page.goto(server.url);
    for (let from = 1; from <= 100_000; from += 10_000) {
      expect(await page.evaluate((a) => window.kitPage.append('many', a, a + 9999, 5000), from)).toBe('ok');
    }
    await page.reload();
    const { count, damage, ms } = await page.evaluate(() => window.kitPage.load('many'));
    expect({ count, damage }).toEqual({ count: 100_000, damage: 0 });
    test.info().annotations.push({ type: 'load of 100,000 facts', description: `${Math.round(ms)} ms` });
    console.log(`load of 100,000 facts from IndexedDB: ${Math.round(ms)} ms`);
    await page.evaluate(() => window.kitPage.deleteStore('many'));
  });

  test('[S1] the browser killed in mid-work: every fact that was acknowledged is there', async () => {
    const profile = await mkdtemp(join(tmpdir(), 'kit-profile-'));
    try {
      const acknowledged: string[] = [];
      const first = await startKillableBrowser(profile);
      const page = await first.newPage();
      await page.goto(server.url);
      const enough = new Promise<void>((resolve) => {
        page.on('console', (message) => {
          const id = /^acknowledged (.+)$/.exec(message.text())?.[1];
          if (id !== undefined) acknowledged.push(id);
          if (acknowledged.length === ACKNOWLEDGED_MIN) resolve();
        });
      });
      const endless = page.evaluate(() => window.kitPage.appendForEver('killed')).catch(String);
      await enough;
      await first.kill();
      expect(await endless).toContain('closed');

      const second = await startKillableBrowser(profile);
      const again = await second.newPage();
      await again.goto(server.url);
      const { ids, damage } = await again.evaluate(() => window.kitPage.load('killed'));
      await second.kill();
      expect(damage).toBe(0);
      expect(acknowledged.length).toBeGreaterThanOrEqual(ACKNOWLEDGED_MIN);
      expect(acknowledged.filter((id) => !ids.includes(id))).toEqual([]);
    } finally {
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    }
  });
});
