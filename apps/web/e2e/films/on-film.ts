import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { expect } from '../served-app.ts';
import { allWell, said, startFirst } from '../steps.ts';

export const filmPath = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
export const filmBytes = (name: string): Buffer => readFileSync(filmPath(name));

/** A film as a file of another name or with other bytes. */
export const asFile = (name: string, buffer: Buffer) => ({ name, mimeType: 'video/webm', buffer });

/** A session of one's own with so many reps that went well; resolves with its id, on the film bench. */
export async function benchOfOwn(page: Page, reps: number): Promise<string> {
  await page.goto('/');
  await startFirst(page, 'Wren');
  for (let n = 0; n < reps; n++) await allWell(page);
  const session = decodeURIComponent(new URL(page.url()).pathname.split('/').at(-1) ?? '');
  await page.goto(`/film/${encodeURIComponent(session)}`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  return session;
}

type FileGiven = Parameters<ReturnType<Page['locator']>['setInputFiles']>[0];

/** Gives the bench a film, by its first key. */
export async function openFilm(page: Page, file: FileGiven): Promise<void> {
  await page.locator('.film-opening input[type="file"]').setInputFiles(file);
  await expect(page.locator('.film-bench')).toBeVisible();
}

/** Resolves when the picture is there and its first frame was told. */
export async function pictureThere(page: Page): Promise<void> {
  await expect(page.locator('.film-moment b[data-shown]')).toBeVisible();
}

/** The number that the frame on the screen carries: its squares are read from the picture itself. */
export function shownFrame(page: Page): Promise<number> {
  return page.locator('video.film-picture').evaluate((element) => {
    const video = element as HTMLVideoElement;
    const canvas = document.createElement('canvas');
    canvas.width = video.videoWidth;
    canvas.height = video.videoHeight;
    const pen = canvas.getContext('2d', { willReadFrequently: true });
    if (pen === null) throw new Error('expected a canvas that can be drawn on');
    pen.drawImage(video, 0, 0);
    const side = video.videoWidth / 6;
    const bits = Array.from({ length: 12 }, (_, bit) => {
      const x = (bit % 6) * side + side / 2;
      const y = bit < 6 ? side / 2 : video.videoHeight - side / 2;
      return pen.getImageData(x, y, 1, 1).data[0]! > 128 ? 1 : 0;
    });
    return bits.reduce<number>((number, bit) => number * 2 + bit, 0);
  });
}

/** Time of the frame on the screen as the bench has it, seconds. */
export async function shownS(page: Page): Promise<number> {
  return Number(await page.locator('.film-moment b').getAttribute('data-shown'));
}

/** Steps with a key until the frame of that number is shown. */
export async function stepTo(page: Page, frame: number): Promise<void> {
  for (let at = await shownFrame(page); at !== frame; at = await shownFrame(page)) {
    const before = at;
    await page.locator('.film-bench').press(at < frame ? '.' : ',');
    await expect.poll(() => shownFrame(page)).not.toBe(before);
  }
}

/** Whether this browser shows a film: asked of the browser itself, with the file. */
export async function showsFilm(page: Page, name: string): Promise<boolean> {
  const bytes = filmBytes(name).toString('base64');
  return page.evaluate(
    ([data, type]) =>
      new Promise<boolean>((resolve) => {
        const raw = Uint8Array.from(atob(data!), (sign) => sign.charCodeAt(0));
        const video = document.createElement('video');
        video.onloadeddata = () => resolve(video.videoWidth > 0);
        video.onerror = () => resolve(false);
        video.src = URL.createObjectURL(new Blob([raw], { type: type! }));
      }),
    [bytes, name.endsWith('.mp4') ? 'video/mp4' : 'video/webm'],
  );
}

export const { film: filmSaid } = said;
