import { countTaps } from './count-taps.ts';
import { expect, test } from './served-app.ts';
import {
  allWell,
  goOnIfPaused,
  gradeLeg,
  legSkills,
  padKey,
  repNumber,
  said,
  startFirst,
  waitForOffline,
  wideKey,
} from './steps.ts';

test.setTimeout(120_000);

test('a session of ten reps with an undo, an excused miss, a break and no signal', async ({
  page,
  context,
  servedApp,
}) => {
  const legsWorked = new Map<string, number>();
  const count = (skills: readonly string[]) => {
    for (const skill of skills) legsWorked.set(skill, (legsWorked.get(skill) ?? 0) + 1);
  };
  await page.goto('/');
  const openedAtMs = Date.now();
  await startFirst(page, 'Wren', 'stop');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Wren');
  await waitForOffline(page);

  // A rep that went as asked costs one tap.
  const taps = await countTaps(page);
  count(await allWell(page));
  expect(await taps()).toBe(1);
  expect(Date.now() - openedAtMs).toBeLessThan(60_000);
  count(await allWell(page));
  count(await allWell(page));

  // A tap too many, undone with one tap: the count stands where it stood.
  await allWell(page);
  await page.getByRole('button', { name: said.work.undo, exact: true }).click();
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(4));
  count(await allWell(page));

  // A miss that was the handler's own: two taps, and the chain ended there.
  await goOnIfPaused(page);
  const [first] = await legSkills(page);
  await taps();
  await gradeLeg(page, 'missed');
  await page.locator('[data-cause="handler"]').click();
  await expect(page.locator('[data-cause="handler"]')).toHaveAttribute('aria-pressed', 'true');
  expect(await taps()).toBe(2);
  count([first ?? '']);
  if ((await repNumber(page)) === 5) {
    await expect(wideKey(page)).toHaveText(said.work.endedThere);
    await wideKey(page).click();
  }
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(6));

  // No signal: the server is gone and the network off. The page is loaded again and stands where it was.
  await goOnIfPaused(page);
  const asked = await page.locator('.work-sentence').first().textContent();
  await servedApp.stop();
  await context.setOffline(true);
  await page.reload();
  await expect(page.locator('.work-head-rep')).toHaveText(said.work.rep(6));
  await expect(page.locator('.work-pad')).toHaveAttribute('aria-disabled', 'false');
  await expect(page.locator('.work-sentence').first()).toHaveText(asked ?? '');
  count(await allWell(page));

  // A break, and back to work.
  await goOnIfPaused(page);
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('button', { name: said.work.break.now }).click();
  await expect(page.getByRole('timer')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('timer')).toBeVisible();
  await page.getByRole('button', { name: said.work.break.backToWork }).click();
  for (let rep = 7; rep <= 10; rep++) count(await allWell(page));

  // What was recorded is what the dog's standing counts.
  await goOnIfPaused(page);
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('button', { name: said.work.panel.end, exact: true }).click();
  await page.getByRole('link', { name: said.work.end.toDog('Wren') }).click();
  const total = [...legsWorked.values()].reduce((sum, n) => sum + n, 0);
  await expect(page.getByText(said.dog.legs(total), { exact: true }).first()).toBeVisible();
  for (const [skill, n] of legsWorked) {
    const card = page.getByRole('article', { name: said.trade.skillInWords(skill as 'stop'), exact: true });
    await expect(card).toContainText(said.dog.legs(n));
  }
  await context.setOffline(false);
});

test('grades stand on the pad only once they are on disk', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Teal', 'stop');
  await padKey(page, 'good').click();
  await expect(page.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
  // Seen on the screen, so it must be in the database: read there by another hand than the program's.
  const lines = await page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const open = indexedDB.open('sedgeline');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const db = open.result;
          const names = [...db.objectStoreNames].filter((name) => name !== 'notes');
          const texts: unknown[] = [];
          const tx = db.transaction(names);
          for (const name of names) {
            const all = tx.objectStore(name).getAll();
            all.onsuccess = () => texts.push(...all.result);
          }
          tx.oncomplete = () => {
            db.close();
            resolve(JSON.stringify(texts).split('rep-recorded').length - 1);
          };
        };
      }),
  );
  expect(lines).toBe(1);
});
