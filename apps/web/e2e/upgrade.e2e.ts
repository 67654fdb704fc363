import { expect, type Page, test } from '@playwright/test';
import { factsInDatabase, repsOf } from './kill/stored-facts.ts';
import { type ServedBuild, serveBuild } from './served-build.ts';
import { allWell, gradeLeg, repNumber, said, startFirst, waitForOffline } from './steps.ts';

test.setTimeout(120_000);

let served: ServedBuild;
test.beforeEach(async () => {
  served = await serveBuild('one');
});
test.afterEach(async () => {
  await served.close();
});

const buildShown = (page: Page) => page.evaluate(() => document.documentElement.dataset.build);
const offer = (page: Page) => page.getByRole('button', { name: said.shell.takeNewVersion });

/** From its second opening on a page is the service worker's: only then does a newer one wait for it. */
async function fromItsOwnStore(page: Page): Promise<void> {
  await waitForOffline(page);
  await page.reload();
  await expect(page.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
}

/** Lets the browser look for a newer service worker, and waits until one has been fetched and waits. */
const lookForNewer = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (registration.waiting === null) await new Promise((resolve) => setTimeout(resolve, 50));
  });

test('a newer program is not taken in mid-session; the session stands over it, and it is offered afterwards', async ({
  page,
}) => {
  await page.goto(served.url);
  await startFirst(page, 'Goosander', 'stop');
  await fromItsOwnStore(page);
  await allWell(page);
  await page.evaluate(() => {
    document.documentElement.dataset.untouched = 'yes';
  });

  served.release('two');
  await lookForNewer(page);
  await gradeLeg(page, 'fair');
  await allWell(page);
  await gradeLeg(page, 'good');
  // The page that was there is there still: nothing was reloaded, nothing is offered.
  expect(await page.evaluate(() => document.documentElement.dataset.untouched)).toBe('yes');
  expect(await buildShown(page)).toBe('one');
  await expect(offer(page)).toBeHidden();
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('button', { name: said.work.panel.close }).click();
  const rep = await repNumber(page);
  const before = await factsInDatabase(page);

  // A reload in mid-session stays on the program that is running, and the session stands.
  await page.reload();
  await expect(page.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
  expect(await buildShown(page)).toBe('one');
  expect(await repNumber(page)).toBe(rep);
  expect(await factsInDatabase(page)).toEqual(before);

  // The program is closed and opened again, session still open: the newer one runs, and Work opens where it was.
  const { context, url } = { context: page.context(), url: served.url };
  await page.close();
  const again = await context.newPage();
  await again.goto(url);
  await expect.poll(() => buildShown(again)).toBe('two');
  await expect(again).toHaveURL(/\/work\/.+/);
  await expect(again.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
  expect(await repNumber(again)).toBe(rep);
  await allWell(again);
  expect(repsOf(await factsInDatabase(again))).toHaveLength(rep);
});

test('with no session open a newer program is offered, and one tap takes it', async ({ page }) => {
  await page.goto(served.url);
  await startFirst(page, 'Merganser', 'stop');
  await fromItsOwnStore(page);
  await allWell(page);
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('button', { name: said.work.panel.end, exact: true }).click();
  await expect(page.getByRole('link', { name: said.work.end.toDog('Merganser') })).toBeVisible();
  served.release('two');
  await lookForNewer(page);
  await offer(page).click();
  await expect.poll(() => buildShown(page).catch(() => 'loading')).toBe('two');
  expect(repsOf(await factsInDatabase(page))).toHaveLength(1);
});
