import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { fieldWav, LENGTH_S, STOPS_S, wavHeader } from './sounds/made-field.ts';
import {
  bringFieldSession,
  chooser,
  keepKey,
  openListen,
  sounds,
  writeRecorded,
} from './sounds/on-listen.ts';
import { exportedFacts, said } from './steps.ts';
import { violationsAaa as violations } from './violations.ts';

test.setTimeout(120_000);

const { listenScreen: words } = said;
const { result, file, fault } = words;
const LATE = 4;

/** Whether this browser can decode a coding at all: asked of the browser, since builds differ. */
const decodes = (page: Page, codec: string, sampleRate: number): Promise<boolean> =>
  page.evaluate(async (config) => (await AudioDecoder.isConfigSupported(config)).supported === true, {
    codec,
    sampleRate,
    numberOfChannels: 1,
  });

async function openWithField(page: Page): Promise<void> {
  await bringFieldSession(page);
  await openListen(page);
}

/** Waits for what was heard, answers what is asked with yes, and keeps it. */
async function keepAll(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { name: result.title })).toBeVisible({ timeout: 60_000 });
  const yes = page.getByRole('button', { name: result.yes, exact: true });
  while (await yes.isVisible()) await yes.click();
  await keepKey(page).click();
  await expect(page.getByText(result.kept(STOPS_S.length, 0))).toBeVisible();
}

interface Joined {
  readonly rep: string;
  readonly leg: number;
  readonly atS: number;
  readonly by: string;
}

/** The kept joins, from the facts on disk. */
async function keptJoins(page: Page): Promise<readonly Joined[]> {
  const facts = await exportedFacts(page);
  const heard = facts.filter(({ kind }) => kind === 'sound-heard');
  expect(heard).toHaveLength(1);
  return facts.find(({ kind }) => kind === 'sound-joined')?.body.joins as readonly Joined[];
}

/** Each stop has its own whistle, to the 50 ms that an ear is held to and as much again for a coder. */
function expectRight(joins: readonly Joined[]): void {
  expect(joins.map(({ rep }) => rep)).toEqual(STOPS_S.map((_, n) => `r${n + 1}`));
  for (const [n, { atS }] of joins.entries()) expect(Math.abs(atS - STOPS_S[n]!)).toBeLessThan(0.1);
}

for (const { name, theme, use } of [
  { name: 'on a phone in Sun', theme: 'sun', use: { viewport: { width: 390, height: 844 } } },
  {
    name: 'on a laptop in Dusk',
    theme: 'dusk',
    use: { viewport: { width: 1280, height: 800 }, hasTouch: false },
  },
] as const) {
  test.describe(name, () => {
    test.use(use);
    test('a WAV, from choosing it to facts on disk: what is sure, what is asked, what is taken out', async ({
      page,
    }, info) => {
      await page.addInitScript((chosen) => {
        if (localStorage.getItem('sedgeline.settings') !== null) return;
        localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: chosen }, version: 1 }));
      }, theme);
      await openWithField(page);
      expect(await violations(page), 'choosing').toEqual([]);
      await chooser(page).setInputFiles(writeRecorded(info.outputPath('field.wav'), fieldWav(16_000)));
      await expect(page.getByRole('heading', { name: result.title })).toBeVisible({ timeout: 60_000 });
      // All but the one that was tapped late fit for sure; nothing is kept so far.
      const ticks = page.locator('.listen-sure input');
      await expect(ticks).toHaveCount(STOPS_S.length - 1);
      for (const tick of await ticks.all()) await expect(tick).toBeChecked();
      await expect(page.locator('.listen-call[data-kind="long"]')).toHaveCount(STOPS_S.length + 1);
      await expect(page.locator('.listen-join')).toHaveCount(STOPS_S.length - 1);
      const asked = words.repLeg(LATE + 1, 'stop', null);
      await expect(page.getByText(result.ask(STOPS_S[LATE], 'long', 1, asked))).toBeVisible();
      await expect(keepKey(page)).toBeDisabled();
      // Why it can't be pressed yet is said beside it; of one rep alone the answer is yes or no.
      await expect(page.locator('.listen-foot')).toContainText(result.keepAfter(1));
      await expect(page.getByRole('button', { name: result.no, exact: true })).toBeVisible();
      await expect(page.getByRole('button', { name: result.skip })).toHaveCount(0);
      expect(await violations(page), 'the result').toEqual([]);
      await page.getByText(result.lineTable, { exact: true }).click();
      await expect(page.locator('.listen-table tbody tr')).toHaveCount(STOPS_S.length + 2);
      // The first is not so, says the handler: it is offered among the others, and the blast asked about is put there.
      await ticks.first().uncheck();
      await page.getByRole('button', { name: result.other }).click();
      await page.getByRole('button', { name: words.repLeg(1, 'stop', null) }).click();
      await expect(page.getByText(result.answered)).toBeFocused();
      await page.getByRole('button', { name: result.undo }).click();
      await page.getByRole('button', { name: result.none, exact: true }).click();
      await expect(keepKey(page)).toHaveText(result.keep(STOPS_S.length - 2));
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
      await keepKey(page).click();
      await expect(page.getByText(result.kept(STOPS_S.length - 2, 0))).toBeVisible();
      await expect(page.locator('.listen-kept li')).toHaveCount(1);
      // The session says so too, where Listen is opened from.
      await page.getByRole('link', { name: words.back }).click();
      await expect(page.locator('.back-kept')).toHaveText(
        words.before.one('field.wav', LENGTH_S, STOPS_S.length - 2),
      );
      const joins = await keptJoins(page);
      expect(joins.map(({ rep, by }) => `${rep} ${by}`)).toEqual(
        ['r2', 'r3', 'r4', 'r6', 'r7', 'r8'].map((rep) => `${rep} program`),
      );
      for (const { rep, atS } of joins)
        expect(Math.abs(atS - STOPS_S[Number(rep.slice(1)) - 1]!)).toBeLessThan(0.05);
    });
  });
}

for (const [name, codec, rateHz] of [
  ['field.mp4', 'mp4a.40.2', 24_000],
  ['field.webm', 'opus', 48_000],
] as const) {
  test(`${name}: heard and joined, or told in plain words that this browser can’t decode it`, async ({
    page,
  }, info) => {
    await openWithField(page);
    const can = await decodes(page, codec, rateHz);
    await chooser(page).setInputFiles(writeRecorded(info.outputPath(name), readFileSync(sounds(name))));
    if (can) {
      await keepAll(page);
      expectRight(await keptJoins(page));
    } else {
      await expect(page.locator('[data-fault="cant-decode"]')).toBeVisible();
      await expect(chooser(page)).toBeAttached();
    }
  });
}

test('the sound of a film that is linked marks its whistles on it, and a halt marked there times its stop', async ({
  page,
}, info) => {
  const bytes = readFileSync(sounds('field.webm'));
  const halt = { mark: 'k', film: 'f', rep: 'r2', what: 'halt', atS: STOPS_S[1] + 1.5, frameS: 0.04 };
  await bringFieldSession(page, [
    {
      kind: 'film-linked',
      s: 300,
      body: { film: 'f', session: 's', name: 'field.webm', bytes: bytes.length },
    },
    { kind: 'film-marked', s: 301, body: halt },
  ]);
  await openListen(page);
  await chooser(page).setInputFiles(writeRecorded(info.outputPath('field.webm'), bytes));
  if (!(await decodes(page, 'opus', 48_000))) {
    await expect(page.locator('[data-fault="cant-decode"]')).toBeVisible();
    return;
  }
  await expect(page.getByRole('heading', { name: result.title })).toBeVisible({ timeout: 60_000 });
  const yes = page.getByRole('button', { name: result.yes, exact: true });
  while (await yes.isVisible()) await yes.click();
  await keepKey(page).click();
  await expect(page.getByText(result.kept(STOPS_S.length, 1))).toBeVisible();
  const facts = await exportedFacts(page);
  const marks = facts.filter(({ kind, body }) => kind === 'film-marked' && body.heard === true);
  expect(marks.map(({ body }) => `${body.rep} ${body.what}`)).toEqual(
    STOPS_S.map((_, n) => `r${n + 1} whistle`),
  );
  const amended = facts.filter(({ kind }) => kind === 'rep-amended');
  expect(amended.map(({ body }) => body.rep)).toEqual(['r2']);
  const [leg] = (amended[0]?.body.legs ?? []) as { latencyS: number }[];
  // Marked 1.5 s after the whistle was blown; the ear and the coder may be 0.1 s off.
  expect(Math.abs((leg?.latencyS ?? 0) - 1.5)).toBeLessThan(0.1);
});

test('the own whistle is learned from what was kept, and known the next time; a kept sound is taken out and put back', async ({
  page,
}, info) => {
  await openWithField(page);
  const wav = writeRecorded(info.outputPath('field.wav'), fieldWav(16_000));
  await chooser(page).setInputFiles(wav);
  await expect(page.getByText(result.ownUnknown)).toBeVisible({ timeout: 60_000 });
  await keepAll(page);
  await chooser(page).setInputFiles(wav);
  await expect(page.getByText(result.own(3150))).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: result.letGo }).click();
  await expect(page.getByText(result.gone)).toBeVisible();
  await page.getByRole('button', { name: words.before.drop }).click();
  await expect(page.locator('.listen-kept li')).toHaveCount(0);
  await page.getByRole('button', { name: words.before.takeBack }).click();
  await expect(page.locator('.listen-kept li')).toHaveCount(1);
});

test('what can’t be listened to says so, changes nothing, and leaves a way on', async ({ page }, info) => {
  await openWithField(page);
  const quiet = (rateHz: number, seconds: number) => {
    const bytes = 2 * rateHz * seconds;
    return Buffer.concat([wavHeader(rateHz, bytes), Buffer.alloc(bytes)]);
  };
  const give = async (name: string, bytes: Uint8Array) => {
    await chooser(page).setInputFiles(writeRecorded(info.outputPath(name), bytes));
  };
  await give('letter.wav', Buffer.from('this is a letter and no sound at all'));
  await expect(page.locator('[data-fault="unreadable"]')).toContainText(fault({ code: 'unreadable' }));
  await give('no-sound.mp4', readFileSync(sounds('no-sound.mp4')));
  await expect(page.locator('[data-fault="no-sound"]')).toContainText(fault({ code: 'no-sound' }));
  await give('slow.wav', quiet(4000, 1));
  await expect(page.locator('[data-fault="bad-rate"]')).toContainText(
    fault({ code: 'bad-rate', rateHz: 4000 }),
  );
  await give('odd-coding.m4a', readFileSync(sounds('odd-coding.m4a')));
  await expect(page.locator('[data-fault="cant-decode"]')).toBeVisible();
  expect(await violations(page), 'a fault').toEqual([]);
  // Silence and a low rate can be listened to, and are told.
  await give('still.wav', quiet(11_025, 2));
  await expect(page.getByText(words.note('silent'))).toBeVisible();
  await expect(page.getByText(words.note('low-rate'))).toBeVisible();
  await expect(page.getByText(result.nothing)).toBeVisible();
  await page.getByRole('button', { name: file.another }).click();
  // Of a file that breaks off, what is there is heard.
  const whole = fieldWav(16_000);
  await give('cut.wav', whole.subarray(0, whole.length / 2));
  await expect(page.getByText(words.note('breaks-off'))).toBeVisible();
  await expect(page.locator('.listen-call[data-kind="long"]')).toHaveCount(4);
  await page.getByRole('button', { name: result.letGo }).click();
  const cutMp4 = readFileSync(sounds('field.webm'));
  await give('cut.webm', cutMp4.subarray(0, cutMp4.length / 2));
  await expect(page.getByText(words.note('breaks-off')).or(page.locator('[data-fault]'))).toBeVisible();
  const facts = await exportedFacts(page);
  expect(facts.filter(({ kind }) => kind.startsWith('sound-'))).toEqual([]);
});

/** Where a key ends against where the places begin; on a laptop these stand above. */
async function isOverThePlaces(page: Page, key: Locator): Promise<boolean> {
  const [box, places] = await Promise.all([
    key.boundingBox(),
    page.getByRole('navigation', { name: said.shell.navigation }).boundingBox(),
  ]);
  const footY = places!.y > 300 ? places!.y : page.viewportSize()!.height;
  return box !== null && box.y >= 0 && box.y + box.height <= footY;
}

for (const [width, height] of [
  [390, 844],
  [360, 740],
  [1280, 800],
] as const) {
  test(`what is asked comes first, its answers in sight without scrolling, ${width} by ${height}`, async ({
    page,
  }, info) => {
    await page.setViewportSize({ width, height });
    await openWithField(page);
    await chooser(page).setInputFiles(writeRecorded(info.outputPath('field.wav'), fieldWav(16_000)));
    const yes = page.getByRole('button', { name: result.yes, exact: true });
    await expect(yes).toBeVisible({ timeout: 60_000 });
    expect(await page.evaluate(() => scrollY)).toBe(0);
    expect(await isOverThePlaces(page, yes)).toBe(true);
    expect(await isOverThePlaces(page, page.getByRole('button', { name: result.no, exact: true }))).toBe(
      true,
    );
    // The ticks come after it, read out in the same order, and are 48 px high each.
    const ticks = page.locator('.listen-sure label');
    for (const tick of await ticks.all()) {
      const [box, above] = await Promise.all([tick.boundingBox(), yes.boundingBox()]);
      expect(box!.y).toBeGreaterThan(above!.y + above!.height);
      expect(box!.height).toBeGreaterThanOrEqual(48);
    }
    expect(
      await yes.evaluate(
        (key) =>
          key.compareDocumentPosition(document.querySelector('.listen-sure')!) &
          Node.DOCUMENT_POSITION_FOLLOWING,
      ),
    ).toBeTruthy();
  });
}

test('a sound of two hours is stopped half-way, and nothing is kept', async ({ page }, info) => {
  // Two hours at 16,000 samples a second: 230 MB, written a minute at a time; what is heard is silence with a whistle a minute.
  const path = info.outputPath('long.wav');
  const minute = fieldWav(16_000).subarray(44, 44 + 2 * 16_000 * 60);
  const out = openSync(path, 'w');
  writeSync(out, wavHeader(16_000, 120 * minute.length));
  for (let n = 0; n < 120; n++) writeSync(out, minute);
  closeSync(out);
  await openWithField(page);
  await chooser(page).setInputFiles(path);
  await expect(page.getByRole('progressbar')).toHaveAttribute('value', /^0\.\d/, { timeout: 60_000 });
  await expect(page.locator('.listen [role="status"]')).toContainText(/in 100/);
  expect(await violations(page), 'listening').toEqual([]);
  await page.getByRole('button', { name: file.cancel }).click();
  await expect(page.getByText(file.cancelled)).toBeVisible();
  const facts = await exportedFacts(page);
  expect(facts.filter(({ kind }) => kind.startsWith('sound-'))).toEqual([]);
});

test('everything is in reach on a narrow phone with text at twice its size', async ({ page }, info) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await openWithField(page);
  await page.addStyleTag({ content: 'html { font-size: 200% }' });
  const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(await over()).toBeLessThanOrEqual(0);
  await chooser(page).setInputFiles(writeRecorded(info.outputPath('field.wav'), fieldWav(16_000)));
  await expect(page.getByRole('heading', { name: result.title })).toBeVisible({ timeout: 60_000 });
  expect(await over()).toBeLessThanOrEqual(0);
  await page.getByRole('button', { name: result.yes, exact: true }).click();
  await keepKey(page).scrollIntoViewIfNeeded();
  await expect(keepKey(page)).toBeInViewport();
});
