import type { Page } from '@playwright/test';
import { words } from '@sedgeline/words';
import { expect } from './served-app.ts';

/** What the screens say, from the one catalogue. */
export const said = words();

export type GradeName = 'missed' | 'fair' | 'good';

/** First open: a name, a skill, go. Resolves at the first rep. */
export async function startFirst(page: Page, name: string, skill: 'stop' | 'line' = 'stop'): Promise<void> {
  const { first } = said.dogs;
  await page.getByLabel(first.name).fill(name);
  await page.getByLabel(first.skill).selectOption(skill);
  await page.getByRole('button', { name: first.go, exact: true }).click();
  await expect(padKey(page, 'good')).toBeVisible();
}

/** A grade key of the pad. */
export const padKey = (page: Page, grade: GradeName) =>
  page.locator(`.work-pad [data-grade="${grade}"].work-key`);
/** The wide key, whatever it says. */
export const wideKey = (page: Page) => page.locator('.work-pad .work-wide');
/** The legs of the rep in hand, in order. */
export const legs = (page: Page) => page.locator('.work-leg');

/** The skills of the rep in hand, in order. */
export function legSkills(page: Page): Promise<string[]> {
  return legs(page).evaluateAll((items) => items.map((item) => item.getAttribute('data-skill') ?? ''));
}

/** Number of the rep in hand, as the header states it. */
export async function repNumber(page: Page): Promise<number> {
  const text = (await page.locator('.work-head-rep').textContent()) ?? '';
  return Number(/\d+/.exec(text)?.[0]);
}

/** Where a break or the end is suggested, the handler goes on all the same. */
export async function goOnIfPaused(page: Page): Promise<void> {
  const pause = page.locator('.work-pause');
  await expect(pause.or(page.locator('.work-pad'))).toBeVisible();
  if (!(await pause.isVisible())) return;
  await page
    .getByRole('button', { name: said.work.break.goOn })
    .or(page.getByRole('button', { name: said.work.end.oneMore }))
    .click();
  await expect(page.locator('.work-pad')).toBeVisible();
}

/** One tap: the whole rep went well. Resolves when the next rep is there; gives the skills that were graded. */
export async function allWell(page: Page): Promise<string[]> {
  await goOnIfPaused(page);
  const n = await repNumber(page);
  const skills = await legSkills(page);
  await wideKey(page).click();
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(n + 1));
  return skills;
}

/** Grades the leg in hand; resolves when it is acknowledged: marked, or the next rep is there. */
export async function gradeLeg(page: Page, grade: GradeName): Promise<void> {
  const n = await repNumber(page);
  const graded = await page.locator('.work-leg[data-grade]').count();
  await padKey(page, grade).click();
  await expect
    .poll(
      async () =>
        (await repNumber(page)) > n || (await page.locator('.work-leg[data-grade]').count()) > graded,
    )
    .toBe(true);
}

/** The journal as the program hands it out: every fact of the record. */
export async function exportedFacts(page: Page): Promise<{ kind: string; body: Record<string, unknown> }[]> {
  await page.goto('/setup');
  const button = page.getByRole('button', { name: said.setup.record.export });
  await expect(button).toBeEnabled();
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks)
    .toString('utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line));
}

/** Waits until the service worker holds the whole program. */
export async function waitForOffline(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}
