import { expect, test } from './served-app.ts';
import { allWell, gradeLeg, said, startFirst } from './steps.ts';
import { violationsAaa as violations } from './violations.ts';

test.setTimeout(150_000);

const { work } = said;

for (const theme of ['sun', 'dusk'] as const) {
  test(`no violations in any state of Work, with the contrast of AAA, in ${theme}`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.addInitScript((name) => {
      const state = { theme: name, keepReward: true };
      localStorage.setItem('sedgeline.settings', JSON.stringify({ state, version: 1 }));
    }, theme);
    await page.goto('/');
    await startFirst(page, 'Sanderling', 'stop');
    await allWell(page);
    expect(await violations(page), 'a rep, what the last was paid with').toEqual([]);
    await gradeLeg(page, 'missed');
    await page.locator('[data-got-it]').click();
    await expect(page.locator('[data-got-it]')).toHaveAttribute('aria-pressed', 'true');
    expect(await violations(page), 'whose it was').toEqual([]);
    await page.getByRole('button', { name: work.more, exact: true }).click();
    await page.locator('.work-rep-legs button').first().click();
    await expect(page.locator('.work-history li').first()).toBeVisible();
    await page.getByRole('button', { name: work.memory.open }).click();
    expect(await violations(page), 'More, a history, a rep from memory').toEqual([]);
    await page.getByRole('button', { name: work.pocket.open }).click();
    await expect(page.getByRole('dialog', { name: work.pocket.title })).toBeVisible();
    expect(await violations(page), 'the pocket screen').toEqual([]);
    // With less motion wished for, nothing on Work moves of itself.
    const moving = await page.evaluate(() => document.getAnimations().length);
    expect(moving).toBe(0);
  });

  test(`no violations among dogs in turn, before, within and after, in ${theme}`, async ({ page }) => {
    await page.addInitScript((name) => {
      if (localStorage.getItem('sedgeline.settings') !== null) return;
      localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: name }, version: 1 }));
    }, theme);
    await page.goto('/');
    await page.getByRole('button', { name: said.dogs.first.demo }).click();
    await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
    await page.goto('/work/turns');
    const boxes = page.getByRole('checkbox');
    await expect(boxes.first()).toBeVisible();
    expect(await violations(page), 'the choice of dogs').toEqual([]);
    for (const box of await boxes.all()) await box.check();
    await page.getByRole('button', { name: work.inTurn.go, exact: true }).click();
    await expect(page.locator('.work-round')).toBeVisible();
    await expect(page.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
    expect(await violations(page), 'dogs in turn').toEqual([]);
    await page.getByRole('button', { name: work.more, exact: true }).click();
    await page.getByRole('button', { name: work.panel.end, exact: true }).click();
    await expect(page.locator('.work-summary')).toBeVisible();
    await page.getByText(work.panel.putRight).click();
    expect(await violations(page), 'a session that is over').toEqual([]);
  });
}
