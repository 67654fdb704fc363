import { expect, test } from './served-app.ts';
import { bringFieldSession } from './sounds/on-listen.ts';
import { allWell, said, startFirst } from './steps.ts';

test('a dog that was not worked this week says once when it last was, and one that was says for how long', async ({
  page,
}) => {
  // The made session was in May 2026.
  await bringFieldSession(page);
  await page.goto('/');
  const row = page.locator('.dog-row');
  await expect(row).toContainText(said.dogs.row.legs(8, 1));
  await expect(row).toContainText(/worked .*ago/);
  expect((await row.textContent())?.match(/worked/g)).toHaveLength(1);
  await expect(row).not.toContainText(/this week/);
});

test('a dog that is worked says how long it was this week', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Gadwall', 'stop');
  await allWell(page);
  await page.goto('/setup');
  await page.getByRole('link', { name: said.shell.places.dogs, exact: true }).click();
  await expect(page.locator('.dog-row')).toContainText(/this week/);
});
