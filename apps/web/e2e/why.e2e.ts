import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { allWell, goOnIfPaused, gradeLeg, legSkills, said, startFirst, wideKey } from './steps.ts';

const sheet = (page: Page) => page.getByRole('dialog', { name: said.whySheet.name, exact: false }).last();
const whyKey = (page: Page) => page.locator('.work-after-why');

/** Sets what is asked of one leg by hand, in More. */
async function askOf(page: Page, skill: 'stop', fields: Readonly<Record<string, number>>): Promise<void> {
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('tab', { name: said.trade.skill(skill), exact: true }).click();
  for (const [field, value] of Object.entries(fields)) {
    const input = page.locator(`.work-stepper[data-field="${field}"] input`);
    await input.fill(String(value));
    await input.press('Enter');
    await expect(input).toHaveValue(String(value));
  }
  await page.getByRole('button', { name: said.work.panel.close }).click();
}

/** Where a run straight through comes next, a stop is asked instead. */
async function chooseStop(page: Page): Promise<void> {
  if ((await legSkills(page)).includes('stop')) return;
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page
    .getByRole('region', { name: said.work.panel.skills })
    .getByRole('button', { name: said.trade.skill('stop'), exact: true })
    .click();
  await expect(page.locator('.work-leg[data-skill="stop"]')).toBeVisible();
}

/** Four stops that went well, then one much farther out and with much lying about, missed. Resolves at the strip. */
async function missFarther(page: Page): Promise<void> {
  await page.goto('/');
  await startFirst(page, 'Wren', 'stop');
  for (let rep = 0; rep < 4; rep++) {
    await goOnIfPaused(page);
    await chooseStop(page);
    await allWell(page);
  }
  await goOnIfPaused(page);
  await chooseStop(page);
  await askOf(page, 'stop', { distanceM: 200, otherDummies: 6, waitS: 60 });
  const skills = await legSkills(page);
  for (const skill of skills) {
    await gradeLeg(page, skill === 'stop' ? 'missed' : 'good');
    if (skill === 'stop') break;
  }
  await expect(whyKey(page)).toBeVisible();
}

test('a miss after too big a step: one tap says so, with the figures', async ({ page }) => {
  await missFarther(page);
  await whyKey(page).click();
  const stop = sheet(page).locator('[data-verdict="too-big-a-step"]');
  await expect(stop.getByRole('heading', { level: 3 })).toHaveText(said.why.title('too-big-a-step'));
  await expect(stop).toContainText(said.why.outcome('stop', 'missed'));
  // What changed is a row each, with what it was and is; each took some of the chance away.
  const row = stop.locator('[data-factor="distance"]');
  await expect(row).toContainText(said.tongue.length(200));
  await expect(row).toContainText(/\d+ less/);
  await expect(stop.locator('[data-factor="others"]')).toContainText('6');
  // The two chances of the sentence are those of the bars, and the second is the smaller.
  const [before, now] = await stop
    .locator('.chance-bar')
    .evaluateAll((bars) => bars.map((bar) => Number(bar.getAttribute('data-chance'))));
  expect(before).toBeGreaterThan(now ?? 1);
  expect(now).toBeLessThan(0.6);
  await expect(stop).toContainText(said.chances.change(before ?? 0, now ?? 0));
  await page.keyboard.press('Escape');
  await expect(sheet(page)).toBeHidden();
});

test('from the reps so far, and once the session is closed', async ({ page }) => {
  await missFarther(page);
  if (await wideKey(page).isVisible()) await wideKey(page).click();
  await goOnIfPaused(page);
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('button', { name: said.whySheet.open(5), exact: true }).click();
  await expect(sheet(page).getByRole('heading', { level: 2 })).toHaveText(said.whySheet.title('Wren', 5));
  await expect(sheet(page).locator('[data-verdict="too-big-a-step"]')).toBeVisible();
  await page.getByRole('button', { name: said.whySheet.close, exact: true }).click();
  await page.getByRole('button', { name: said.work.panel.end, exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(said.work.end.title('Wren'));
  await page.getByRole('list', { name: said.work.panel.all }).getByRole('button').first().click();
  // The first stop of all: nothing to hold it against, and as likely as was said.
  await expect(sheet(page).getByRole('heading', { level: 2 })).toHaveText(said.whySheet.title('Wren', 1));
  await expect(sheet(page)).toContainText('Nothing of the kind had gone well before');
  await page.keyboard.press('Escape');

  // On the dog's own screen, from the last stop that did not go well.
  await page.getByRole('link', { name: said.work.end.toDog('Wren') }).click();
  const stop = said.trade.skillInWords('stop');
  await page.getByRole('button', { name: said.whySheet.openLast(stop, 'missed'), exact: true }).click();
  await expect(sheet(page).locator('[data-verdict="too-big-a-step"]')).toBeVisible();
});

test.describe('on a laptop with no pointer', () => {
  test.use({ hasTouch: false, viewport: { width: 1280, height: 800 } });

  test('W opens it, single keys do not record meanwhile, Escape gives the pad back', async ({ page }) => {
    await missFarther(page);
    const head = page.locator('.work-head-rep');
    const rep = await head.textContent();
    const graded = await page.locator('.work-leg[data-grade]').count();
    await page.keyboard.press('w');
    await expect(sheet(page).locator('[data-verdict="too-big-a-step"]')).toBeVisible();
    for (const key of ['1', '3', '5']) await page.keyboard.press(key);
    await page.keyboard.press('Escape');
    await expect(sheet(page)).toBeHidden();
    await expect(head).toHaveText(rep ?? '');
    await expect(page.locator('.work-leg[data-grade]')).toHaveCount(graded);
    await expect(page.locator('[data-cause="handler"]')).toHaveAttribute('aria-pressed', 'false');
    await page.keyboard.press('5');
    await expect(page.locator('[data-cause="handler"]')).toHaveAttribute('aria-pressed', 'true');
    // Told whose it was, it says so.
    await page.keyboard.press('w');
    await expect(sheet(page).locator('[data-verdict="handler"]')).toBeVisible();
  });
});
