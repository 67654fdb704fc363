import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { said } from './steps.ts';
import { violations } from './violations.ts';

async function openIn(page: Page, theme: 'sun' | 'dusk'): Promise<void> {
  await page.addInitScript((name) => {
    if (localStorage.getItem('sedgeline.settings') !== null) return;
    localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: name }, version: 1 }));
  }, theme);
  await page.goto('/');
}

// Each page is looked at whole: a dozen of them are more than a test's usual minute on a busy machine.
test.describe.configure({ timeout: 150_000 });

for (const theme of ['sun', 'dusk'] as const) {
  test(`no violations on Dogs, a dog, Work, Why, More, a break and Setup in ${theme}`, async ({ page }) => {
    await openIn(page, theme);
    await expect(page.getByLabel(said.dogs.first.name)).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: said.dogs.first.demo }).click();
    await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
    const dogs = page.getByRole('listitem').filter({ has: page.getByRole('heading', { level: 2 }) });
    await expect(dogs.first()).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
    expect(await violations(page)).toEqual([]);
    await dogs.first().locator('h2').getByRole('link').click();
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.goto('/setup');
    await expect(page.getByRole('heading', { level: 1, name: said.setup.title })).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.goto('/work');
    await page.locator('.work-open nav a').first().click();
    const go = page.getByRole('button', { name: said.work.open.go, exact: true });
    await expect(go.or(page.locator('.work-pad'))).toBeVisible();
    if (await go.isVisible()) {
      expect(await violations(page)).toEqual([]);
      await go.click();
    }
    await expect(page.locator('.work-pad')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.locator('.work-key[data-grade="missed"]').click();
    await expect(page.locator('[data-about="cause"]')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.locator('.work-after-why').click();
    await expect(page.locator('.why-leg').first()).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: said.work.more, exact: true }).click();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: said.work.break.now }).click();
    await expect(page.getByRole('timer')).toBeVisible();
    expect(await violations(page)).toEqual([]);
  });

  test(`no violations on Plan and Season, whole, opened and with nothing planned, in ${theme}`, async ({
    page,
  }) => {
    await openIn(page, theme);
    await page.getByRole('button', { name: said.dogs.first.demo }).click();
    await page.getByRole('link', { name: said.dogs.row.standing('Tansy') }).click();
    await page.getByRole('link', { name: said.planScreen.choose, exact: true }).click();
    await expect(page.locator('.plan-card').first()).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.locator('.plan-card-open').nth(1).click();
    await page.locator('.plan-wish > summary').click();
    await expect(page.locator('.plan-weather')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByLabel(said.planScreen.wish.airC).fill('34');
    await page.keyboard.press('Enter');
    await expect(page.locator('.plan-empty')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('link', { name: said.seasonScreen.link }).click();
    await expect(page.locator('.season-chart')).toBeVisible();
    await page.getByText(said.seasonScreen.chart.table, { exact: true }).click();
    expect(await violations(page)).toEqual([]);
    await page.goto('/plan');
    await expect(page.getByRole('heading', { level: 1, name: said.planScreen.choose })).toBeVisible();
    expect(await violations(page)).toEqual([]);
  });
}
