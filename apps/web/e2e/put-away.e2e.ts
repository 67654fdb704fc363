import { expect, test } from './served-app.ts';
import { exportedFacts, said } from './steps.ts';
import { violations } from './violations.ts';

const { away, add, editor } = said.ground;

test('a ground and a layout are put away in one tap, taken out again in one, and nothing of them is lost', async ({
  page,
}) => {
  await page.goto('/grounds');
  await page.getByRole('button', { name: add.title }).click();
  await page.getByLabel(add.name, { exact: true }).fill('Long Acre');
  await page.getByRole('button', { name: add.save, exact: true }).click();
  await page.getByRole('heading', { level: 2 }).getByRole('link', { name: 'Long Acre' }).click();
  const ground = page.url();
  await page.getByRole('link', { name: said.ground.emptyField.name }).click();
  await page.locator('.board-top').getByRole('button', { name: editor.you }).focus();
  await page.keyboard.press('p');
  const save = page.getByRole('button', { name: editor.save, exact: true });
  await save.click();
  await expect(save).toBeDisabled();
  const layout = page.url();

  await page.goto(ground);
  const layoutName = said.ground.nameless;
  await page.getByRole('button', { name: away.putOf(layoutName) }).click();
  await expect(page.getByRole('button', { name: away.putOf(layoutName) })).toHaveCount(0);
  const list = page.getByRole('region', { name: away.title });
  await expect(list.getByRole('link', { name: layoutName })).toHaveAttribute(
    'href',
    new URL(layout).pathname,
  );
  expect(await violations(page)).toEqual([]);
  await list.getByRole('button', { name: away.backOf(layoutName) }).click();
  await expect(page.getByRole('button', { name: away.putOf(layoutName) })).toBeVisible();
  await expect(list).toHaveCount(0);

  await page.getByRole('button', { name: away.putGround }).click();
  await expect(page.getByRole('status').filter({ hasText: away.isAway })).toBeVisible();
  await page.goto('/grounds');
  await expect(page.getByRole('heading', { level: 2, name: 'Long Acre' })).toHaveCount(0);
  await expect(list.getByRole('link', { name: 'Long Acre' })).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await list.getByRole('button', { name: away.backOf('Long Acre') }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Long Acre' })).toBeVisible();
  const facts = await exportedFacts(page);
  expect(facts.filter(({ kind }) => kind.endsWith('put-away')).map(({ body }) => body.back === true)).toEqual(
    [false, true, false, true],
  );
});
