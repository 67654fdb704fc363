import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { allWell, exportedFacts, said, startFirst } from './steps.ts';
import { violations } from './violations.ts';

const { seasonScreen: words } = said;
const goal = (page: Page) => page.locator('.goal-card');

/** Wanted chances and named asks are told by the words of the trade. */
const namedAsk = (page: Page, name: 'easy' | 'usual' | 'far', skill: 'stop' | 'line') =>
  page.getByRole('button', { name: words.form.addAsk(name, skill) });

test('from nothing to a chart in a few taps: a skill, how hard, how sure', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Wren');
  const dog = (await exportedFacts(page)).find(({ kind }) => kind === 'dog-added')?.body.dog;
  await page.goto(`/season/${dog}`);
  await expect(page.getByText(words.empty('Wren'))).toBeVisible();
  await page.getByRole('button', { name: words.newGoal }).click();
  // Nothing chosen is told at the place, and what was typed stays.
  await page.getByLabel(words.form.name).fill('Trusted at the hedge');
  await page.getByRole('button', { name: words.form.save }).click();
  await expect(page.getByText(words.form.noAsk)).toBeVisible();
  await expect(page.getByLabel(words.form.name)).toHaveValue('Trusted at the hedge');
  await namedAsk(page, 'usual', 'stop').click();
  await page.getByRole('radio', { name: words.form.wantedIs(0.7) }).check();
  await page.getByRole('button', { name: words.form.save }).click();
  await expect(goal(page).getByRole('heading', { name: 'Trusted at the hedge' })).toBeVisible();
  // No session with a rep yet: it says that it can't say, and draws nothing.
  await expect(goal(page)).toContainText(said.season.cantSay('no-session', 'Wren'));
  await expect(page.locator('.season-chart')).toHaveCount(0);

  await page.goto('/work');
  for (let rep = 0; rep < 3; rep++) await allWell(page);
  await page.goto(`/season/${dog}`);
  await expect(page.locator('.season-chart')).toBeVisible();
  await expect(goal(page)).toContainText('Not known yet');
  const set = (await exportedFacts(page)).findLast(({ kind }) => kind === 'goal-set');
  expect(set?.body).toMatchObject({
    dog,
    name: 'Trusted at the hedge',
    asks: [{ skill: 'stop', chance: 0.7 }],
  });
});

test('a goal of the demo: picture, sentence and table tell one and the same', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: said.dogs.first.demo }).click();
  await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
  await page.getByRole('link', { name: said.dogs.row.standing('Rook') }).click();
  await page.getByRole('link', { name: words.link }).click();
  const card = goal(page).first();
  const chart = card.locator('.season-chart');
  await expect(chart).toBeVisible();
  await card.getByText(words.chart.table, { exact: true }).click();
  const rows = card.locator('.season-table tbody tr');
  await expect(rows).toHaveCount(Number(await chart.getAttribute('data-weeks')));
  const ready = await rows
    .locator('td:first-of-type')
    .evaluateAll((cells) => cells.map((cell) => Number(/\d+/.exec(cell.textContent ?? '')?.[0])));
  // Once reached, a goal stays reached in its future.
  expect(ready).toEqual(ready.toSorted((a, b) => a - b));
  // The week that is called likely is the first by which half of the futures are there.
  const sentence = (await card.locator('.season-said').textContent()) ?? '';
  const likely = /Likely ready in (\d+) week/.exec(sentence)?.[1];
  const half = ready.findIndex((inHundred) => inHundred >= 50);
  if (likely !== undefined) {
    // The table's figures are rounded: 50 in the week before may be 49.5.
    expect(ready[Number(likely)]).toBeGreaterThanOrEqual(50);
    expect(ready[Number(likely) - 1]).toBeLessThanOrEqual(50);
  } else expect(sentence).toMatch(half === 0 ? /ready now/ : /Not likely ready within/);
  // More work a week is no later, and the pace is told.
  await page.getByRole('radio', { name: words.perWeek(5), exact: true }).check();
  await expect(card.locator('.season-said')).toContainText(/5 sessions a week|ready now/);
});

test('a goal is set aside, taken back and asked otherwise', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: said.dogs.first.demo }).click();
  await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
  await page.goto('/season/tansy');
  const card = goal(page).first();
  const asks = card.locator('.goal-asks > li');
  await expect(asks).not.toHaveCount(0);
  const before = await asks.count();
  await card.getByRole('button', { name: words.setAside }).click();
  await expect(card).toContainText(said.season.cantSay('no-asks', 'Tansy'));
  await page.getByRole('button', { name: words.takeBack }).click();
  await expect(asks).toHaveCount(before);
  await card.getByRole('button', { name: words.change }).click();
  await namedAsk(page, 'far', 'stop').click();
  await page.getByRole('button', { name: words.form.own }).first().click();
  await expect(page.locator('.goal-by-hand')).toBeVisible();
  await page.getByRole('button', { name: words.form.save }).click();
  // The stop was among its asks: it is asked farther now, and nothing was added.
  await expect(asks).toHaveCount(before);
  await expect(card).toContainText(said.tongue.length(60));
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});

for (const { name, viewport } of [
  { name: 'a narrow phone', viewport: { width: 360, height: 740 } },
  { name: 'a laptop', viewport: { width: 1280, height: 800 } },
]) {
  test.describe(`on ${name}`, () => {
    test.use({ viewport });
    test('the making of a goal has no violation and nothing runs off the side', async ({ page }) => {
      await page.goto('/');
      await page.getByRole('button', { name: said.dogs.first.demo }).click();
      await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
      await page.goto('/season/moss');
      await page.getByRole('button', { name: words.newGoal }).click();
      await namedAsk(page, 'usual', 'stop').click();
      expect(await violations(page)).toEqual([]);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over).toBeLessThanOrEqual(0);
    });
  });
}

for (const [width, height] of [
  [390, 844],
  [1280, 800],
] as const) {
  test(`the skills of a goal are as wide as one another, in the last row too, ${width} by ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await page.goto('/');
    await page.getByRole('button', { name: said.dogs.first.demo }).click();
    await expect(page.locator('.dog-row').first()).toBeVisible();
    await page.goto('/season/rook');
    await page.getByRole('button', { name: words.anotherGoal }).click();
    const group = page.getByRole('group', { name: words.form.skill });
    const boxes = await group.locator('label').evaluateAll((all) =>
      all.map((one) => {
        const { width: w, top } = one.getBoundingClientRect();
        const span = one.querySelector('span')!;
        return { w, top, isCut: span.scrollWidth > span.clientWidth + 1 };
      }),
    );
    expect(boxes).toHaveLength(13);
    expect(new Set(boxes.map(({ top }) => top)).size).toBeGreaterThan(1);
    for (const { w, isCut } of boxes) {
      // Browsers lay out in fractions of a pixel.
      expect(Math.abs(w - boxes[0]!.w)).toBeLessThan(1);
      expect(isCut).toBe(false);
    }
  });
}
