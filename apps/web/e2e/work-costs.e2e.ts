import { countTaps } from './count-taps.ts';
import { expect, test } from './served-app.ts';
import {
  allWell,
  exportedFacts,
  goOnIfPaused,
  gradeLeg,
  legSkills,
  padKey,
  repNumber,
  said,
  startFirst,
  wideKey,
} from './steps.ts';

test.setTimeout(120_000);

const { work, dogs } = said;
const button = { undo: work.undo, more: work.more, harder: work.harder, easier: work.easier } as const;

test('what each thing costs on Work, in taps', async ({ page }) => {
  await page.goto('/');
  const taps = await countTaps(page);
  const openedAtMs = Date.now();
  // From nothing to the first rep: a name, Go, and the rep itself. A choice of skill is a tap more, where it is made.
  await page.getByLabel(dogs.first.name).fill('Wren');
  await page.getByRole('button', { name: dogs.first.go, exact: true }).click();
  await expect(wideKey(page)).toBeVisible();
  await wideKey(page).click();
  await expect(page.locator('.work-head-rep')).toHaveText(work.rep(2));
  expect(await taps()).toBeLessThanOrEqual(2);
  expect(Date.now() - openedAtMs).toBeLessThan(60_000);

  // A rep that went as asked: one.
  await allWell(page);
  expect(await taps()).toBe(1);

  // A leg that did not go well: two, grade and cause.
  await goOnIfPaused(page);
  await taps();
  await gradeLeg(page, 'missed');
  await page.locator('[data-cause="setup"]').click();
  await expect(page.locator('[data-cause="setup"]')).toHaveAttribute('aria-pressed', 'true');
  expect(await taps()).toBe(2);

  // Why it went wrong: one.
  await page.locator('.work-after-why').click();
  await expect(page.getByRole('dialog')).toBeVisible();
  expect(await taps()).toBe(1);
  await page.keyboard.press('Escape');

  // A miss that paid all the same: one; the undo of it: one.
  await page.locator('[data-got-it]').click();
  await expect(page.locator('[data-got-it]')).toHaveAttribute('aria-pressed', 'true');
  expect(await taps()).toBe(1);
  await page.getByRole('button', { name: button.undo, exact: true }).click();
  await expect(page.locator('[data-got-it]')).toHaveAttribute('aria-pressed', 'false');
  expect(await taps()).toBe(1);
  if (await page.locator('[data-wide="ended"]').isVisible()) await wideKey(page).click();
  await expect(page.locator('.work-head-rep')).toHaveText(work.rep(4));

  // Something else than suggested: two at most, and straight back with one.
  await goOnIfPaused(page);
  await taps();
  await page.getByRole('button', { name: button.more, exact: true }).click();
  await page.getByRole('button', { name: said.trade.skill('recall'), exact: true }).click();
  await expect(page.locator('.work-leg').first()).toHaveAttribute('data-skill', 'recall');
  expect(await taps()).toBe(2);
  await page.getByRole('button', { name: work.backToSuggested }).click();
  expect(await taps()).toBe(1);
});

test('blown later is one tap, also when it went well; what was done is recorded and the plan kept', async ({
  page,
}) => {
  await page.goto('/');
  await startFirst(page, 'Teal', 'stop');
  const taps = await countTaps(page);
  await wideKey(page).click();
  await expect(page.locator('.work-head-rep')).toHaveText(work.rep(2));
  await page.locator('[data-blew="later"]').click();
  await expect(page.locator('[data-blew="later"]')).toHaveAttribute('aria-pressed', 'true');
  expect(await taps()).toBe(2);
  const facts = await exportedFacts(page);
  const amended = facts.findLast(({ kind }) => kind === 'rep-amended');
  const legs = amended?.body.legs as {
    skill: string;
    ask: { distanceM: number };
    planned?: { distanceM: number };
  }[];
  const stop = legs.find(({ skill }) => skill === 'stop');
  // The step is a tenth of the way, and at least a metre.
  const plannedM = stop?.planned?.distanceM ?? Number.NaN;
  expect(stop?.ask.distanceM).toBe(plannedM + Math.max(1, Math.round(plannedM / 10)));
});

test('blown earlier or later is offered where a whistle was part of it, and not after a line that was missed', async ({
  page,
}) => {
  await page.goto('/');
  await startFirst(page, 'Pintail', 'stop');
  expect(await legSkills(page)).toEqual(['line', 'stop']);
  await gradeLeg(page, 'missed');
  // What else may be said of a miss is there; that of the whistle is not, nor by its key.
  await expect(page.locator('[data-got-it]')).toBeVisible();
  await expect(page.locator('[data-blew]')).toHaveCount(0);
  await page.keyboard.press('l');
  await page.getByRole('button', { name: button.undo, exact: true }).click();
  await expect(page.locator('.work-leg[data-grade]')).toHaveCount(0);
  await gradeLeg(page, 'good');
  await expect(page.locator('[data-blew]')).toHaveCount(2);
  await gradeLeg(page, 'missed');
  await expect(page.locator('[data-blew]')).toHaveCount(2);
  const facts = await exportedFacts(page);
  expect(JSON.stringify(facts)).not.toContain('"planned"');
});

test('every field of the ask is three taps away at most', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Snipe', 'stop');
  await page.getByRole('button', { name: button.more, exact: true }).click();
  await expect(page.getByRole('dialog')).toBeVisible();
  // More is one tap, the leg's tab the second: the third sets the field. What it moves is asked.
  for (const tab of await page.locator('.work-tabs [role="tab"]:not([disabled])').all()) {
    await tab.click();
    const fields = await page.locator('.work-fields > *').count();
    expect(fields).toBeGreaterThanOrEqual(12);
    for (const field of await page.locator('.work-fields > *').all()) {
      await expect(field.locator('button, input').first()).toBeEnabled();
    }
  }
  const plus = page.locator('.work-stepper[data-field="distanceM"] button').last();
  const value = page.locator('.work-stepper[data-field="distanceM"] input');
  const before = Number(await value.inputValue());
  await plus.click();
  await expect(value).toHaveValue(String(before + 5));
});

test('a plan is two taps from the dog', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: dogs.first.demo }).click();
  await expect(page.locator('h2').getByRole('link').first()).toBeVisible();
  const taps = await countTaps(page);
  await page.getByRole('link', { name: dogs.row.standing('Tansy') }).click();
  await page.getByRole('link', { name: said.planScreen.choose, exact: true }).click();
  await expect(page.locator('.plan-card').first()).toBeVisible();
  expect(await taps()).toBe(2);
});

test('a session that follows a plan says so in a line of its own, and how far it has come', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('button', { name: dogs.first.demo }).click();
  await page.getByRole('link', { name: dogs.row.standing('Tansy') }).click();
  await page.getByRole('link', { name: said.planScreen.choose, exact: true }).click();
  const cards = page.locator('.plan-card');
  await expect(cards.first()).toBeVisible();
  const of = await cards.count();
  await page.getByRole('button', { name: said.planScreen.work, exact: true }).click();
  const course = page.locator('.work-course');
  await expect(course).toHaveText(work.planLine({ do: 'keep', done: 0, of }, 1));
  // A miss of the dog's own: something easier comes between, and the line says that the plan is changed.
  await gradeLeg(page, 'missed');
  if (await page.locator('[data-wide="ended"]').isVisible()) await wideKey(page).click();
  await expect(course).toHaveAttribute('data-course', 'adapt');
  await expect(course).toContainText(
    work.planLine({ do: 'adapt', done: 1, of }, null).split(', ').at(-1) ?? '',
  );
});

test('what a rep was paid with is kept in one tap, where the handler wants it', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Plover', 'stop');
  await allWell(page);
  await expect(page.locator('[data-reward]')).toHaveCount(0);
  await page.getByRole('button', { name: button.more, exact: true }).click();
  await page.getByRole('checkbox', { name: work.panel.switches.keepReward }).check();
  await page.getByRole('button', { name: work.panel.close }).click();
  const taps = await countTaps(page);
  await page.locator('[data-reward="play"]').click();
  await expect(page.locator('[data-reward="play"]')).toHaveAttribute('aria-pressed', 'true');
  expect(await taps()).toBe(1);
  expect((await exportedFacts(page)).at(-1)).toMatchObject({
    kind: 'rep-amended',
    body: { reward: ['play'] },
  });
});

test('a presenter’s remote and a keyboard record the whole of it', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Curlew', 'stop');
  await page.keyboard.press('PageDown');
  await expect(page.locator('.work-head-rep')).toHaveText(work.rep(2));
  await page.keyboard.press('PageUp');
  await expect(page.locator('.work-head-rep')).toHaveText(work.rep(1));
  await page.locator('main').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-about="cause"]')).toBeVisible();
  await page.keyboard.press('g');
  await expect(page.locator('[data-got-it]')).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('4');
  await expect(page.locator('[data-cause="dog"]')).toHaveAttribute('aria-pressed', 'true');
  expect(await repNumber(page)).toBeLessThanOrEqual(2);
  await expect(padKey(page, 'good')).toBeVisible();
});
