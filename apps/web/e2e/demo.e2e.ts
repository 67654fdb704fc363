import { expect, test } from './served-app.ts';
import { allWell, exportedFacts, said, startFirst } from './steps.ts';

test('the invented kennel: one tap in, marked, never mixed, one tap out', async ({ page }) => {
  // One's own record first: a dog and a rep.
  await page.goto('/');
  await startFirst(page, 'Curlew', 'stop');
  await allWell(page);
  const mine = await exportedFacts(page);

  await page.getByRole('button', { name: said.setup.demo.enter }).click();
  await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
  await expect(page.getByRole('heading', { level: 1, name: said.dogs.title })).toBeVisible();
  await expect(page.getByRole('heading', { level: 2 }).first()).toBeVisible();
  await expect(page.getByRole('heading', { level: 2, name: 'Curlew' })).toHaveCount(0);
  // It stays marked through a reload.
  await page.reload();
  await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
  expect(await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name))).toContain(
    'sedgeline-demo',
  );

  await page.getByRole('button', { name: said.shell.leaveDemo }).click();
  await expect(page.getByText(said.shell.demoBanner)).toHaveCount(0);
  const names = await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
  expect(names).not.toContain('sedgeline-demo');
  expect(names).toContain('sedgeline');
  expect(await exportedFacts(page)).toEqual(mine);
});

test('the first open leads into it with one tap', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: said.dogs.first.demo }).click();
  await expect(page.getByText(said.shell.demoBanner)).toBeVisible();
  await expect(page.getByRole('heading', { level: 2 }).first()).toBeVisible();
});
