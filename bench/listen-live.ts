/**
 * What does listening cost on a phone? The built app hears a made sound through the browser's made microphone, in real time: processor time of
 * its page (the sound's own thread, the worker and the screen) as a share of one core, less that of the same page before; beside it what a microphone
 * takes in the same page whose sound's thread does nothing: the browser's own part. Then listening with the page let run one part in four of the
 * time (stopping and going costs the threads something too), and how far it then gets in a second. And a file, heard as fast as it goes.
 * Needs the built app and a browser (`SEDGELINE_BROWSER`). Run: `npx tsx bench/listen-live.ts [seconds]`.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { words } from '@sedgeline/words';
import { ServedApp } from '../apps/web/e2e/served-app.ts';
import { fieldWav, LENGTH_S } from '../apps/web/e2e/sounds/made-field.ts';
import { bringFieldSession, chooser, openListen } from '../apps/web/e2e/sounds/on-listen.ts';
import { slowPages } from './app-open/slow-pages.ts';
import { openIdleMicrophone } from './listen/idle-microphone.ts';

const SECONDS = Number(process.argv[2] ?? 30);
/** A phone of some years is about this many times slower than a desk machine (common practice of web tooling, no source). */
const PHONE_TIMES = 4;
const WANTED_SHARE = 0.1;
/** After a file was heard a page tidies its memory once, some 20 s later. */
const SETTLES_MS = 30_000;

const { live, result } = words().listenScreen;

/** Processor time that each of the browser's pages has used so far, seconds, by its process. */
async function pagesCpu(browser: Browser): Promise<ReadonlyMap<number, number>> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  return new Map(
    processInfo.flatMap(({ type, id, cpuTime }) => (type === 'renderer' ? [[id, cpuTime]] : [])),
  );
}

/** Processor time of pages since then, seconds; a page that is gone takes its figure along. */
async function cpuSince(browser: Browser, then: ReadonlyMap<number, number>): Promise<number> {
  let sumS = 0;
  for (const [id, cpuS] of await pagesCpu(browser)) sumS += cpuS - (then.get(id) ?? 0);
  return sumS;
}

/** Seconds of sound that were heard, as the bar tells; 0 where there is none. */
async function heardS(page: Page): Promise<number> {
  const [text = ''] = await page.locator('.listening-bar').allTextContents();
  const [, minutes, seconds] = /(\d+):(\d\d)/.exec(text) ?? [];
  return 60 * Number(minutes ?? 0) + Number(seconds ?? 0);
}

/** Share of one core that the page takes over some seconds, and how many seconds of sound were heard in each. */
async function share(browser: Browser, page: Page) {
  const [then, soundS, fromMs] = [await pagesCpu(browser), await heardS(page), performance.now()];
  await new Promise((resolve) => setTimeout(resolve, 1000 * SECONDS));
  const tookS = (performance.now() - fromMs) / 1000;
  return {
    core: (await cpuSince(browser, then)) / tookS,
    realTime: ((await heardS(page)) - soundS) / tookS,
  };
}

const percent = (part: number) => `${(100 * part).toFixed(1)} %`;

const folder = mkdtempSync(join(tmpdir(), 'listen-live-'));
const played = join(folder, 'field.wav');
writeFileSync(played, fieldWav(48_000));
const served = new ServedApp();
await served.start();
const executablePath = process.env.SEDGELINE_BROWSER;
const browser = await chromium.launch({
  ...(executablePath === undefined ? {} : { executablePath }),
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-audio-capture=${played}`,
  ],
});
try {
  const baseURL = served.url;
  // The thread that does nothing comes from no server, which the app's own rules would not let in.
  const context = await browser.newContext({ baseURL, permissions: ['microphone'], bypassCSP: true });
  const page = await context.newPage();
  await bringFieldSession(page);
  await openListen(page);
  const [fromMs, then] = [performance.now(), await pagesCpu(browser)];
  await chooser(page).setInputFiles(played);
  await page.getByRole('heading', { name: result.title }).waitFor({ timeout: 120_000 });
  const fileS = (performance.now() - fromMs) / 1000;
  const ear = (await cpuSince(browser, then)) / LENGTH_S;
  await page.getByRole('button', { name: result.letGo }).click();
  await page.waitForTimeout(SETTLES_MS);
  const before = await share(browser, page);
  const closeIdle = await openIdleMicrophone(page);
  await page.waitForTimeout(3000);
  const idle = await share(browser, page);
  await closeIdle();
  await page.getByRole('button', { name: live.start }).click();
  await page.locator('.listening-bar[data-on="true"]').waitFor();
  await page.waitForTimeout(3000);
  const listening = await share(browser, page);
  const restore = await slowPages(browser, PHONE_TIMES);
  const slow = await share(browser, page);
  await restore();
  const all = Math.max(0, listening.core - before.core);
  const browsers = Math.max(0, idle.core - before.core);
  const kept = PHONE_TIMES * all < WANTED_SHARE ? 'kept' : 'not kept';
  console.log(
    [
      `a file of ${LENGTH_S} s, 48 kHz: ${fileS.toFixed(1)} s, ${(LENGTH_S / fileS).toFixed(0)} times real time`,
      `the listener, by that file, reading and all: ${percent(ear)} of one core; ${PHONE_TIMES} times slower ${percent(PHONE_TIMES * ear)}`,
      `the page before: ${percent(before.core)} of one core`,
      `a microphone whose thread does nothing: ${percent(browsers)} more than before; ${PHONE_TIMES} times slower ${percent(PHONE_TIMES * browsers)}`,
      `listening, microphone, thread, worker and screen: ${percent(all)} more than before; ${PHONE_TIMES} times slower ${percent(PHONE_TIMES * all)} (wanted: under ${percent(WANTED_SHARE)}): ${kept}; heard ${listening.realTime.toFixed(2)} s a second`,
      `the page let run one part in ${PHONE_TIMES}: ${percent(slow.core)} of one core used, heard ${slow.realTime.toFixed(2)} s a second`,
    ].join('\n'),
  );
} finally {
  await browser.close();
  await served.stop();
  rmSync(folder, { recursive: true });
}
