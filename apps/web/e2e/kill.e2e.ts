import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from './served-app.ts';
import { allWell, gradeLeg, legSkills, repNumber, said, startFirst } from './steps.ts';
import { startKillableBrowser } from './storage/killable-browser.ts';

test.setTimeout(120_000);

test('a browser killed in mid-rep loses nothing that was acknowledged, and Work opens where it was', async ({
  servedApp,
}) => {
  await servedApp.start();
  const profile = await mkdtemp(join(tmpdir(), 'sedgeline-kill-'));
  let browser = await startKillableBrowser(profile);
  try {
    const page = await browser.newPage();
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(servedApp.url);
    await startFirst(page, 'Dunlin', 'stop');
    for (let rep = 1; rep <= 6; rep++) await allWell(page);
    const skills = await legSkills(page);
    expect(skills.length).toBeGreaterThan(1);
    await gradeLeg(page, 'fair');
    const number = await repNumber(page);
    const sentence = await page.locator('.work-sentence').first().textContent();
    await browser.kill();

    browser = await startKillableBrowser(profile);
    const again = await browser.newPage();
    await again.setViewportSize({ width: 390, height: 844 });
    // The front door: the program itself finds the way to the open session.
    await again.goto(servedApp.url);
    await expect(again.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
    expect(await repNumber(again)).toBe(number);
    await expect(again.locator('.work-leg[data-grade="fair"]')).toHaveCount(1);
    expect(await legSkills(again)).toEqual(skills);
    await expect(again.locator('.work-sentence').first()).toHaveText(sentence ?? '');
    await again.getByRole('button', { name: said.work.more, exact: true }).click();
    await expect(again.locator('.work-rep-line')).toHaveCount(6);
  } finally {
    await browser.kill();
    await rm(profile, { recursive: true, force: true });
  }
});
