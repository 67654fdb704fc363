import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { allWell, exportedFacts, said, startFirst } from './steps.ts';

const { work } = said;
/** Longer, and much shorter, than the press that comes back (700 ms). */
const LONG_MS = 1000;
const SHORT_MS = 200;

const pocket = (page: Page) => page.getByRole('dialog', { name: work.pocket.title });
const hold = (page: Page) => page.getByRole('button', { name: work.pocket.hold });

async function intoPocket(page: Page): Promise<void> {
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await page.getByRole('button', { name: work.pocket.open }).click();
  await expect(pocket(page)).toBeVisible();
}

test('the pocket screen lets no touch through, and only a long press comes back', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Knot', 'stop');
  await intoPocket(page);
  await expect(pocket(page)).toContainText(work.pocket.awake);
  const box = await hold(page).boundingBox();
  if (box === null) throw new Error('expected the key to be on the screen');
  // Touches all over, a short press on the key, and one that strays: nothing happens, nothing is recorded.
  for (const [x, y] of [
    [195, 300],
    [195, 730],
    [60, 800],
    [330, 650],
  ] as const)
    await page.touchscreen.tap(x, y);
  await page.mouse.move(box.x + 60, box.y + 40);
  await page.mouse.down();
  await page.waitForTimeout(SHORT_MS);
  await page.mouse.up();
  await page.mouse.down();
  await page.mouse.move(box.x + 160, box.y + 40);
  await page.waitForTimeout(LONG_MS);
  await page.mouse.up();
  await expect(pocket(page)).toBeVisible();
  await expect(page.locator('.work-head-rep')).toHaveText(work.rep(1));
  // A remote goes on recording.
  await page.keyboard.press('PageDown');
  await expect(pocket(page)).toContainText(work.rep(2));
  await page.mouse.move(box.x + 60, box.y + 40);
  await page.mouse.down();
  await page.waitForTimeout(LONG_MS);
  await page.mouse.up();
  await expect(pocket(page)).toBeHidden();
  await expect(page.locator('.work-head-rep')).toHaveText(work.rep(2));
});

test('by keyboard the pocket screen is left by Escape, held', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Godwit', 'stop');
  await page.keyboard.press('p');
  await expect(pocket(page)).toBeVisible();
  await page.keyboard.down('Escape');
  await page.waitForTimeout(SHORT_MS);
  await page.keyboard.up('Escape');
  await expect(pocket(page)).toBeVisible();
  await page.keyboard.down('Escape');
  await page.waitForTimeout(LONG_MS);
  await page.keyboard.up('Escape');
  await expect(pocket(page)).toBeHidden();
});

test('a break can be felt and heard, or be quiet', async ({ page }) => {
  // What the device is asked for, seen at its door.
  await page.addInitScript(() => {
    document.addEventListener('DOMContentLoaded', () => {
      document.documentElement.dataset.felt = '';
    });
    Object.defineProperty(navigator, 'vibrate', {
      value: (pattern: number[]) => {
        document.documentElement.dataset.felt += `${pattern.length};`;
        return true;
      },
    });
  });
  await page.clock.install();
  await page.goto('/');
  await startFirst(page, 'Whimbrel', 'stop');
  const felt = () => page.evaluate(() => document.documentElement.dataset.felt ?? '');
  await allWell(page);
  expect(await felt()).toBe('1;');
  await page.keyboard.press('b');
  await expect(page.getByRole('timer')).toBeVisible();
  await expect(page.getByText(work.pocket.lockedBreak)).toBeVisible();
  await page.clock.fastForward('03:01');
  await expect(page.getByText(work.break.over, { exact: true })).toBeVisible();
  expect(await felt()).toContain('5;');
  await page.getByRole('button', { name: work.break.backToWork }).click();
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await page.getByRole('checkbox', { name: work.panel.switches.quiet }).check();
  await page.getByRole('button', { name: work.panel.close }).click();
  const before = await felt();
  await allWell(page);
  expect(await felt()).toBe(before);
});

test.describe('a voice note', () => {
  test('is said, kept on the device, heard again after a reload, and thrown away', async ({
    browser,
    baseURL,
  }) => {
    // A browser of its own: Chromium's invented microphone is asked for when it starts.
    const executable = process.env.SEDGELINE_BROWSER;
    const own = await browser.browserType().launch({
      ...(executable === undefined ? {} : { executablePath: executable }),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--use-fake-device-for-media-stream',
        '--use-fake-ui-for-media-stream',
      ],
    });
    const context = await own.newContext({ baseURL, viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    const sent: string[] = [];
    page.on('request', (request) => {
      if (request.method() !== 'GET') sent.push(request.url());
    });
    await page.goto('/');
    await startFirst(page, 'Ruff', 'stop');
    await allWell(page);
    const more = page.getByRole('button', { name: work.more, exact: true });
    await more.click();
    await page.getByRole('button', { name: work.voice.start }).click();
    const keep = page.getByRole('button', { name: /^Keep it/ });
    await expect(keep).toBeVisible();
    await page.waitForTimeout(1200);
    await keep.click();
    const play = page.locator('[data-voice]');
    await expect(play).toHaveCount(1);
    await page.reload();
    await more.click();
    await expect(play).toHaveCount(1);
    await play.click();
    await expect(page.locator('[role="alert"]')).toHaveCount(0);
    const kept = () =>
      page.evaluate(
        () =>
          new Promise<number>((resolve, reject) => {
            const open = indexedDB.open('sedgeline-voice');
            open.onerror = () => reject(open.error);
            open.onsuccess = () => {
              const count = open.result.transaction('sounds').objectStore('sounds').count();
              count.onsuccess = () => {
                open.result.close();
                resolve(count.result);
              };
            };
          }),
      );
    expect(await kept()).toBe(1);
    // A sound of yesterday whose note never came, since the app was killed: swept at the next opening, and the note's own stays.
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const open = indexedDB.open('sedgeline-voice');
          open.onsuccess = () => {
            const tx = open.result.transaction(['sounds', 'begun'], 'readwrite');
            tx.objectStore('sounds').put({ bytes: new ArrayBuffer(3), type: 'audio/webm' }, 'left');
            tx.objectStore('begun').put(Date.now() - 86_400_000, 'left');
            tx.oncomplete = () => {
              open.result.close();
              resolve();
            };
          };
        }),
    );
    expect(await kept()).toBe(2);
    await page.reload();
    await expect.poll(kept).toBe(1);
    await more.click();
    await play.click();
    await expect(page.locator('[role="alert"]')).toHaveCount(0);
    await page.getByRole('button', { name: work.voice.drop }).click();
    await expect(play).toHaveCount(0);
    await expect.poll(kept).toBe(0);
    const facts = await exportedFacts(page);
    const noted = facts.find(({ kind }) => kind === 'voice-noted');
    expect(noted?.body).toMatchObject({ sha256: expect.stringMatching(/^[0-9a-f]{64}$/) });
    expect(noted?.body.lengthS).toBeGreaterThan(1);
    expect(facts.map(({ kind }) => kind)).toContain('voice-dropped');
    expect(sent).toEqual([]);
    await own.close();
  });

  test('says plainly that the microphone was refused, and a written note works as ever', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(navigator, 'mediaDevices', {
        value: { getUserMedia: () => Promise.reject(new DOMException('no', 'NotAllowedError')) },
      });
    });
    await page.goto('/');
    await startFirst(page, 'Dotterel', 'stop');
    await allWell(page);
    await page.getByRole('button', { name: work.more, exact: true }).click();
    await page.getByRole('button', { name: work.voice.start }).click();
    await expect(page.getByText(work.voice.fault('refused'))).toBeVisible();
    await page.getByLabel(work.panel.note).fill('wind got up');
    await page.getByRole('button', { name: work.panel.noteSave }).click();
    expect((await exportedFacts(page)).at(-1)).toMatchObject({
      kind: 'rep-amended',
      body: { note: 'wind got up' },
    });
  });
});
