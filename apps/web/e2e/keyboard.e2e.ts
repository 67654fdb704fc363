import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { goOnIfPaused, legSkills, repNumber, said } from './steps.ts';

test.use({ hasTouch: false, viewport: { width: 1280, height: 800 } });

/** Presses Tab until the focus stands on something with this name; what is passed on the way is in reach as well. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let press = 0; press < 40; press++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const element = document.activeElement;
      if (!(element instanceof HTMLElement)) return '';
      const labels =
        'labels' in element ? [...(element.labels as NodeListOf<HTMLElement>)].map((l) => l.textContent) : [];
      return [element.getAttribute('aria-label') ?? element.textContent, ...labels].join('\n');
    });
    if (at.includes(name)) return;
  }
  throw new Error(`expected Tab to reach "${name}"`);
}

test('the whole job with no pointer', async ({ page }) => {
  await page.goto('/');
  await expect(page.getByLabel(said.dogs.first.name)).toBeVisible();
  await tabTo(page, said.dogs.first.name);
  await page.keyboard.type('Snipe');
  await tabTo(page, said.dogs.first.go);
  await page.keyboard.press('Enter');
  await expect(page.locator('.work-pad')).toBeVisible();
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(1));

  // 3: this leg good; space: the rest went well.
  const skills = await legSkills(page);
  await page.keyboard.press('3');
  if (skills.length > 1) {
    await expect(page.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
    await page.keyboard.press(' ');
  }
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(2));
  await expect(page.getByRole('status').filter({ hasText: said.work.said.next('') })).toBeAttached();

  // 1: missed; 5: it was me; space: ended there.
  await goOnIfPaused(page);
  await page.keyboard.press('1');
  await expect(page.locator('[data-about="cause"]')).toBeVisible();
  await page.keyboard.press('5');
  await expect(page.locator('[data-cause="handler"]')).toHaveAttribute('aria-pressed', 'true');
  if ((await repNumber(page)) === 2) await page.keyboard.press(' ');
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(3));

  // 0 takes the last tap back, one tap at a time.
  await goOnIfPaused(page);
  await page.keyboard.press(' ');
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(4));
  await page.keyboard.press('0');
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(3));

  // M opens More, Escape closes it and single keys grade again; B is a break, Enter on its key ends it.
  await goOnIfPaused(page);
  await page.keyboard.press('m');
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await page.keyboard.press('b');
  await expect(page.getByRole('timer')).toBeVisible();
  await tabTo(page, said.work.break.backToWork);
  await expect(page.getByRole('button', { name: said.work.break.backToWork })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('.work-pad')).toBeVisible();

  await page.keyboard.press('m');
  await tabTo(page, said.work.panel.end);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(said.work.end.title('Snipe'));
});
