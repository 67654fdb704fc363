import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { allWell, gradeLeg, said, startFirst } from './steps.ts';
import { violationsAaa as violations } from './violations.ts';

test.setTimeout(90_000);

const { back, shell } = said;

/** The five places, where they stand on the screen, and whether their names are whole. */
const places = (page: Page) =>
  page.locator('.shell-nav a').evaluateAll((all) =>
    all.map((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect();
      const isCut = one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1;
      return { name: one.textContent ?? '', left, right, top, bottom, isCut };
    }),
  );

for (const theme of ['sun', 'dusk'] as const) {
  test(`sessions newest first, and one of them with its reps and its two ways on, in ${theme}`, async ({
    page,
  }) => {
    await page.addInitScript((name) => {
      if (localStorage.getItem('sedgeline.settings') !== null) return;
      localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: name }, version: 1 }));
    }, theme);
    await page.goto('/back');
    await expect(page.getByText(back.empty)).toBeVisible();
    expect(await violations(page), 'nothing yet').toEqual([]);
    await page.goto('/');
    await startFirst(page, 'Dunlin', 'stop');
    const legs = (await allWell(page)).length;
    await gradeLeg(page, 'missed');
    await page.goto('/setup');
    await page.getByRole('link', { name: shell.places.back }).click();
    const rows = page.locator('.back-list li');
    await expect(rows).toHaveCount(1);
    await expect(rows.first()).toContainText(back.went({ good: legs, fair: 0, missed: 1 }));
    await expect(rows.first()).toContainText(back.open);
    expect(await violations(page), 'the list').toEqual([]);
    await rows.first().getByRole('link').click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Dunlin');
    await expect(page.locator('.work-log li')).toHaveCount(2);
    const session = new URL(page.url()).pathname.split('/').at(-1);
    await expect(page.locator('.back-ways a').nth(0)).toHaveAttribute('href', `/back/${session}/listen`);
    await expect(page.locator('.back-ways a').nth(1)).toHaveAttribute('href', `/film/${session}`);
    expect(await violations(page), 'a session').toEqual([]);
    await page.locator('.work-log button').last().click();
    await expect(page.locator('.why-leg').first()).toBeVisible();
  });
}

test('a session that is not there says so, and leads back', async ({ page }) => {
  await page.goto('/back/none');
  await expect(page.getByRole('heading', { level: 1, name: back.notFound })).toBeVisible();
  await page.getByRole('link', { name: back.toAll }).click();
  await expect(page.getByRole('heading', { level: 1, name: back.title })).toBeVisible();
});

for (const { name, width, fontSize } of [
  { name: 'on a phone', width: 390, fontSize: '100%' },
  { name: 'on a narrow phone', width: 360, fontSize: '100%' },
  { name: 'on a page zoomed to 320 pixels', width: 320, fontSize: '100%' },
  { name: 'on a narrow phone with text at twice its size', width: 360, fontSize: '200%' },
] as const) {
  test(`all five places are whole and in reach ${name}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 740 });
    await page.goto('/back');
    await page.addStyleTag({ content: `html { font-size: ${fontSize} }` });
    await expect(page.getByText(back.empty)).toBeVisible();
    const all = await places(page);
    expect(all.map(({ name: one }) => one)).toEqual(Object.values(shell.places));
    for (const place of all) {
      expect(place.isCut, place.name).toBe(false);
      expect(place.left, place.name).toBeGreaterThanOrEqual(0);
      expect(place.right, place.name).toBeLessThanOrEqual(width);
      expect(place.bottom, place.name).toBeLessThanOrEqual(740);
      expect(place.bottom - place.top, place.name).toBeGreaterThanOrEqual(48);
    }
    // Under the frame's foot nothing of the screen is hidden for good.
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    const way = await page.getByRole('link', { name: back.toWork }).boundingBox();
    const top = Math.min(...(await places(page)).map((place) => place.top));
    expect((way?.y ?? 0) + (way?.height ?? 999)).toBeLessThanOrEqual(top);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}
