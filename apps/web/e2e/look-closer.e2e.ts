import type { Locator, Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { said } from './steps.ts';
import { violations } from './violations.ts';

const STOP = said.trade.skillInWords('stop');

async function openDemoDog(page: Page, theme: 'sun' | 'dusk' = 'sun'): Promise<void> {
  await page.addInitScript((name) => {
    if (localStorage.getItem('sedgeline.settings') !== null) return;
    localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: name }, version: 1 }));
  }, theme);
  await page.goto('/');
  await page.getByRole('button', { name: said.dogs.first.demo }).click();
  await page.getByRole('link', { name: /Tansy/ }).first().click();
  await expect(page.getByRole('heading', { level: 1, name: said.dog.title('Tansy') })).toBeVisible();
}

/** What opens a part of a skill: a summary of that name, the one on the screen of two. */
const opens = (page: Page, name: string) => page.locator(`summary[aria-label="${name}"]:visible`);

const texts = (cells: Locator) => cells.evaluateAll((all) => all.map((cell) => cell.textContent ?? ''));

for (const { name, theme, use } of [
  { name: 'on a phone in Sun', theme: 'sun', use: { viewport: { width: 390, height: 844 } } },
  {
    name: 'on a laptop in Dusk',
    theme: 'dusk',
    use: { viewport: { width: 1280, height: 800 }, hasTouch: false },
  },
] as const) {
  test.describe(name, () => {
    test.use(use);

    test('a skill over time: the picture has a mark a leg, the table a row a session', async ({ page }) => {
      await openDemoDog(page, theme);
      const summary = opens(page, said.progress.openFor(STOP));
      await summary.focus();
      await page.keyboard.press('Enter');
      const progress = page.locator('.progress:visible');
      const sentence = (await progress.locator('.closer-said').textContent()) ?? '';
      const [, sessions, legs] = /(\d+) sessions, (\d+) legs/.exec(sentence) ?? [];
      await expect(progress.locator('.progress-leg')).toHaveCount(Number(legs));
      await progress.getByText(said.progress.table, { exact: true }).click();
      const rows = progress.locator('tbody tr');
      await expect(rows).toHaveCount(Number(sessions));
      // The last session is known now as it was then, and it is what the sentence says.
      const [day, , lookingBack, thatDay] = await texts(rows.last().locator('th, td'));
      expect(lookingBack).toBe(thatDay);
      const [chance, low, high] =
        /^((?:over )?\d+) ((?:over )?\d+) to ((?:over )?\d+)$/.exec(lookingBack ?? '')?.slice(1) ?? [];
      expect(sentence).toContain(`${chance} in 100, may be ${low} to ${high}, by ${day}.`);
      // All legs of the table are those of the picture.
      const counted = (await texts(rows.locator('td:nth-child(2)')))
        .flatMap((text) => [...text.matchAll(/\d+/g)].map(([n]) => Number(n)))
        .reduce((a, b) => a + b, 0);
      expect(counted).toBe(Number(legs));
      expect(await violations(page)).toEqual([]);
    });

    test('where it was tried: an empty place says so, and what we would say', async ({ page }) => {
      await openDemoDog(page, theme);
      await opens(page, said.proofing.openFor(STOP)).click();
      const map = page.locator('[data-map="temptations"]:visible');
      await expect(map.locator('tbody tr')).toHaveCount(6);
      const game = map.locator('tbody tr').last();
      await expect(game.getByRole('rowheader')).toHaveText(said.proofing.temptation('game'));
      const empty = game.getByRole('button').last();
      await expect(empty).toHaveAttribute('data-tried', 'never');
      await empty.focus();
      await page.keyboard.press('Space');
      await expect(empty).toHaveAttribute('aria-pressed', 'true');
      const told = map.getByRole('status');
      await expect(told).toContainText('Game, beyond');
      await expect(told).toContainText('never tried. We would say');
      await expect(told).toContainText('beyond what has gone well so far');
      // As visible as a full one: as high and as wide as those of its row and column.
      const full = map.locator('[data-tried="yes"]').first();
      const [a, b] = await Promise.all([empty.boundingBox(), full.boundingBox()]);
      expect(Math.abs((a?.width ?? 0) - (b?.width ?? 1))).toBeLessThan(1);
      expect(a?.height ?? 0).toBeGreaterThanOrEqual(48);
      // The number of the summary is that of the places drawn so.
      const never = await map.locator('[data-tried="never"]').count();
      await expect(map.locator('caption')).toContainText(said.proofing.summary(18 - never, 18));
      expect(await violations(page)).toEqual([]);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(over).toBeLessThanOrEqual(0);
    });
  });
}

test('nothing is worked out before it is opened, nor kept when it is shut', async ({ page }) => {
  await openDemoDog(page);
  await expect(page.locator('.progress, .proofing')).toHaveCount(0);
  await opens(page, said.progress.openFor(STOP)).click();
  await expect(page.locator('.progress:visible')).toBeVisible();
  await opens(page, said.progress.openFor(STOP)).click();
  await expect(page.locator('.progress')).toHaveCount(0);
});
