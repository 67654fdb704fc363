import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { allWell, exportedFacts, goOnIfPaused, said, startFirst } from './steps.ts';
import { violations } from './violations.ts';

const { told } = said.dog;
const stop = said.trade.skillInWords('stop');
const form = (page: Page) => page.getByRole('form', { name: stop });
const heading = (page: Page) => page.getByRole('heading', { name: told.title('Wren') });
const listed = (page: Page) => page.locator('.told-list li').filter({ hasText: stop });
const card = (page: Page) => page.getByRole('article', { name: stop, exact: true });

/** From an open session to the dog's own screen. */
async function toDog(page: Page): Promise<void> {
  await goOnIfPaused(page);
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('link', { name: said.shell.toDogs }).click();
  await page.getByRole('heading', { level: 2 }).getByRole('link', { name: 'Wren' }).click();
  await expect(heading(page)).toBeVisible();
}

/** Chance of good at the easy ask, in 100, as the card says it. */
async function easyChance(page: Page): Promise<number> {
  const text = await card(page).locator('.skill-asks li').first().textContent();
  return Number(/(\d+) in 100/.exec(text ?? '')?.[1]);
}

test.use({ viewport: { width: 390, height: 844 } });

test('what is told of a new dog moves its standing, is changed, taken back, and outweighed by legs', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await page.goto('/');
  await startFirst(page, 'Wren');
  await toDog(page);
  await expect(form(page)).toBeVisible();
  await expect(page.getByText(said.dog.empty('Wren'))).toBeVisible();

  // Nothing said, or nonsense: plain words at the field, and nothing is written.
  await form(page).getByRole('button', { name: told.save }).click();
  await expect(form(page).getByRole('alert')).toHaveText(told.fault('nothing-told'));
  const distance = form(page).getByLabel(told.farthest('stop', 'Wren') ?? '');
  await distance.fill('4000');
  await form(page).getByRole('button', { name: told.save }).click();
  await expect(form(page).getByRole('alert')).toHaveText(told.fault('distance-far'));

  await distance.fill('120');
  await form(page)
    .getByRole('radio', { name: told.ground('new', 'Wren') })
    .check();
  await form(page).getByRole('button', { name: told.save }).click();
  await expect(heading(page)).toBeFocused();
  await expect(listed(page)).toContainText(told.said('Wren', { farthestM: 120, ground: 'new' }));
  await expect(card(page)).toContainText(told.standing(0, 1));
  const boasted = await easyChance(page);

  // Changed: the last word counts.
  await page.getByRole('button', { name: told.changeOf(stop) }).click();
  await expect(form(page).getByLabel(told.skill)).toBeFocused();
  await form(page).getByRole('button', { name: told.never }).click();
  await expect(listed(page)).toContainText(told.said('Wren', { farthestM: 0, ground: null }));
  await expect.poll(() => easyChance(page)).toBeLessThan(boasted);

  // Taken back: as if nothing had been told.
  await page.getByRole('button', { name: told.takeBackOf(stop) }).click();
  await expect(page.getByText(said.dog.empty('Wren'))).toBeVisible();
  await expect(listed(page)).toHaveCount(0);

  // Told once more, then worked: the legs outweigh it.
  await page.getByRole('button', { name: told.another }).click();
  const anySkill = page.locator('.told-form').getByLabel(told.skill);
  await anySkill.selectOption('recall');
  await expect(page.getByLabel(told.farthest('recall', 'Wren') ?? '')).toBeVisible();
  await anySkill.selectOption('stop');
  await form(page)
    .getByLabel(told.farthest('stop', 'Wren') ?? '')
    .fill('120');
  await form(page).getByRole('button', { name: told.save }).click();
  await expect(card(page)).toContainText(told.standing(0, 1));
  await page.reload();
  await expect(listed(page)).toContainText(told.said('Wren', { farthestM: 120, ground: null }));
  await page.getByRole('button', { name: said.dog.carryOn }).click();
  let stops = 0;
  for (let rep = 0; rep < 24 && stops < 14; rep++) {
    stops += (await allWell(page)).filter((skill) => skill === 'stop').length;
  }
  await toDog(page);
  await expect(listed(page)).toContainText(told.standing(stops, 0));
  const facts = (await exportedFacts(page)).filter(({ kind }) => kind === 'level-stated');
  expect(facts.map(({ body }) => [body.farthestM, body.ground, body.withdrawn])).toEqual([
    [120, 'new', undefined],
    [0, undefined, undefined],
    [undefined, undefined, true],
    [120, undefined, undefined],
  ]);
});

for (const theme of ['sun', 'dusk'] as const) {
  test(`the questions of a new dog have no violations and may be skipped, in ${theme}`, async ({ page }) => {
    await page.addInitScript((name) => {
      localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: name }, version: 1 }));
    }, theme);
    await page.goto('/');
    await startFirst(page, 'Wren');
    await toDog(page);
    await expect(form(page)).toBeVisible();
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(await violations(page)).toEqual([]);
    await form(page)
      .getByRole('radio', { name: told.ground('known', 'Wren') })
      .check();
    await form(page).getByRole('button', { name: told.save }).click();
    await expect(listed(page)).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: told.another }).click();
    await page.getByRole('button', { name: told.skip }).click();
    await expect(page.locator('.told-form')).toHaveCount(0);
    await expect(listed(page)).toHaveCount(1);
  });
}
