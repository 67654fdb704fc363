import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import type { MoreFact } from './sounds/made-field.ts';
import { bringFieldSession } from './sounds/on-listen.ts';
import { allWell, gradeLeg, said, startFirst } from './steps.ts';
import { violationsAaa as violations } from './violations.ts';

test.setTimeout(90_000);

const { back, picture, shell, trade, whySheet } = said;

/** The five places, where they stand on the screen, and whether their names are whole. */
const places = (page: Page) =>
  page.locator('.shell-nav a').evaluateAll((all) =>
    all.map((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect();
      const isCut = one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1;
      return { name: one.textContent ?? '', left, right, top, bottom, isCut };
    }),
  );

for (const theme of ['sun', 'dusk'] as const) {
  test(`sessions newest first, and one of them with its reps and its two ways on, in ${theme}`, async ({
    page,
  }) => {
    await page.addInitScript((name) => {
      if (localStorage.getItem('sedgeline.settings') !== null) return;
      localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: name }, version: 1 }));
    }, theme);
    await page.goto('/back');
    await expect(page.getByText(back.empty)).toBeVisible();
    expect(await violations(page), 'nothing yet').toEqual([]);
    await page.goto('/');
    await startFirst(page, 'Dunlin', 'stop');
    const legs = (await allWell(page)).length;
    await gradeLeg(page, 'missed');
    await page.goto('/setup');
    await page.getByRole('link', { name: shell.places.back }).click();
    const rows = page.locator('.back-list > li');
    await expect(rows).toHaveCount(1);
    await expect(rows.first()).toContainText(back.wentSaid({ good: legs, fair: 0, missed: 1 }));
    await expect(rows.first()).toContainText(back.open);
    // The card is drawn, and the drawing has a text of its own.
    const card = rows.first().getByRole('img', { name: picture.title });
    await expect(card).toBeVisible();
    await expect(card).toHaveAccessibleName(/(stop at|line of) \d/i);
    await expect(rows.first()).toContainText(/stop (once|twice)/i);
    expect(await violations(page), 'the list').toEqual([]);
    await rows.first().getByRole('link').click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Dunlin');
    const reps = page.locator('.back-reps > li');
    await expect(reps).toHaveCount(2);
    for (const [n, rep] of (await reps.all()).entries())
      await expect(rep.getByRole('img', { name: back.card(picture.title, n + 1) })).toBeVisible();
    await expect(reps.nth(0)).toContainText(back.outcome('stop', 'good', null));
    await expect(reps.nth(1).getByRole('img', { name: trade.grade('missed'), exact: true })).toBeVisible();
    const session = new URL(page.url()).pathname.split('/').at(-1);
    await expect(page.locator('.back-ways a').nth(0)).toHaveAttribute('href', `/back/${session}/listen`);
    await expect(page.locator('.back-ways a').nth(1)).toHaveAttribute('href', `/film/${session}`);
    expect(await violations(page), 'a session').toEqual([]);
    // One tap anywhere on the card says why, and so does the keyboard.
    await reps.nth(1).click();
    await expect(page.locator('.why-leg').first()).toBeVisible();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: whySheet.open(1) }).focus();
    await page.keyboard.press('Enter');
    await expect(page.locator('.why-leg').first()).toBeVisible();
  });
}

/** So many sessions more, a day after another, of one rep each. */
const manySessions = (n: number): MoreFact[] =>
  Array.from({ length: n }, (_, i): MoreFact[] => {
    const [s, session] = [86_400 * (i + 1), `more-${i}`];
    const legs = [{ skill: 'stop', ask: { distanceM: 10 + i, wayFraction: 0.5 }, grade: 'good' }];
    return [
      { kind: 'session-opened', s, body: { session, dog: 'd' } },
      { kind: 'rep-recorded', s: s + 60, body: { rep: `more-rep-${i}`, session, legs } },
      { kind: 'session-closed', s: s + 120, body: { session } },
    ];
  }).flat();

test('months of sessions: so many cards at once, and what is out of sight is not laid out', async ({
  page,
}) => {
  await bringFieldSession(page, manySessions(120));
  await page.goto('/back');
  const cards = page.locator('.back-card');
  await expect(cards).toHaveCount(40);
  /** Whether the drawing of a card is laid out at all (`content-visibility`, CSS Containment 2). */
  const isDrawn = (n: number) =>
    cards
      .nth(n)
      .locator('svg')
      .evaluate((svg) => svg.checkVisibility({ contentVisibilityAuto: true }));
  expect(await isDrawn(0)).toBe(true);
  expect(await isDrawn(39)).toBe(false);
  await cards.nth(39).scrollIntoViewIfNeeded();
  await expect.poll(() => isDrawn(39)).toBe(true);
  await page.getByRole('button', { name: back.earlier(40) }).click();
  await expect(cards).toHaveCount(80);
});

test('from a rep one tap leads to where it is on film, and to what was heard of it', async ({ page }) => {
  const own = { sound: 'n', session: 's' };
  const bodies = {
    'film-linked': { film: 'f', session: 's', name: 'hedge.mp4', bytes: 900, lengthS: 600 },
    'film-marked': { mark: 'm', film: 'f', rep: 'r3', what: 'sent', atS: 163, frameS: 0.04 },
    'sound-heard': { ...own, from: 'file', name: 'field.wav', lengthS: 90, whistles: [], clicks: [] },
    'sound-joined': { ...own, joins: [{ rep: 'r2', leg: 0, atS: 31, by: 'handler' }] },
  };
  await bringFieldSession(
    page,
    Object.entries(bodies).map(([kind, body], n) => ({ kind, s: 300 + n, body })),
  );
  await page.goto('/back/s');
  const reps = page.locator('.back-reps > li');
  await expect(reps.nth(1).getByRole('link', { name: 'Heard, 31 s: rep 2, field.wav' })).toHaveAttribute(
    'href',
    '/back/s/listen',
  );
  // Looked for three seconds before its mark: 163 s less 3 is 2 min 40 s.
  await reps.nth(2).getByRole('link', { name: 'Film, 2 min 40 s: rep 3, hedge.mp4' }).click();
  await expect(page.locator('.film-reps [aria-pressed="true"]')).toContainText(said.film.reps.short(3));
});

test('a session that is not there says so, and leads back', async ({ page }) => {
  await page.goto('/back/none');
  await expect(page.getByRole('heading', { level: 1, name: back.notFound })).toBeVisible();
  await page.getByRole('link', { name: back.toAll }).click();
  await expect(page.getByRole('heading', { level: 1, name: back.title })).toBeVisible();
});

for (const { name, width, fontSize } of [
  { name: 'on a phone', width: 390, fontSize: '100%' },
  { name: 'on a narrow phone', width: 360, fontSize: '100%' },
  { name: 'on a page zoomed to 320 pixels', width: 320, fontSize: '100%' },
  { name: 'on a narrow phone with text at twice its size', width: 360, fontSize: '200%' },
] as const) {
  test(`all five places are whole and in reach ${name}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 740 });
    await page.goto('/back');
    await page.addStyleTag({ content: `html { font-size: ${fontSize} }` });
    await expect(page.getByText(back.empty)).toBeVisible();
    const all = await places(page);
    expect(all.map(({ name: one }) => one)).toEqual(Object.values(shell.places));
    for (const place of all) {
      expect(place.isCut, place.name).toBe(false);
      expect(place.left, place.name).toBeGreaterThanOrEqual(0);
      expect(place.right, place.name).toBeLessThanOrEqual(width);
      expect(place.bottom, place.name).toBeLessThanOrEqual(740);
      expect(place.bottom - place.top, place.name).toBeGreaterThanOrEqual(48);
    }
    // Under the frame's foot nothing of the screen is hidden for good.
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    const way = await page.getByRole('link', { name: back.toWork }).boundingBox();
    const top = Math.min(...(await places(page)).map((place) => place.top));
    expect((way?.y ?? 0) + (way?.height ?? 999)).toBeLessThanOrEqual(top);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}
