import type { Page } from '@playwright/test';
import { factsInCopy, factsInDatabase, repsOf } from './kill/stored-facts.ts';
import { expect, test } from './served-app.ts';
import { allWell, goOnIfPaused, repNumber, said, startFirst, wideKey } from './steps.ts';

test.setTimeout(120_000);

/** Both screens come to show the same rep in the same words. */
async function expectAlike(left: Page, right: Page): Promise<void> {
  const shown = (page: Page) =>
    page.locator('.work-head-rep, .work-sentence, .work-pause h2').allTextContents();
  await expect
    .poll(async () => JSON.stringify(await shown(right)) === JSON.stringify(await shown(left)))
    .toBe(true);
}

test('two tabs on one session, by turns and at once: nothing is lost or doubled, both show the same', async ({
  context,
  baseURL,
}) => {
  const left = await context.newPage();
  await left.goto(baseURL);
  await startFirst(left, 'Smew', 'stop');
  const right = await context.newPage();
  await right.goto(left.url());
  await expect(right.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');

  // By turns: each goes on where the other left it.
  for (let turn = 0; turn < 4; turn++) {
    const [here, there] = turn % 2 === 0 ? [left, right] : [right, left];
    await allWell(here);
    await expect(there.locator('.work-head-rep, .work-pause').first()).toBeVisible();
    await expect.poll(() => repNumber(there)).toBe(await repNumber(here));
  }
  expect(repsOf(await factsInDatabase(left))).toHaveLength(4);
  await expectAlike(left, right);

  // At once: a tap that is acknowledged is a rep; one made on a picture that the other tab has just overtaken is let fall.
  for (let round = 0; round < 4; round++) {
    await Promise.all([goOnIfPaused(left), goOnIfPaused(right)]);
    const before = await repNumber(left);
    await Promise.all([wideKey(left).click(), wideKey(right).click()]);
    await expect.poll(() => repNumber(left)).toBeGreaterThan(before);
    await expect
      .poll(async () => (await repNumber(left)) - repsOf(await factsInDatabase(left)).length)
      .toBe(1);
    await expectAlike(left, right);
    const reps = repsOf(await factsInDatabase(left));
    expect(reps.length - (before - 1)).toBeGreaterThanOrEqual(1);
    expect(reps.length - (before - 1)).toBeLessThanOrEqual(2);
  }
  const facts = await factsInDatabase(left);
  const recorded = facts.filter(({ kind }) => kind === 'rep-recorded').map(({ body }) => body.rep);
  expect(new Set(recorded).size).toBe(recorded.length);
  await expect
    .poll(async () => (await factsInCopy(left)).map(({ id }) => id))
    .toEqual(facts.map(({ id }) => id));

  // And as the record stands when it is read from the disk.
  const shown = await repNumber(left);
  await left.reload();
  await expect(left.locator('.work-pad, .work-pause').first()).toBeVisible();
  await expect.poll(() => repNumber(left)).toBe(shown);
  await expect(left.getByRole('button', { name: said.keeping.read })).toBeHidden();
});
