import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { writeJournal } from '@sedgeline/journal';
import { build } from 'esbuild';
import { ServedApp } from '../apps/web/e2e/served-app.ts';
import { countLegs, manyFacts } from './app-open/many-facts.ts';
import { slowPages } from './app-open/slow-pages.ts';

/**
 * How long the app takes to open with many facts on the device, and how long a tap takes then. Needs the built app
 * and a browser (`SEDGELINE_BROWSER`, or Playwright's own). Figures are of this machine; compare them with the opening of
 * an empty record in the same run.
 */
/** About 20,000 legs, and a hundred thousand facts, unless other numbers of facts are given. */
const SIZES = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [10_000, 100_000];
const TAPS = 10;
const QUIET_MS = 3000;
const UNWATCHED_MS = 8000;
/** A phone of some years is about this many times slower than a desk machine (common practice of web tooling, no source). */
const PHONE_TIMES = 4;

/** Before the page's own script: notes every task of the main thread over 50 ms. */
const NOTE_LONG_TASKS = () => {
  const longMs: number[] = [];
  Object.assign(globalThis, { longMs });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) longMs.push(Math.round(entry.duration));
  }).observe({ type: 'longtask', buffered: true });
};

const longest = (page: Page) =>
  page.evaluate(() => Math.max(0, ...(globalThis as unknown as { longMs: number[] }).longMs));

/** Before the page's own script: notes when something first fits each selector, by the page's own clock. */
const NOTE_FIRST_SEEN = (selectors: readonly string[]) => {
  const seenMs: Record<string, number> = {};
  Object.assign(globalThis, { seenMs });
  new MutationObserver(() => {
    for (const selector of selectors)
      if (!(selector in seenMs) && document.querySelector(selector) !== null)
        seenMs[selector] = Math.round(performance.now());
  }).observe(document, { attributes: true, childList: true, subtree: true });
};

/** Opens the app in a new page: milliseconds until something is on the screen, until it is true, longest task. */
async function timeOpening(context: BrowserContext, url: string, first: string, ready: string) {
  const page = await context.newPage();
  await page.addInitScript(NOTE_LONG_TASKS);
  await page.addInitScript(NOTE_FIRST_SEEN, [first, ready]);
  await page.goto(url, { waitUntil: 'commit' });
  await page.locator(ready).first().waitFor();
  await page.waitForTimeout(1500);
  const seenMs = await page.evaluate(
    () => (globalThis as unknown as { seenMs: Record<string, number> }).seenMs,
  );
  return {
    page,
    firstMs: seenMs[first] ?? Number.NaN,
    readyMs: seenMs[ready] ?? Number.NaN,
    longestMs: await longest(page),
  };
}

/** Longest tasks of an opening that nobody watches: a watcher's own polling runs in the page, and would be counted. */
async function timeUnwatched(context: BrowserContext, url: string): Promise<readonly number[]> {
  const page = await context.newPage();
  await page.addInitScript(NOTE_LONG_TASKS);
  await page.goto(url, { waitUntil: 'commit' });
  await new Promise((resolve) => setTimeout(resolve, UNWATCHED_MS));
  const longMs = await page.evaluate(() => (globalThis as unknown as { longMs: number[] }).longMs);
  await page.close();
  return longMs.toSorted((a, b) => b - a);
}

async function fill(context: BrowserContext, url: string, lines: string): Promise<void> {
  const entry = fileURLToPath(new URL('./app-open/fill-store.ts', import.meta.url));
  const bundle = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2023',
  });
  const page = await context.newPage();
  const give = (path: string, contentType: string, body: string) =>
    page.route(`**/bench/${path}`, (route) => route.fulfill({ contentType, body }));
  await give(
    'blank.html',
    'text/html',
    '<!doctype html><title>Bench</title><script src="/bench/fill.js"></script>',
  );
  await give('fill.js', 'text/javascript', bundle.outputFiles[0]?.text ?? '');
  await give('facts.jsonl', 'application/x-ndjson', lines);
  await page.goto(`${url}bench/blank.html`);
  await page.evaluate(() => (globalThis as unknown as { fillStore(): Promise<number> }).fillStore());
  await page.close();
}

/** The wide key again and again: milliseconds from the tap to the next rep on the screen. */
async function timeTaps(page: Page): Promise<readonly number[]> {
  return page.evaluate(async (taps) => {
    const spent: number[] = [];
    const rep = document.getElementsByClassName('work-head-rep');
    for (let tap = 0; tap < taps; tap++) {
      // Where a break is due the handler goes on all the same.
      document.querySelector<HTMLButtonElement>('.work-pause-keys .work-second')?.click();
      await new Promise((r) => setTimeout(r, 300));
      const key = document.querySelector<HTMLButtonElement>('.work-pad .work-wide');
      if (key === null) break;
      const before = rep[0]?.textContent;
      const atMs = performance.now();
      key.click();
      while (rep[0]?.textContent === before && performance.now() - atMs < 5000)
        await new Promise((r) => setTimeout(r, 1));
      spent.push(performance.now() - atMs);
    }
    return spent.sort((a, b) => a - b);
  }, TAPS);
}

/** Opens a session with the first dog and works it. */
async function workOn(page: Page): Promise<readonly number[]> {
  await page.locator('.dog-row button').first().click();
  await page.locator('.work-open [type="submit"]').click();
  await page.locator('.work-pad').waitFor();
  return timeTaps(page);
}

const row = (name: string, { firstMs, readyMs, longestMs }: Awaited<ReturnType<typeof timeOpening>>) =>
  console.log(
    `${name.padEnd(34)} first screen ${firstMs} ms, true ${readyMs} ms, longest task of the page ${longestMs} ms`,
  );

function printTaps(name: string, tapsMs: readonly number[]): void {
  const at = (share: number) => Math.round(tapsMs[Math.floor(share * (tapsMs.length - 1))] ?? Number.NaN);
  console.log(`${name}: median ${at(0.5)} ms, longest ${at(1)} ms of ${tapsMs.length}`);
}

const executablePath = process.env.SEDGELINE_BROWSER;
const served = new ServedApp();
await served.start();
const browser = await chromium.launch({
  ...(executablePath === undefined ? {} : { executablePath }),
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  const url = `${served.url.replace(/\/$/, '')}/`;
  const empty = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const bare = await timeOpening(empty, url, '.first-open', '.first-open');
  await empty.close();

  row('empty record', bare);
  for (const least of SIZES) {
    const facts = manyFacts(least);
    const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
    await fill(context, url, writeJournal(facts));
    console.log(`${facts.length} facts, ${countLegs(facts)} legs`);
    const cold = await timeOpening(context, url, '.dog-row', '.dog-row');
    row('  no checkpoint yet', cold);
    printTaps('  tap to next rep', await workOn(cold.page));
    console.log(`  longest task of the page while working: ${await longest(cold.page)} ms`);
    // What waits for a quiet moment is done by then: the fit of the kennel's own priors, the notes beside the journal.
    await cold.page.waitForTimeout(QUIET_MS + facts.length / 5);
    await cold.page.close();
    const ready = '.work[data-rough="false"]';
    const warm = await timeOpening(context, url, '.work-pad, .work-pause', ready);
    row('  session open, checkpoint there', warm);
    await warm.page.close();
    const unwatchedMs = await timeUnwatched(context, url);
    console.log(`  the same with nobody watching: tasks over 50 ms: ${unwatchedMs.join(', ') || 'none'}`);
    const restore = await slowPages(browser, PHONE_TIMES);
    const slow = await timeOpening(context, url, '.work-pad, .work-pause', ready);
    row(`  the same, ${PHONE_TIMES} times slower`, slow);
    printTaps(`  tap to next rep, ${PHONE_TIMES} times slower`, await timeTaps(slow.page));
    await restore();
    await context.close();
  }
} finally {
  await browser.close();
  await served.stop();
}
