import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { allWell, gradeLeg, said, startFirst, wideKey } from './steps.ts';

test.setTimeout(90_000);

/** The outcome pad's own measure, CSS pixels. */
const LEAST_KEY_PX = 72;

interface Box {
  readonly name: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Every key in sight on Work, where it stands in the page. */
function keys(page: Page, within = '.work'): Promise<Box[]> {
  return page.locator(`${within} button:visible`).evaluateAll((all) =>
    all.map((one) => {
      const { left, top, right, bottom } = one.getBoundingClientRect();
      const y = scrollY;
      return { name: one.textContent ?? '', left, top: top + y, right, bottom: bottom + y };
    }),
  );
}

/** Pairs of keys that cover each other by more than half a pixel (browsers lay out in fractions of one). */
function overlaps(boxes: readonly Box[]): string[] {
  return boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      return across > 0.5 && down > 0.5 ? [`${a.name} over ${b.name}`] : [];
    }),
  );
}

/** Texts of keys that their key cuts off. */
const cutOff = (page: Page) =>
  page
    .locator('.work button:visible')
    .evaluateAll((all) =>
      all
        .filter((one) => one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1)
        .map((one) => one.textContent),
    );

async function openWith(page: Page, settings: Record<string, unknown>): Promise<void> {
  await page.addInitScript((state) => {
    localStorage.setItem('sedgeline.settings', JSON.stringify({ state, version: 1 }));
  }, settings);
  await page.goto('/');
}

/** The fullest that Work can be: a cause is asked, the stop may have been blown otherwise, and rewards are kept. */
async function atItsFullest(page: Page): Promise<void> {
  await startFirst(page, 'Lapwing', 'stop');
  await allWell(page);
  await gradeLeg(page, 'missed');
  await expect(page.locator('[data-about="cause"]')).toBeVisible();
  await expect(page.locator('[data-got-it]')).toBeVisible();
}

for (const [name, width, height] of [
  ['a phone upright', 390, 844],
  ['a narrow phone', 360, 740],
  ['a phone held across', 844, 390],
] as const) {
  for (const hand of ['right', 'left'] as const) {
    test(`the pad is whole, big and under the ${hand} thumb on ${name}`, async ({ page }) => {
      await page.setViewportSize({ width, height });
      await openWith(page, { hand, keepReward: width === 390 });
      await atItsFullest(page);
      const outcome = await keys(page, '.work-pad');
      expect(outcome).toHaveLength(4);
      for (const key of outcome) {
        expect(key.right - key.left, key.name).toBeGreaterThanOrEqual(LEAST_KEY_PX);
        expect(key.bottom - key.top, key.name).toBeGreaterThanOrEqual(LEAST_KEY_PX);
        // In sight without scrolling, and in the lower three fifths, where a thumb reaches (common practice, no source).
        expect(key.top, key.name).toBeGreaterThanOrEqual(height * 0.4 - (width > height ? height * 0.1 : 0));
        expect(key.bottom, key.name).toBeLessThanOrEqual(height);
      }
      const all = await keys(page);
      expect(overlaps(all)).toEqual([]);
      expect(await cutOff(page)).toEqual([]);
      for (const key of all) {
        expect(key.left, key.name).toBeGreaterThanOrEqual(0);
        expect(key.right, key.name).toBeLessThanOrEqual(width);
        expect(Math.min(key.right - key.left, key.bottom - key.top), key.name).toBeGreaterThanOrEqual(48);
      }
      // Good lies on the thumb's side; held across, so does the whole pad.
      const middle = (box: Box) => (box.left + box.right) / 2;
      const [first, , last] = [...outcome].sort((a, b) => a.top - b.top || a.left - b.left);
      const good = hand === 'right' ? last : first;
      expect(good?.name).toContain('Good');
      if (width > height) {
        for (const key of outcome) expect(middle(key) > width / 2, key.name).toBe(hand === 'right');
      }
    });
  }
}

for (const [width, height] of [
  [390, 844],
  [844, 390],
] as const) {
  test(`nothing is lost or covered with text at twice its size, ${width} by ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openWith(page, { keepReward: true });
    await page.addStyleTag({ content: 'html { font-size: 200% }' });
    await atItsFullest(page);
    const all = await keys(page);
    expect(overlaps(all)).toEqual([]);
    expect(await cutOff(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    for (const key of all) expect(key.right, key.name).toBeLessThanOrEqual(width);
    // What lies farther down is reached by scrolling, and works there.
    await wideKey(page).scrollIntoViewIfNeeded();
    await expect(wideKey(page)).toBeInViewport();
  });
}

for (const [width, height] of [
  [1280, 800],
  [1280, 720],
  [960, 680],
] as const) {
  test(`reps of the session beside the card never push a key off a laptop, ${width} by ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await openWith(page, { keepReward: true });
    await startFirst(page, 'Lapwing', 'stop');
    for (let rep = 0; rep < 6; rep++) await allWell(page);
    const inSight = async (when: string) => {
      for (const key of await keys(page))
        expect(key.bottom, `${when}: ${key.name}`).toBeLessThanOrEqual(height);
    };
    await expect(page.locator('.work-log li').last()).toContainText(said.work.rep(6));
    await inSight('six reps');
    await gradeLeg(page, 'missed');
    await expect(page.locator('[data-about="cause"]')).toBeVisible();
    await inSight('a cause is asked');
  });
}
