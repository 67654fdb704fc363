import { expect, test } from './served-app.ts';
import { allWell, exportedFacts, gradeLeg, repNumber, said, startFirst } from './steps.ts';

test('a full device is said, the rep is kept, a file is offered, and the next tap saves both', async ({
  page,
  context,
  baseURL,
}) => {
  await page.goto('/');
  await startFirst(page, 'Brent', 'stop');
  await allWell(page);
  const devtools = await context.newCDPSession(page);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: baseURL, quotaSize: 1 });

  const n = await repNumber(page);
  await gradeLeg(page, 'good');
  const bar = page.locator('.work-not-saved');
  await expect(bar).toBeVisible();
  await expect(bar).toHaveAttribute('data-code', 'STORE_FULL');
  await expect(bar).toContainText(said.failures.store('STORE_FULL').what);
  // Work goes on: the leg is graded on the pad, the rep is the same.
  await expect(page.locator('.work-leg[data-grade="good"]')).toHaveCount(1);
  expect(await repNumber(page)).toBe(n);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: said.work.notSaved.file }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  const facts = Buffer.concat(chunks)
    .toString('utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(facts.map((fact) => fact.kind)).toEqual(['rep-recorded']);

  // Room again: the next tap saves what waited too.
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: baseURL });
  await page.getByRole('button', { name: said.work.notSaved.retry }).click();
  await expect(bar).toBeHidden();
  const kinds = (await exportedFacts(page)).map((fact) => fact.kind);
  expect(kinds.filter((kind) => kind === 'rep-recorded')).toHaveLength(2);
});

test('a browser that lets nothing be kept is said, and work goes on in memory', async ({ page, context }) => {
  await context.addInitScript(() => undefined);
  await page.route('**/*kennel-worker*.js', async (route) => {
    const answer = await route.fetch();
    const refuse =
      "indexedDB.open = () => { throw new DOMException('refused by the test', 'SecurityError'); };\n";
    await route.fulfill({ response: answer, body: refuse + (await answer.text()) });
  });
  await page.goto('/');
  await startFirst(page, 'Gadwall', 'stop');
  await expect(page.locator('.work-not-saved')).toHaveAttribute('data-code', 'STORE_REFUSED');
  await allWell(page);
  await expect(page.getByRole('button', { name: said.work.notSaved.file })).toBeVisible();
});
