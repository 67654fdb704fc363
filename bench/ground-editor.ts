import { chromium, type Page } from '@playwright/test';
import { ServedApp } from '../apps/web/e2e/served-app.ts';

/**
 * How smoothly a layout is drawn on: frame times while one of sixty things is dragged, the processor slowed to a quarter.
 * Needs the built app and a browser (`SEDGELINE_BROWSER`, or Playwright's own). A frame of 60 a second is 16.7 ms; the
 * first line is the same page with nothing dragged, which is what this machine can do at best.
 */
const THINGS = 60;
const SLOWED = 4;
const STEPS = 240;
const FRAME_MS = 1000 / 60;

/** Sixty things on a spiral, so that no two lie near each other: posts, dummies, hazards, markers in turn. */
function crowded() {
  const kinds = ['post', 'dummy', 'dummy', 'hazard', 'other', 'dummy'] as const;
  const things = Array.from({ length: THINGS }, (_, i) => {
    const [angle, away] = [i * 2.399963, 8 + 7 * Math.sqrt(i)];
    const at = { eastM: away * Math.sin(angle), northM: 60 + away * Math.cos(angle) };
    return { thing: `t${i}`, kind: kinds[i % kinds.length], ...at };
  });
  return { handlerAt: { eastM: 0, northM: 0 }, things, windFromDeg: 250, windMPerS: 4 };
}

/** Notes the time between frames in the page until it is asked for them; a script, as a function would bring the loader's names. */
const NOTE_FRAMES = `{
  const framesMs = [];
  let lastMs = performance.now();
  let isOn = true;
  const note = (nowMs) => {
    framesMs.push(nowMs - lastMs);
    lastMs = nowMs;
    if (isOn) requestAnimationFrame(note);
  };
  requestAnimationFrame(note);
  globalThis.takeFrames = () => {
    isOn = false;
    return framesMs.slice(2);
  };
}`;

async function framesOf(page: Page, act: () => Promise<void>): Promise<readonly number[]> {
  await page.evaluate(NOTE_FRAMES);
  await act();
  return page.evaluate(() => (globalThis as unknown as { takeFrames(): number[] }).takeFrames());
}

function row(name: string, framesMs: readonly number[]): void {
  const sorted = framesMs.toSorted((a, b) => a - b);
  const at = (share: number) => (sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN).toFixed(1);
  const late = framesMs.filter((ms) => ms > 1.5 * FRAME_MS).length;
  console.log(
    `${name.padEnd(30)} ${framesMs.length} frames, median ${at(0.5)} ms, 95 in 100 within ${at(0.95)} ms, longest ${at(1)} ms, ${late} later than one and a half frames`,
  );
}

const executablePath = process.env.SEDGELINE_BROWSER;
const served = new ServedApp();
await served.start();
const browser = await chromium.launch({
  ...(executablePath === undefined ? {} : { executablePath }),
  args: ['--no-sandbox'],
});
try {
  for (const [name, viewport] of [
    ['phone', { width: 390, height: 844 }],
    ['laptop', { width: 1280, height: 800 }],
  ] as const) {
    const context = await browser.newContext({ viewport });
    const page = await context.newPage();
    const drafts = { '["mine",null,"new empty"]': crowded() };
    await page.addInitScript(
      (state) => localStorage.setItem('sedgeline.layouts', JSON.stringify({ state, version: 1 })),
      { drafts },
    );
    await page.goto(new URL('grounds/-/new/empty', `${served.url.replace(/\/$/, '')}/`).href);
    const thing = page.locator('[data-part="thing t7"]');
    await thing.waitFor();
    const there = await page.locator('.board-handle').count();
    console.log(`${name}: ${there - 1} things and the handler, processor slowed ${SLOWED} times`);
    const slow = await context.newCDPSession(page);
    await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    await page.waitForTimeout(1500);
    row('  nothing dragged', await framesOf(page, () => page.waitForTimeout(3000)));
    const box = await thing.boundingBox();
    if (box === null) throw new Error('bench: expected the thing to be on the board');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 8, y);
    await page.waitForTimeout(300);
    row(
      '  one thing dragged',
      await framesOf(page, async () => {
        for (let step = 0; step < STEPS; step++)
          await page.mouse.move(x + 8 + 40 * Math.sin(step / 12), y + 30 * Math.cos(step / 17));
      }),
    );
    await page.mouse.up();
    row(
      '  one thing moved by keys',
      await framesOf(page, async () => {
        for (let step = 0; step < 20; step++)
          await page.keyboard.press(step % 2 ? 'ArrowLeft' : 'ArrowRight');
      }),
    );
    await context.close();
  }
} finally {
  await browser.close();
  await served.stop();
}
