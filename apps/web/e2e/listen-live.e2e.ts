import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import config from '../../../playwright.config.ts';
import { expect, test } from './served-app.ts';
import { fieldWav } from './sounds/made-field.ts';
import { allWell, exportedFacts, said, startFirst, wideKey } from './steps.ts';
import { violationsAaa as violations } from './violations.ts';

test.setTimeout(180_000);

const { listenScreen: words, work } = said;
const { live, result } = words;

/** The browser's made microphone plays this file over and over, in real time. */
const PLAYED = join(tmpdir(), `sedgeline-field-${process.pid}.wav`);
writeFileSync(PLAYED, fieldWav(48_000));

test.use({
  launchOptions: {
    ...config.use?.launchOptions,
    args: [
      ...(config.use?.launchOptions?.args ?? []),
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-audio-capture=${PLAYED}`,
    ],
  },
});

/** What comes of asking this browser for a microphone: `null` where it gives one, else the name of its refusal. Builds differ. */
const refusal = (page: Page): Promise<string | null> =>
  page.evaluate(async () => {
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
      for (const track of stream.getTracks()) track.stop();
      return null;
    } catch (error) {
      return (error as DOMException).name;
    }
  });

/** What the handler is to be told of a refusal (Media Capture and Streams, 10.2). */
const toldOf = (name: string | null): string =>
  live.fault(name === 'NotAllowedError' ? 'refused' : name === 'NotFoundError' ? 'no-microphone' : 'cannot');

/** A browser that has no microphone to give says so in plain words, and a file can be chosen all the same. */
async function expectWayOn(page: Page, name: string): Promise<void> {
  await expect(page.getByRole('alert')).toHaveText(toldOf(name));
  // The key is at the foot of a phone's screen, and what is said of it over the places all the same.
  const places = await page.getByRole('navigation', { name: said.shell.navigation }).boundingBox();
  const alert = await page.getByRole('alert').boundingBox();
  expect(alert!.y + alert!.height).toBeLessThanOrEqual(places!.y);
  await expect(page.locator('.listening-bar')).toHaveCount(0);
  await expect(page.locator('.listen-file')).toBeVisible();
}

test('the microphone listens while work goes on, in the pocket too; what it heard is joined and kept', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['microphone']);
  await page.goto('/');
  await startFirst(page, 'Greenshank', 'stop');
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await page.getByRole('link', { name: live.start }).click();
  await page.getByRole('checkbox', { name: live.keep }).check();
  await page.getByRole('button', { name: live.start }).click();
  const name = await refusal(page);
  if (name !== null) return expectWayOn(page, name);
  const bar = page.locator('.listening-bar');
  await expect(bar).toHaveAttribute('data-on', 'true');
  await expect(bar).toHaveAttribute('data-state', 'on');
  expect(await violations(page), 'listening').toEqual([]);
  // The bar goes along to Work, and each rep is tapped when its blast was heard.
  await page.getByRole('link', { name: said.back.goOn }).click();
  await expect(bar).toBeVisible();
  // The pad stays whole and in sight under it, on a narrow phone too.
  for (const [width, height] of [
    [390, 844],
    [360, 740],
    [1280, 800],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expect(wideKey(page)).toBeInViewport({ ratio: 1 });
    await expect(page.getByRole('button', { name: work.more, exact: true })).toBeInViewport({ ratio: 1 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  }
  await page.setViewportSize({ width: 390, height: 844 });
  for (const blasts of [1, 2, 3]) {
    await expect(bar).toContainText(new RegExp(`\\b${blasts} blasts?`), { timeout: 60_000 });
    await allWell(page);
  }
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await page.getByRole('button', { name: work.pocket.open }).click();
  await expect(page.locator('[data-listening]')).toContainText(live.pocket);
  expect(await violations(page), 'in the pocket').toEqual([]);
  const hold = page.locator('.work-pocket-hold');
  await hold.dispatchEvent('click', { detail: 0 });
  await expect(bar).toContainText(live.kept(1).slice(0, 11));
  await bar.getByRole('button', { name: live.stop }).click();
  await page.getByRole('link', { name: live.toResult }).click();
  await page.getByRole('button', { name: live.join }).click();
  await expect(page.getByRole('heading', { name: result.title })).toBeVisible();
  const yes = page.getByRole('button', { name: result.yes, exact: true });
  while (await yes.isVisible()) await yes.click();
  await page.locator('.listen-foot .button-main').click();
  await expect(page.locator('.listen-kept li')).toHaveCount(1);
  const session = new URL(page.url()).pathname.split('/').at(-2);
  const facts = await exportedFacts(page);
  const heard = facts.find(({ kind }) => kind === 'sound-heard')?.body;
  expect(heard).toMatchObject({ from: 'microphone' });
  expect(heard?.bytes).toBeGreaterThan(1000);
  expect(heard?.sha256).toMatch(/^[0-9a-f]{64}$/);
  const joins = facts.find(({ kind }) => kind === 'sound-joined')?.body.joins as {
    rep: string;
    atS: number;
  }[];
  const reps = facts.filter(({ kind }) => kind === 'rep-recorded').map(({ body }) => body.rep);
  expect(joins.length).toBeGreaterThan(0);
  for (const { rep } of joins) expect(reps).toContain(rep);
  // The sound itself is played from this device, in the browser's own coding: from before the last rep's whistle.
  await page.addInitScript(() => {
    const { play } = HTMLMediaElement.prototype;
    HTMLMediaElement.prototype.play = function () {
      Object.assign(window, { player: this });
      return play.call(this);
    };
  });
  await page.goto(`/back/${session}`);
  const { rep, atS } = joins.at(-1)!;
  const last = page.locator('.back-reps > li').nth(reps.indexOf(rep));
  const key = said.back.ofRep(said.back.sound.hearAt(atS), reps.indexOf(rep) + 1, live.name);
  await last.getByRole('button', { name: key }).click();
  const isAtS = () =>
    page.evaluate(() => (window as unknown as { player?: HTMLAudioElement }).player?.currentTime ?? -1);
  await expect.poll(isAtS).toBeGreaterThan(Math.max(0, atS - 2));
  await expect(page.getByRole('button', { name: said.back.sound.stop })).toBeVisible();
});

test('what was heard waits over a reload, and can be let go', async ({ page, context }) => {
  await context.grantPermissions(['microphone']);
  await page.goto('/');
  await startFirst(page, 'Redshank', 'stop');
  await page.getByRole('button', { name: work.more, exact: true }).click();
  await page.getByRole('link', { name: live.start }).click();
  await page.getByRole('button', { name: live.start }).click();
  const name = await refusal(page);
  if (name !== null) return expectWayOn(page, name);
  await expect(page.locator('.listening-bar')).toContainText('7 s', { timeout: 30_000 });
  await page.reload();
  await expect(page.locator('.listening-bar')).toHaveCount(0);
  await page.getByRole('button', { name: live.letGo }).click();
  await expect(page.getByText(result.gone)).toBeVisible();
  await page.reload();
  await expect(page.getByRole('button', { name: live.start })).toBeVisible();
  await expect(page.getByRole('button', { name: live.join })).toHaveCount(0);
});

test('a microphone that is refused, or not there, says so and leaves a way on', async ({ page, context }) => {
  await context.clearPermissions();
  await page.goto('/');
  await startFirst(page, 'Knot', 'stop');
  const session = new URL(page.url()).pathname.split('/').at(-1);
  await page.goto(`/back/${session}/listen`);
  await page.getByRole('button', { name: live.start }).click();
  const name = await refusal(page);
  expect(name).not.toBeNull();
  await expectWayOn(page, name ?? '');
  expect(await violations(page), 'refused').toEqual([]);
  // The world without a microphone, as a browser tells it.
  await page.evaluate(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('none', 'NotFoundError'));
  });
  await page.getByRole('button', { name: live.start }).click();
  await expect(page.getByRole('alert')).toHaveText(live.fault('no-microphone'));
  await expect(page.locator('.listen-file')).toBeVisible();
});
