import type { Page } from '@playwright/test';

/** Counts the taps of a thumb from now on, over every screen until the page is loaded again; gives how many since last asked. */
export async function countTaps(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    document.documentElement.dataset.taps = '0';
    addEventListener(
      'click',
      () => {
        document.documentElement.dataset.taps = String(Number(document.documentElement.dataset.taps) + 1);
      },
      { capture: true },
    );
  });
  let before = 0;
  return async () => {
    const now = await page.evaluate(() => Number(document.documentElement.dataset.taps));
    const since = now - before;
    before = now;
    return since;
  };
}
