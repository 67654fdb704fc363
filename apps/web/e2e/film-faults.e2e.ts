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
  showsFilm,
} from './films/on-film.ts';
import { expect, test } from './served-app.ts';

const fault = (page: Page) => page.locator('[data-fault]');

test('a coding that this browser does not show is named, with ways on', async ({ page }) => {
  await benchOfOwn(page, 1);
  const isShown = await showsFilm(page, 'hevc.mp4');
  await openFilm(page, filmPath('hevc.mp4'));
  if (isShown) {
    await pictureThere(page);
    await expect.poll(() => shownFrame(page)).toBe(0);
    return;
  }
  await expect(fault(page)).toHaveText(filmSaid.fault('cannot-show', { coding: 'hevc' }));
  await expect(fault(page)).toContainText('HEVC');
  await expect(page.locator('.film-mark-key').first()).toBeDisabled();
  // Nothing is promised of a film that can't be marked, and the way on stands with what is wrong.
  await expect(page.locator('[data-known]')).toHaveCount(0);
  await expect(page.locator('.notice', { has: fault(page) }).getByText(filmSaid.other)).toBeInViewport();
  // The way on: another film is opened in its place.
  await page.locator('.film-bench input[type="file"]').setInputFiles(filmPath('squares.webm'));
  await pictureThere(page);
  await expect(fault(page)).toHaveCount(0);
  await expect(page.locator('.film-mark-key').first()).toBeEnabled();
});

test('sound without a picture, and what is no film, are told apart', async ({ page }) => {
  await benchOfOwn(page, 1);
  await openFilm(page, filmPath('only-sound.webm'));
  await expect(fault(page)).toHaveText(filmSaid.fault('no-picture'));
  const other = page.locator('.film-bench input[type="file"]');
  await other.setInputFiles(asFile('list.mp4', Buffer.from('this is no film')));
  await expect(fault(page)).toHaveText(filmSaid.fault('not-a-film'));
  await other.setInputFiles(asFile('nothing.webm', Buffer.alloc(0)));
  await expect(fault(page)).toHaveText(filmSaid.fault('not-a-film'));
  // Cut within its first bytes, an MP4 has no index.
  await other.setInputFiles(asFile('cut.mp4', filmBytes('squares.mp4').subarray(0, 700)));
  await expect(fault(page)).toHaveAttribute('data-fault', /not-a-film|no-picture/);
});

test('a film without sound says so, and can be marked', async ({ page }) => {
  await benchOfOwn(page, 1);
  await openFilm(page, filmPath('uneven.webm'));
  await pictureThere(page);
  await expect(fault(page)).toHaveText(filmSaid.fault('no-sound'));
  await expect(page.getByRole('button', { name: filmSaid.player.sound, exact: true })).toHaveCount(0);
  await page.locator('.film-bench').press('w');
  await expect(page.locator('.film-marks > li')).toHaveCount(1);
});

test('a film that breaks off: what is there is used, and where it ends is told', async ({ page }) => {
  await benchOfOwn(page, 1);
  // A WebM that lost its second half ends where its bytes do.
  const webm = filmBytes('squares.webm');
  await openFilm(page, asFile('half.webm', webm.subarray(0, Math.floor(webm.length / 2))));
  await pictureThere(page);
  await page.locator('.film-bench').press('.');
  await expect.poll(() => shownFrame(page)).toBe(1);
  await page.locator('.film-bench').press('s');
  await expect(page.locator('.film-marks > li')).toHaveCount(1);
  await expect(fault(page)).toHaveAttribute('data-fault', 'cut-short');
  await expect(fault(page)).toContainText(/lasts 6 s, and what is here ends at [123] s/);

  // An MP4 has its index in front: it promises frames whose bytes are not there.
  if (!(await showsFilm(page, 'squares.mp4'))) return;
  const mp4 = filmBytes('squares.mp4');
  await page
    .locator('.film-bench input[type="file"]')
    .setInputFiles(asFile('half.mp4', mp4.subarray(0, Math.floor(mp4.length * 0.7))));
  await pictureThere(page);
  await page.locator('.film-slider').press('End');
  await expect(fault(page)).toHaveAttribute('data-fault', 'breaks-off', { timeout: 20_000 });
  await page.getByRole('button', { name: filmSaid.again }).click();
  await expect(fault(page)).toHaveCount(0);
  await page.locator('.film-slider').press('Home');
  await expect.poll(() => shownFrame(page)).toBe(0);
  await page.locator('.film-bench').press('.');
  await expect.poll(() => shownFrame(page)).toBe(1);
});
