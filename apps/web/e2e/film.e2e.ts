import type { Page } from '@playwright/test';
import {
  asFile,
  benchOfOwn,
  filmBytes,
  filmPath,
  filmSaid,
  openFilm,
  pictureThere,
  shownFrame,
  shownS,
  showsFilm,
  stepTo,
} from './films/on-film.ts';
import { expect, test } from './served-app.ts';
import { exportedFacts } from './steps.ts';

const bench = (page: Page) => page.locator('.film-bench');
const known = (page: Page) => page.locator('[data-known]');
const fault = (page: Page) => page.locator('[data-fault]');
const marks = (page: Page) => page.locator('.film-marks > li');
const kindsOf = (facts: Awaited<ReturnType<typeof exportedFacts>>, kind: string) =>
  facts.filter((fact) => fact.kind === kind);

/** Times of the first frames, seconds, as ffprobe reads them from the files. */
const FILMS = [
  { name: 'squares.webm', frames: 180, startsS: [0.007, 0.04, 0.074, 0.107, 0.14, 0.174] },
  { name: 'uneven.webm', frames: 80, startsS: [0, 0.017, 0.067, 0.1, 0.22, 0.237] },
  { name: 'squares.mp4', frames: 100, startsS: [0, 0.04, 0.08, 0.12, 0.16, 0.2] },
] as const;

for (const { name, frames, startsS } of FILMS) {
  test(`${name}: a step is one frame, by key and by touch, and the picture says so`, async ({ page }) => {
    await benchOfOwn(page, 1);
    const isShown = await showsFilm(page, name);
    await openFilm(page, filmPath(name));
    if (!isShown) {
      await expect(fault(page)).toHaveText(filmSaid.fault('cannot-show', { coding: 'avc' }));
      return;
    }
    await pictureThere(page);
    await expect.poll(() => shownFrame(page)).toBe(0);
    for (const [n, startS] of startsS.entries()) {
      await expect.poll(() => shownFrame(page)).toBe(n);
      // Half a millisecond: WebM counts whole ones.
      await expect.poll(async () => Math.abs((await shownS(page)) - startS)).toBeLessThan(0.0006);
      await bench(page).press('.');
    }
    await expect.poll(() => shownFrame(page)).toBe(startsS.length);
    await page.getByRole('button', { name: filmSaid.player.stepBack }).click();
    await expect.poll(() => shownFrame(page)).toBe(startsS.length - 1);
    await page.getByRole('button', { name: filmSaid.player.stepOn }).click();
    await expect.poll(() => shownFrame(page)).toBe(startsS.length);
    // Five quick presses are five frames.
    for (let n = 0; n < 5; n++) await page.keyboard.press('.');
    await expect.poll(() => shownFrame(page)).toBe(startsS.length + 5);
    // Neither end is stepped over.
    await page.locator('.film-slider').fill('0');
    await expect.poll(() => shownFrame(page)).toBe(0);
    await bench(page).press(',');
    await expect.poll(() => shownFrame(page)).toBe(0);
    await page.locator('.film-slider').press('End');
    await expect.poll(() => shownFrame(page)).toBe(frames - 1);
    await bench(page).press('.');
    await bench(page).press(',');
    await expect.poll(() => shownFrame(page)).toBe(frames - 2);
  });
}

test('whistle and halt come to a latency, kept with one tap and not before', async ({ page }) => {
  const session = await benchOfOwn(page, 2);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  await stepTo(page, 5);
  await bench(page).press('s');
  await expect(marks(page)).toHaveCount(1);
  await page.locator('.film-slider').fill('1');
  await stepTo(page, 30);
  await bench(page).press('w');
  await stepTo(page, 42);
  await bench(page).press('h');
  await expect(marks(page)).toHaveCount(3);
  // Frames 30 and 42 of 30 a second are 0.4 s apart; the film's own stamps are whole milliseconds; two frames of 34 ms either way.
  const figures = page.locator('.film-figures');
  await expect(figures).toContainText('halted 0.4 s (0.33 to 0.47) after the whistle');
  const facts = await exportedFacts(page);
  expect(kindsOf(facts, 'film-marked')).toHaveLength(3);
  const recorded = kindsOf(facts, 'rep-recorded')[0]!.body as { rep: string; legs: { skill: string }[] };
  const amended = kindsOf(facts, 'rep-amended').length;
  expect(facts.some(({ body }) => JSON.stringify(body).includes('latencyS'))).toBe(false);
  const [link] = kindsOf(facts, 'film-linked').map(({ body }) => body);
  expect(link).toMatchObject({ session, name: 'squares.webm', bytes: filmBytes('squares.webm').length });

  await page.goto(`/film/${session}`);
  await page.getByRole('button', { name: filmSaid.figures.keep(0.4, null) }).click();
  await expect(page.getByText(filmSaid.figures.kept(0.4))).toBeVisible();
  const after = await exportedFacts(page);
  const last = kindsOf(after, 'rep-amended').at(-1)!.body as {
    rep: string;
    legs: { skill: string; latencyS?: number }[];
  };
  expect(kindsOf(after, 'rep-amended')).toHaveLength(amended + 1);
  expect(last.rep).toBe(recorded.rep);
  expect(last.legs.filter(({ latencyS }) => latencyS !== undefined)).toEqual([
    expect.objectContaining({ skill: 'stop', latencyS: 0.4 }),
  ]);
  // It can be taken out again.
  await page.goto(`/film/${session}`);
  await page.getByRole('button', { name: filmSaid.figures.takeOut }).click();
  await expect(page.getByRole('button', { name: filmSaid.figures.keep(0.4, null) })).toBeVisible();
});

test('by the keyboard alone: marked, moved by a frame, taken back, put back; letters elsewhere mark nothing', async ({
  page,
}) => {
  const session = await benchOfOwn(page, 2);
  await openFilm(page, filmPath('uneven.webm'));
  await pictureThere(page);
  // The keyboard stands on the bench as soon as a film is open.
  await expect(bench(page)).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByText(filmSaid.reps.rep(2, 2))).toBeVisible();
  await page.keyboard.press('.');
  await page.keyboard.press('h');
  await expect(marks(page)).toHaveCount(1);
  await expect(marks(page).first()).toContainText('0.017 s');
  await page.keyboard.press('.');
  await expect.poll(() => shownFrame(page)).toBe(2);
  await page.getByRole('button', { name: filmSaid.marks.here('halt') }).focus();
  await page.keyboard.press('Enter');
  await expect(marks(page).first()).toContainText('0.067 s');
  await bench(page).focus();
  await page.keyboard.press('u');
  await expect(marks(page)).toHaveCount(0);
  await page.getByRole('button', { name: filmSaid.marks.putBackShort }).focus();
  await page.keyboard.press('Enter');
  await expect(marks(page)).toHaveCount(1);
  await page.locator('.film-reps button').first().focus();
  await page.keyboard.press('w');
  await page.keyboard.press('d');
  await bench(page).focus();
  await page.keyboard.press('w');
  await expect(marks(page)).toHaveCount(2);
  // A frame marked is 50 ms from the one before and 33 ms from the next: the longer counts.
  const facts = kindsOf(await exportedFacts(page), 'film-marked');
  expect(facts.map(({ body }) => [body.what, body.atS, Number(Number(body.frameS).toFixed(3))])).toEqual([
    ['halt', 0.017, 0.05],
    ['halt', 0.067, 0.05],
    ['whistle', 0.067, 0.05],
  ]);
  expect(session).not.toBe('');
});

test('the film is asked for again and known again; a renamed one too; another is told to be another', async ({
  page,
}) => {
  const session = await benchOfOwn(page, 1);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  await bench(page).press('s');
  await expect(marks(page)).toHaveCount(1);
  await expect(known(page)).toHaveAttribute('data-known', 'own');
  await expect(page.locator('.film-hash')).toHaveCount(0);

  await page.goto(`/film/${session}`);
  // Without the file the marks are there, and nothing to go to.
  await expect(marks(page)).toHaveCount(1);
  await expect(page.locator('video')).toHaveCount(0);
  const again = page.locator('.film-films input[type="file"]');
  await again.setInputFiles(filmPath('squares.webm'));
  await expect(known(page)).toHaveText(filmSaid.known.known('squares.webm'));

  await page.getByRole('button', { name: filmSaid.shut }).click();
  await again.setInputFiles(asFile('from the camera.webm', filmBytes('squares.webm')));
  await expect(known(page)).toHaveText(filmSaid.known.renamed('from the camera.webm', 'squares.webm'));

  // As many bytes, the last of them another.
  const other = Buffer.from(filmBytes('squares.webm'));
  other[other.length - 1]! ^= 1;
  await page.getByRole('button', { name: filmSaid.shut }).click();
  await again.setInputFiles(asFile('squares.webm', other));
  await expect(known(page)).toHaveText(
    filmSaid.known.another('squares.webm', filmBytes('squares.webm').length, 'squares.webm'),
  );
  // Marked all the same it is a film of its own, and the first keeps its mark.
  await pictureThere(page);
  await bench(page).press('w');
  await expect(marks(page)).toHaveCount(1);
  const facts = await exportedFacts(page);
  const hashes = kindsOf(facts, 'film-linked').map(({ body }) => body.contentHash);
  expect(new Set(hashes.filter((hash) => hash !== undefined)).size).toBe(2);
  expect(new Set(kindsOf(facts, 'film-marked').map(({ body }) => body.film)).size).toBe(2);
});

test('a copy that was made anew is the same film once the handler says so, and both files are known from then on', async ({
  page,
}) => {
  const session = await benchOfOwn(page, 1);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  await bench(page).press('s');
  await expect(marks(page)).toHaveCount(1);
  await expect(page.locator('.film-hash')).toHaveCount(0);
  await page.goto(`/film/${session}`);
  // As long, from the same start, and of another size: an empty element at the end, as programs add.
  const copy = Buffer.concat([filmBytes('squares.webm'), Buffer.from([0xec, 0x82, 0, 0])]);
  const again = page.locator('.film-films input[type="file"]');
  await again.setInputFiles(asFile('shared.webm', copy));
  await expect(known(page)).toHaveAttribute('data-known', 'another');
  await expect(marks(page)).toHaveCount(0);
  await page.getByRole('button', { name: filmSaid.known.same('squares.webm') }).click();
  await expect(known(page)).toHaveAttribute('data-known', 'known');
  await expect(marks(page)).toHaveCount(1);
  await page.getByRole('button', { name: filmSaid.shut }).click();
  await again.setInputFiles(filmPath('squares.webm'));
  await expect(known(page)).toHaveAttribute('data-known', 'known');
  await expect(marks(page)).toHaveCount(1);
});

test('a film is taken off the session with its marks, and brought back with them', async ({ page }) => {
  const session = await benchOfOwn(page, 1);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  await bench(page).press('s');
  await expect(marks(page)).toHaveCount(1);
  await expect(page.locator('.film-hash')).toHaveCount(0);
  await page.goto(`/film/${session}`);
  await page.getByRole('button', { name: filmSaid.films.unlink('squares.webm') }).click();
  await expect(page.getByText(filmSaid.films.unlinked('squares.webm', 1))).toBeVisible();
  await expect(marks(page)).toHaveCount(0);
  // Opened while it is off, it is told, and nothing is marked on it.
  await openFilm(page, filmPath('squares.webm'));
  await expect(known(page)).toHaveAttribute('data-known', 'taken-off');
  await expect(page.locator('.film-mark-key').first()).toBeDisabled();
  await page
    .locator('.film-notices')
    .getByRole('button', { name: filmSaid.films.bringBack('squares.webm') })
    .click();
  await expect(known(page)).toHaveAttribute('data-known', 'known');
  await expect(marks(page)).toHaveCount(1);
  await expect(page.locator('.film-mark-key').first()).toBeEnabled();
});

test('slow motion and a loop about a mark', async ({ page }) => {
  await benchOfOwn(page, 1);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  await page.locator('.film-slider').fill('3');
  await expect.poll(() => shownS(page)).toBeGreaterThan(2.9);
  await bench(page).press('h');
  await expect(marks(page)).toHaveCount(1);
  const atS = await shownS(page);
  const video = page.locator('video.film-picture');
  for (const rate of [0.125, 0.25, 0.5, 1]) {
    await page.getByRole('button', { name: filmSaid.player.rateInWords(rate), exact: true }).click();
    expect(await video.evaluate((one) => (one as HTMLVideoElement).playbackRate)).toBe(rate);
  }
  await bench(page).press('l');
  // It comes round: a time later on is earlier on the film, and none is out of the loop by more than a few frames.
  const seen: number[] = [];
  await expect
    .poll(
      async () => {
        seen.push(await shownS(page));
        return seen.some((one, n) => n > 0 && one < seen[n - 1]! - 0.5);
      },
      { timeout: 30_000, intervals: [100] },
    )
    .toBe(true);
  const within = seen.slice(1);
  expect(Math.min(...within)).toBeGreaterThan(atS - 1.1);
  expect(Math.max(...within)).toBeLessThan(atS + 1.3);
  await bench(page).press('l');
  await expect(page.getByRole('button', { name: filmSaid.player.loop })).toHaveAttribute(
    'aria-pressed',
    'false',
  );
});

test('a mark made while the film plays stops it on the very frame that is marked', async ({ page }) => {
  await benchOfOwn(page, 1);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  for (const letter of ['s', 'w', 'h']) {
    await page.locator('.film-slider').fill('0');
    await expect.poll(() => shownFrame(page)).toBe(0);
    await bench(page).press(' ');
    await expect.poll(() => shownFrame(page)).toBeGreaterThan(5);
    const before = await marks(page).count();
    await bench(page).press(letter);
    await expect(marks(page)).toHaveCount(before + 1);
    expect(await page.locator('video').evaluate((video) => (video as HTMLVideoElement).paused)).toBe(true);
    // Thirty frames a second from 0.007 s, in whole milliseconds.
    const atMs = 7 + (await shownFrame(page)) * (1000 / 30);
    expect(Math.abs((await shownS(page)) * 1000 - atMs)).toBeLessThanOrEqual(1);
    const facts = page.locator('.film-told');
    await expect(facts).toContainText(`${(Math.round((await shownS(page)) * 1000) / 1000).toFixed(3)} s`);
  }
});

test('a film of two hours: any frame of it, in hours, and the reps by the clock', async ({ page }) => {
  const session = await benchOfOwn(page, 2);
  await openFilm(page, filmPath('two-hours.webm'));
  await pictureThere(page);
  await expect(page.locator('.film-moment')).toContainText('2 h 20 s');
  await page.locator('.film-slider').fill('7000');
  await expect.poll(() => shownFrame(page)).toBe(350);
  await bench(page).press(',');
  await expect.poll(() => shownFrame(page)).toBe(349);
  await bench(page).press('s');
  await expect(marks(page).first()).toContainText('1 h 56 min 20.000 s');
  // Rep 2 was written down seconds after rep 1: it is looked for as long after this send.
  await expect(page.locator('.film-reps li').nth(1)).toContainText(/About 1 h 56 min( \d+ s)?, by the reps/);
  await page
    .locator('.film-reps li')
    .nth(1)
    .getByRole('button', { name: /1 h 56 min/ })
    .click();
  await expect(page.getByText(filmSaid.reps.rep(2, 2))).toBeVisible();
  expect(session).not.toBe('');
});

test('a whistle that was heard in the same file is offered as a mark, and says that it was heard', async ({
  page,
}) => {
  const session = await benchOfOwn(page, 1);
  const rep = (kindsOf(await exportedFacts(page), 'rep-recorded')[0]?.body.rep ?? '') as string;
  const whistles = [{ startS: 2.007, endS: 2.4, kind: 'long', pitchHz: 2900 }];
  const bytes = filmBytes('squares.webm').length;
  const sound = { sound: 'heard', session };
  const heard = { ...sound, from: 'file', name: 'squares.webm', lengthS: 6, bytes, whistles, clicks: [] };
  const joins = { ...sound, joins: [{ rep, leg: 1, atS: 2.007, by: 'program' }] };
  const lines = Object.entries({ 'sound-heard': heard, 'sound-joined': joins }).map(([kind, body]) =>
    JSON.stringify({ id: `of ${kind}`, kind, at: new Date().toISOString(), body }),
  );
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'heard.jsonl', mimeType: 'text/plain', buffer: Buffer.from(lines.join('\n')) });
  await expect(page.getByText(/2 entries/)).toBeVisible();
  await page.goto(`/film/${session}`);
  await openFilm(page, filmPath('squares.webm'));
  await pictureThere(page);
  await page.getByRole('button', { name: filmSaid.marks.markHeard(2.007) }).click();
  await expect(marks(page)).toHaveCount(1);
  await expect(marks(page).first()).toContainText(filmSaid.marks.heard);
  await expect(page.getByRole('button', { name: filmSaid.marks.markHeard(2.007) })).toHaveCount(0);
  const [mark] = kindsOf(await exportedFacts(page), 'film-marked').map(({ body }) => body);
  expect(mark).toMatchObject({ rep, what: 'whistle', atS: 2.007, frameS: 0.05, heard: true });
});
