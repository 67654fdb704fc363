import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { exportedFacts, padKey, said, startFirst, wideKey } from './steps.ts';

test.setTimeout(120_000);

const { work, dogs } = said;
const NAMES = ['Wren', 'Teal', 'Snipe', 'Dunlin', 'Plover', 'Curlew'] as const;

const dogNow = (page: Page) => page.getByRole('heading', { level: 1 });
const inTheRound = (page: Page, name: string) => page.locator('.work-round-dogs button', { hasText: name });

/** Six dogs of one's own, all of them in turn on the stop. */
async function sixInTurn(page: Page): Promise<void> {
  await page.goto('/');
  await startFirst(page, NAMES[0], 'stop');
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await page.getByRole('button', { name: work.panel.end, exact: true }).click();
  for (const name of NAMES.slice(1)) {
    await page.goto('/');
    await page.getByRole('button', { name: dogs.add.title, exact: true }).click();
    await page.getByLabel(dogs.add.name, { exact: true }).fill(name);
    await page.getByRole('button', { name: dogs.add.save, exact: true }).click();
    await expect(page.getByRole('heading', { level: 2, name })).toBeVisible();
  }
  await page.goto('/work');
  await page.getByRole('link', { name: work.inTurn.title }).click();
  for (const name of NAMES) await page.getByRole('checkbox', { name }).check();
  await expect(page.getByText(work.inTurn.chosen(6))).toBeVisible();
  await page.getByRole('button', { name: work.inTurn.go, exact: true }).click();
  await expect(dogNow(page)).toHaveText(NAMES[0]);
  await expect(page.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
}

test('six dogs in turn: the turn goes on by itself or by one tap, and nothing is mixed up', async ({
  page,
}) => {
  await sixInTurn(page);
  await expect(page.locator('.work-round-dogs button')).toHaveCount(6);
  // A rep that went well: the next dog stands there.
  await wideKey(page).click();
  await expect(dogNow(page)).toHaveText('Teal');
  await expect(inTheRound(page, 'Wren')).toHaveAccessibleName(work.inTurn.dog('Wren', 1));

  // One that did not waits for its cause; then on.
  await padKey(page, 'missed').click();
  await page.locator('[data-wide="ended"]').or(page.locator('.work-after')).first().waitFor();
  if (await page.locator('[data-wide="ended"]').isVisible()) await wideKey(page).click();
  await expect(dogNow(page)).toHaveText('Teal');
  await page.locator('[data-cause="handler"]').click();
  await expect(dogNow(page)).toHaveText('Snipe');

  // The last tap was made on another dog: undo goes back to it, and takes that one back.
  await page.getByRole('button', { name: work.undo, exact: true }).click();
  await expect(dogNow(page)).toHaveText('Teal');

  // A tap to any dog, and on by a tap; half a chain waits where it was left.
  await inTheRound(page, 'Curlew').click();
  await expect(dogNow(page)).toHaveText('Curlew');
  await padKey(page, 'good').click();
  await expect(page.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
  await page.locator('.work-round-next').click();
  await expect(dogNow(page)).toHaveText('Wren');
  await expect(page.locator('.work-leg[data-grade]')).toHaveCount(0);
  await inTheRound(page, 'Curlew').click();
  await expect(page.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
  await wideKey(page).click();
  await expect(dogNow(page)).toHaveText('Wren');

  // A round by the keyboard alone.
  for (const [i] of NAMES.entries()) {
    await expect(dogNow(page)).toHaveText(NAMES[i] as string);
    await page.keyboard.press('n');
  }
  await expect(dogNow(page)).toHaveText('Wren');

  // All sessions end together.
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await page.getByRole('button', { name: work.inTurn.endAll, exact: true }).click();
  await expect(dogNow(page)).toHaveText(work.end.title('Wren'));

  const facts = await exportedFacts(page);
  const inClass = facts.filter(({ kind, body }) => kind === 'session-opened' && 'class' in body);
  expect(inClass).toHaveLength(6);
  expect(new Set(inClass.map(({ body }) => body.class)).size).toBe(1);
  const nameOf = new Map(
    facts.filter(({ kind }) => kind === 'dog-added').map(({ body }) => [body.dog, body.name]),
  );
  const dogOf = new Map(inClass.map(({ body }) => [body.session, nameOf.get(body.dog)]));
  const reps = facts.filter(({ kind }) => kind === 'rep-recorded');
  expect(reps.map(({ body }) => dogOf.get(body.session))).toEqual(['Wren', 'Teal', 'Curlew']);
  // Each leg was asked among five others.
  const crews = reps.flatMap(({ body }) =>
    (body.legs as { ask: { crew?: number } }[]).map(({ ask }) => ask.crew),
  );
  expect(new Set(crews)).toEqual(new Set([5]));
  const closed = facts.filter(({ kind, body }) => kind === 'session-closed' && dogOf.has(body.session));
  expect(closed).toHaveLength(6);
});
