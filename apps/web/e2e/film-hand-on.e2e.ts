import type { Page } from '@playwright/test';
import Papa from 'papaparse';
import webvtt from 'webvtt-parser';
import {
  asFile,
  benchOfOwn,
  filmBytes,
  filmPath,
  filmSaid,
  openFilm,
  pictureThere,
  stepTo,
} from './films/on-film.ts';
import { expect, test } from './served-app.ts';
import { violations } from './violations.ts';

const bench = (page: Page) => page.locator('.film-bench');
const marks = (page: Page) => page.locator('.film-marks > li');

async function saved(page: Page, name: string): Promise<{ readonly file: string; readonly text: string }> {
  const key = page.getByRole('button', { name, exact: true });
  const [download] = await Promise.all([page.waitForEvent('download'), key.click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return { file: download.suggestedFilename(), text: Buffer.concat(chunks).toString('utf8') };
}

/** Two reps marked on the even film: rep 1 at frames 6, 30, 42; rep 2 at frame 120. */
async function markTwoReps(page: Page): Promise<void> {
  for (const [frame, letter] of [
    [6, 's'],
    [30, 'w'],
    [42, 'h'],
  ] as const) {
    if (frame === 30) await page.locator('.film-slider').fill('1');
    await stepTo(page, frame);
    await bench(page).press(letter);
    await expect(page.locator('.film-told')).toContainText(/at [\d.]+ s\./);
  }
  await expect(marks(page)).toHaveCount(3);
  await page.locator('.film-slider').fill('4');
  await stepTo(page, 120);
  await bench(page).press('ArrowDown');
  await bench(page).press('s');
  await expect(marks(page)).toHaveCount(1);
}

test('chapters, captions, clips and summary are read back by other programs, a hostile name included', async ({
  page,
}) => {
  const name = 'hedge --> "north", & <b>half.webm';
  await benchOfOwn(page, 2);
  await openFilm(page, asFile(name, filmBytes('squares.webm')));
  await pictureThere(page);
  await markTwoReps(page);

  const chapters = await saved(page, filmSaid.exports.chapters);
  expect(chapters.file).toMatch(/\.chapters\.vtt$/);
  const read = new webvtt.WebVTTParser().parse(chapters.text, 'metadata');
  expect(read.errors).toEqual([]);
  expect(read.cues.map(({ startTime, endTime }) => [startTime, endTime])).toEqual([
    // From the beginning (rep 1 is marked 0.207 s in) to half-way between 1.407 s and 4.007 s; then to the film's end at 6.007 s.
    [0, 2.707],
    [2.707, 6.007],
  ]);
  expect(read.cues.map(({ text }) => text.slice(0, 6))).toEqual(['Rep 1:', 'Rep 2:']);

  const captions = await saved(page, filmSaid.exports.captions);
  const cues = new webvtt.WebVTTParser().parse(captions.text, 'captions');
  expect(cues.errors).toEqual([]);
  expect(cues.cues.map(({ startTime }) => startTime)).toEqual([0.207, 1.007, 1.407, 4.007]);
  expect(cues.cues[2]?.text).toBe('Rep 1: Halt, 0.4 s (0.33 to 0.47) after the whistle');
  // The browser's own reader of captions has the same ones beside the picture.
  const inBrowser = await page
    .locator('video')
    .evaluate((video) =>
      [...((video as HTMLVideoElement).textTracks[0]?.cues ?? [])].map((cue) => cue.startTime),
    );
  expect(inBrowser).toEqual([0.207, 1.007, 1.407, 4.007]);

  const clips = await saved(page, filmSaid.exports.clips);
  const { data, errors } = Papa.parse<string[]>(clips.text, { newline: '\r\n', skipEmptyLines: true });
  expect(errors).toEqual([]);
  expect(data.map((row) => row.slice(0, 4))).toEqual([
    ['film', 'in', 'out', 'rep'],
    [name, '00:00:00.000', '00:00:02.707', '1'],
    [name, '00:00:02.707', '00:00:06.007', '2'],
  ]);

  await page.getByText(filmSaid.exports.summary, { exact: true }).click();
  const summary = page.locator('.film-summary pre');
  await expect(summary).toContainText(`marked on the film ${name}, 0:06 long`);
  await expect(summary).toContainText('All 4 marks were made by hand');
  await expect(summary).toContainText('One halt timed: 0.4 s (0.33 to 0.47) after the whistle.');
  const text = await saved(page, filmSaid.exports.save);
  expect(text.text).toBe(await summary.textContent());
});

for (const { name, theme, use } of [
  { name: 'on a phone in Sun', theme: 'sun', use: { viewport: { width: 390, height: 844 } } },
  { name: 'on a narrow phone in Dusk', theme: 'dusk', use: { viewport: { width: 360, height: 740 } } },
  {
    name: 'on a laptop in Dusk',
    theme: 'dusk',
    use: { viewport: { width: 1280, height: 800 }, hasTouch: false },
  },
  {
    name: 'on a laptop in Sun',
    theme: 'sun',
    use: { viewport: { width: 1280, height: 800 }, hasTouch: false },
  },
] as const) {
  test.describe(name, () => {
    test.use(use);

    test('the bench has no violation, keys of 48 px, and nothing runs off the side, at 200 % text too', async ({
      page,
    }) => {
      await page.addInitScript((wanted) => {
        if (localStorage.getItem('sedgeline.settings') !== null) return;
        localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: wanted }, version: 1 }));
      }, theme);
      await benchOfOwn(page, 2);
      expect(await violations(page)).toEqual([]);
      await openFilm(page, filmPath('squares.webm'));
      await pictureThere(page);
      await markTwoReps(page);
      await page.getByText(filmSaid.exports.summary, { exact: true }).click();
      await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
      expect(await violations(page)).toEqual([]);
      const small = await page.locator('.film button:visible, .film .film-file:visible').evaluateAll((keys) =>
        keys
          .map((key) => ({ text: key.textContent, box: key.getBoundingClientRect() }))
          .filter(({ box }) => box.height < 48 || box.width < 48)
          .map(({ text, box }) => `${text}: ${box.width} by ${box.height}`),
      );
      expect(small).toEqual([]);
      const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(await over()).toBeLessThanOrEqual(0);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      expect(await over()).toBeLessThanOrEqual(0);
      for (const key of await page.locator('.film-mark-key, .film-step').all()) {
        const cut = await key.evaluate((one) => one.scrollWidth - one.clientWidth);
        expect(cut).toBeLessThanOrEqual(0);
      }
    });
  });
}

test('picture, keys and marks are together on the screen of a phone', async ({ page }) => {
  await benchOfOwn(page, 2);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  const picture = await page.locator('video.film-picture').boundingBox();
  const last = await page.locator('.film-mark-key').last().boundingBox();
  const bar = await page.getByRole('navigation', { name: 'Places' }).boundingBox();
  expect(picture!.y).toBeGreaterThanOrEqual(-1);
  expect(last!.y + last!.height).toBeLessThanOrEqual(bar!.y);
});
