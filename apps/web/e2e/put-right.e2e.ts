import { expect, test } from './served-app.ts';
import { allWell, exportedFacts, said, startFirst } from './steps.ts';

test.setTimeout(90_000);

const { work } = said;

test('a rep is put right with its history, taken out, brought back; one from memory stands in its place', async ({
  page,
}) => {
  await page.goto('/');
  await startFirst(page, 'Sandpiper', 'stop');
  await allWell(page);
  await allWell(page);
  await page.getByRole('button', { name: work.more, exact: true }).click();
  const lines = page.locator('.work-rep-line');
  await expect(lines).toHaveCount(2);

  // Another grade, and a cause given later; what it was before is told.
  const first = lines.last();
  await first.locator('.work-rep-legs button').first().click();
  await first.getByRole('radio', { name: work.grade.fair, exact: true }).click();
  await first.getByRole('radio', { name: work.after.causes.handler, exact: true }).click();
  const steps = first.locator('.work-history li');
  await expect(steps).toHaveCount(3);
  await expect(steps.nth(1)).toContainText(
    work.history.step('changed', [
      { of: 'grade', skill: 'line', from: 'good', to: 'fair' },
      { of: 'cause', skill: 'line', from: null, to: 'dog' },
    ]),
  );
  await expect(steps.nth(2)).toContainText(
    work.history.step('changed', [{ of: 'cause', skill: 'line', from: 'dog', to: 'handler' }]),
  );
  await expect(steps.nth(0).locator('time')).toHaveAttribute('datetime', /^\d{4}-\d\d-\d\dT/);

  // Out, and back as it was.
  await first.getByRole('button', { name: work.panel.strike }).click();
  await expect(lines).toHaveCount(1);
  await page.locator('[data-struck]').click();
  await expect(lines).toHaveCount(2);
  await expect(page.locator('[data-struck]')).toHaveCount(0);

  // From memory, between the two.
  await page.getByRole('button', { name: work.memory.open }).click();
  const form = page.getByRole('region', { name: work.memory.open });
  await form.getByRole('radio', { name: work.memory.after(1), exact: true }).click();
  await form.getByRole('group').nth(1).getByRole('radio', { name: work.grade.missed, exact: true }).click();
  await form.getByRole('button', { name: work.memory.keep }).click();
  await expect(lines).toHaveCount(3);
  await expect(lines.nth(1)).toContainText(work.fromMemory);
  await page.reload();
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await expect(lines.nth(1)).toContainText(work.fromMemory);

  // A closed session can still be put right.
  await page.getByRole('button', { name: work.panel.end, exact: true }).click();
  await page.getByText(work.panel.putRight).click();
  await expect(lines).toHaveCount(3);
  await lines.first().locator('.work-rep-legs button').first().click();
  await lines.first().getByRole('radio', { name: work.grade.missed, exact: true }).click();
  await expect(lines.first().locator('.work-history li')).toHaveCount(2);

  const kinds = (await exportedFacts(page)).map(({ kind }) => kind);
  expect(kinds.filter((kind) => kind === 'rep-recorded')).toHaveLength(3);
  expect(kinds).toContain('rep-struck');
  expect(kinds).toContain('rep-restored');
});
