import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { said } from './steps.ts';

test.setTimeout(90_000);

/** Places of the invented kennel that are full of what a handler has there, and what shows that each is there. */
const PLACES = [
  ['/', '.dog-row'],
  ['/dog/rook', '.dog-head'],
  ['/plan/rook', '.plan-card'],
  ['/season/rook', 'h1'],
  ['/grounds', '.ground-row'],
  ['/grounds/paddock/paddock-1', '.edit-tool-row'],
  ['/back', '.back-card'],
  ['/back/demo-1-session-003', '.back-rep'],
  ['/setup', 'h1'],
] as const;

async function lookRound(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: said.dogs.first.demo }).click();
  await expect(page.locator('.dog-row').first()).toBeVisible();
}

/** What runs off the side of the page, and keys whose words run out of them. */
const lost = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const out: string[] = [];
    const over = document.documentElement.scrollWidth - innerWidth;
    if (over > 0) out.push(`the page is ${over} px too wide`);
    for (const key of document.querySelectorAll<HTMLElement>('main button, main a.button, nav a')) {
      if (key.checkVisibility() && key.scrollWidth > key.clientWidth + 1)
        out.push(`${key.textContent}: ${key.scrollWidth} of ${key.clientWidth} px`);
    }
    return out;
  });

/** Keys and links smaller than 48 px either way. A card or tile that opens as a whole has its link's target laid over it. */
const small = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main button, main a, main summary, nav a')].flatMap((key) => {
      const { width, height } = key.getBoundingClientRect();
      const isWhole = getComputedStyle(key, '::after').position === 'absolute';
      if (!key.checkVisibility() || isWhole || key.matches('p a, li p a')) return [];
      // Browsers lay out in fractions of a pixel.
      return Math.min(width, height) < 47.9 ? [`${key.textContent}: ${width} by ${height}`] : [];
    }),
  );

for (const [name, width, height, size] of [
  // 1280 px at 400 % (WCAG 2.2, 1.4.10).
  ['a page zoomed to 400 %', 320, 640, '100%'],
  // WCAG 2.2, 1.4.4.
  ['text at twice its size', 390, 844, '200%'],
  ['the narrowest that is laid out as a laptop', 960, 700, '100%'],
] as const) {
  test(`${name}: nothing runs off the side, and no key cuts its words`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await lookRound(page);
    for (const [path, there] of PLACES) {
      await page.goto(path);
      await page.addStyleTag({ content: `html { font-size: ${size} }` });
      await expect(page.locator(there).first()).toBeVisible();
      expect(await lost(page), path).toEqual([]);
    }
  });
}

for (const [width, height] of [
  [390, 844],
  [1280, 800],
] as const) {
  test(`an address of nothing in the record says so and has a key that leads on, ${width} by ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    for (const path of [
      '/dog/nobody',
      '/plan/nobody',
      '/season/nobody',
      '/back/none',
      '/film/none',
      '/nowhere',
    ]) {
      await page.goto(path);
      await expect(page.locator('main h1')).toBeVisible();
      await expect(page.locator('main a.button'), path).toBeVisible();
      // Off the edge of the screen, whatever was looked at before.
      expect((await page.locator('main h1').boundingBox())?.x, path).toBeGreaterThanOrEqual(16);
      expect(await small(page), path).toEqual([]);
    }
  });

  test(`every key and link is 48 px at least, ${width} by ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await lookRound(page);
    for (const [path, there] of PLACES) {
      await page.goto(path);
      await expect(page.locator(there).first()).toBeVisible();
      expect(await small(page), path).toEqual([]);
    }
  });
}

test('the foot of Plan stands over the places at usual text, and goes with the plan at twice its size', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await lookRound(page);
  await page.goto('/plan/rook');
  const work = page.locator('.plan-foot .button-main');
  await expect(work).toBeInViewport({ ratio: 1 });
  await page.addStyleTag({ content: 'html { font-size: 200% }' });
  // What stays while the plan is scrolled is the places alone: a sixth of the screen at most.
  await expect(work).not.toBeInViewport();
  await expect(page.locator('.plan-foot')).not.toBeInViewport();
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
  await expect(work).toBeInViewport({ ratio: 1 });
  const [key, places] = await Promise.all([
    work.boundingBox(),
    page.getByRole('navigation', { name: said.shell.navigation }).boundingBox(),
  ]);
  expect(key!.y + key!.height).toBeLessThanOrEqual(places!.y);
  expect(places!.height).toBeLessThanOrEqual(844 / 6);
  expect(await lost(page)).toEqual([]);
});
