import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect } from '../served-app.ts';
import { repNumber, said, startFirst } from '../steps.ts';
import { type KillableBrowser, startKillableBrowser } from '../storage/killable-browser.ts';
import { factsInCopy, factsInDatabase, repsOf } from './stored-facts.ts';
import { type Acknowledged, tapForEver } from './tap-driver.ts';

/** What a run did. */
export interface KillRun {
  readonly kills: number;
  readonly reps: number;
  readonly taps: number;
}

/** How long a handler taps before the browser is killed, milliseconds: from within a tap to some reps. */
const LIFE_MS = { least: 20, most: 1500 };
const GO_ON = [said.work.break.goOn, said.work.end.oneMore];

/**
 * Taps, kills the browser with SIGKILL in mid-work, opens it again on the same profile, looks at what is there, and taps on: so many times.
 * `random` gives 0 to 1. Throws where an acknowledged tap is lost, doubled or out of order, or Work does not open where it was.
 */
export async function killRun(url: string, kills: number, random: () => number): Promise<KillRun> {
  const profile = await mkdtemp(join(tmpdir(), 'sedgeline-kill-'));
  const acknowledged = new Map<number, readonly string[]>();
  let taps = 0;
  let browser: KillableBrowser | null = null;
  try {
    for (let kill = 0; kill <= kills; kill += 1) {
      browser = await startKillableBrowser(profile);
      const page = await browser.newPage();
      await page.setViewportSize({ width: 390, height: 844 });
      await page.goto(url);
      if (kill === 0) await startFirst(page, 'Pochard', 'stop');
      else await expectAllThere(page, acknowledged);
      if (kill === kills) break;
      let heard = () => {};
      const first = new Promise<void>((resolve) => {
        heard = resolve;
      });
      await page.exposeFunction('acknowledge', ({ rep, grades }: Acknowledged) => {
        acknowledged.set(rep, grades);
        taps += 1;
        heard();
      });
      const orders = { seed: Math.floor(random() * 2 ** 31), goOn: GO_ON };
      const tapping = page.evaluate(tapForEver, orders).catch(String);
      await first;
      await new Promise((resolve) => setTimeout(resolve, lifeMs(random())));
      await browser.kill();
      browser = null;
      expect(await tapping).toContain('closed');
    }
    return { kills, reps: acknowledged.size, taps };
  } finally {
    await browser?.kill();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

const lifeMs = (share: number): number => LIFE_MS.least + share * (LIFE_MS.most - LIFE_MS.least);

/** Each acknowledged tap is there once and in its place, in both copies; at most the one tap in hand is there beside them. */
async function expectAllThere(page: Page, acknowledged: Map<number, readonly string[]>): Promise<void> {
  await expect(page.locator('.work-pad, .work-pause').first()).toBeVisible();
  await expect(page.locator('[data-rough="true"]')).toHaveCount(0);
  const inDatabase = await factsInDatabase(page);
  const ids = inDatabase.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  // The comparison of the copies is behind the first picture: give it its moment.
  await expect.poll(async () => (await factsInCopy(page)).map(({ id }) => id)).toEqual(ids);
  const reps = repsOf(inDatabase);
  const last = Math.max(...acknowledged.keys());
  for (const [rep, grades] of acknowledged) {
    expect(reps[rep - 1]?.grades.slice(0, grades.length), `rep ${rep}`).toEqual(grades);
  }
  const beyond = reps.slice(last).length;
  expect(beyond, 'reps that nobody acknowledged').toBeLessThanOrEqual(1);
  await expectWhereItWas(page, reps);
  acknowledged.clear();
  for (const [index, { grades }] of reps.entries()) acknowledged.set(index + 1, grades);
}

/** Work shows the rep that is in hand with its grades, or the one after the last. */
async function expectWhereItWas(page: Page, reps: ReturnType<typeof repsOf>): Promise<void> {
  expect(new URL(page.url()).pathname).toMatch(/^\/work\/.+/);
  const shown = await repNumber(page);
  const graded = await page
    .locator('.work-leg[data-grade]')
    .evaluateAll((legs) => legs.map((leg) => leg.getAttribute('data-grade') ?? ''));
  if (graded.length > 0) {
    expect(shown).toBe(reps.length);
    expect(graded).toEqual(reps.at(-1)?.grades);
  } else {
    expect(shown).toBe(reps.length + 1);
  }
}
