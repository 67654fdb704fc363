import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { beginWorkerWith } from './begin-worker-with.ts';
import { factsInDatabase, repsOf } from './kill/stored-facts.ts';
import { expect, test } from './served-app.ts';
import { allWell, goOnIfPaused, repNumber, said, startFirst } from './steps.ts';

test.setTimeout(120_000);

const HOUR_MS = 3_600_000;
/** Put before the worker's own script: its clock goes as far wrong as it is told. */
const CLOCK_AS_TOLD = `
  const trueNow = Date.now;
  let offMs = 0;
  Date.now = () => trueNow() + offMs;
  new BroadcastChannel('test-clock').onmessage = ({ data }) => { offMs = data; };
`;
const setClock = (page: Page, offMs: number) =>
  page.evaluate((off) => {
    const channel = new BroadcastChannel('test-clock');
    channel.postMessage(off);
    channel.close();
  }, offMs);

test('a clock set back an hour in mid-session is said, and the order stands', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ serviceWorkers: 'block', baseURL });
  await beginWorkerWith(context, CLOCK_AS_TOLD);
  const page = await context.newPage();
  await page.goto('/');
  await startFirst(page, 'Shelduck', 'stop');
  for (let rep = 1; rep <= 3; rep++) await allWell(page);
  await setClock(page, -HOUR_MS);
  for (let rep = 4; rep <= 5; rep++) await allWell(page);
  await expect(
    page.getByText(said.keeping.behind(59)).or(page.getByText(said.keeping.behind(60))),
  ).toBeVisible();
  const facts = await factsInDatabase(page);
  const reps = repsOf(facts);
  expect(reps).toHaveLength(5);
  // The time on the fact is what the device said; the place of the fact is where it was made.
  const atMs = facts.filter(({ kind }) => kind === 'rep-recorded').map(({ at }) => Date.parse(at));
  expect(atMs[3]! - atMs[2]!).toBeLessThan(-HOUR_MS + 60_000);
  expect(atMs[3]! - atMs[2]!).toBeGreaterThan(-HOUR_MS);
  await expect(page.locator('body')).not.toContainText(/NaN|Infinity|undefined/);

  // Opened afresh with the clock still wrong: what comes next stands after what was last.
  await page.reload();
  await expect(page.locator('.work-pad, .work-pause').first()).toBeVisible();
  await goOnIfPaused(page);
  await expect.poll(() => repNumber(page)).toBe(6);
  await setClock(page, -HOUR_MS);
  await allWell(page);
  const after = repsOf(await factsInDatabase(page));
  expect(after.slice(0, 5)).toEqual(reps);
  expect(after).toHaveLength(6);
  // Set right again, nothing more is said.
  await setClock(page, 0);
  await allWell(page);
  await expect(page.locator('.notice-care')).toBeHidden();
  await context.close();
});

test('a session that crosses time zones goes on in its order, and shows the days of where the handler is', async ({
  servedApp,
}) => {
  await servedApp.start();
  const profile = await mkdtemp(join(tmpdir(), 'sedgeline-zone-'));
  const executablePath = process.env.SEDGELINE_BROWSER;
  const openIn = (timezoneId: string) =>
    chromium.launchPersistentContext(profile, {
      ...(executablePath === undefined ? {} : { executablePath }),
      args: ['--no-sandbox', '--disable-gpu'],
      viewport: { width: 390, height: 844 },
      timezoneId,
    });
  try {
    // Twenty-two or twenty-one hours lie between the two, so that for most of the day the dates differ.
    const east = await openIn('Pacific/Auckland');
    const before = await east.newPage();
    await before.goto(servedApp.url);
    await startFirst(before, 'Garganey', 'stop');
    for (let rep = 1; rep <= 3; rep++) await allWell(before);
    const reps = repsOf(await factsInDatabase(before));
    await east.close();

    const west = await openIn('America/Los_Angeles');
    const page = await west.newPage();
    await page.goto(servedApp.url);
    await expect(page.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
    expect(await repNumber(page)).toBe(4);
    // The session is minutes old, not hours.
    await expect(page.locator('.work-head-clock time')).toHaveText(/^\d+ (s|min)$/);
    await allWell(page);
    const facts = await factsInDatabase(page);
    expect(repsOf(facts).slice(0, 3)).toEqual(reps);
    expect(facts.every(({ at }) => at.endsWith('Z'))).toBe(true);
    const atMs = facts.map(({ at }) => Date.parse(at));
    expect(atMs).toEqual(atMs.toSorted((a, b) => a - b));
    await page.goto(`${servedApp.url}/setup`);
    await page.getByRole('link', { name: said.shell.places.dogs, exact: true }).click();
    await expect(page.getByText('Garganey').first()).toBeVisible();
    await expect(page.getByText(/today/i).first()).toBeVisible();
    await west.close();
  } finally {
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
