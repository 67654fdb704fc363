import { createHash } from 'node:crypto';
import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { fieldWav, LENGTH_S, type MoreFact } from './sounds/made-field.ts';
import { bringFieldSession } from './sounds/on-listen.ts';
import { said } from './steps.ts';
import { violationsAaa as violations } from './violations.ts';

test.setTimeout(90_000);

const { back, listenScreen } = said;
const SOUND = fieldWav(8_000);
const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** What the key of a rep's whistle is called. */
const hear = (rep: number, atS: number): string => back.ofRep(back.sound.hearAt(atS), rep, 'Microphone');

/** The sound's facts, with the third rep's whistle joined at 35 s and the first one's a second after it begins. */
const keptFacts = (hash: string): readonly MoreFact[] => {
  const own = { sound: 'n', session: 's' };
  const heard = { from: 'microphone', name: 'Microphone', lengthS: LENGTH_S, whistles: [], clicks: [] };
  const join = (rep: string, atS: number) => ({ rep, leg: 0, atS, by: 'handler' });
  return [
    { kind: 'sound-heard', s: 300, body: { ...own, ...heard, bytes: SOUND.length, sha256: hash } },
    { kind: 'sound-joined', s: 301, body: { ...own, joins: [join('r1', 1), join('r3', 35)] } },
  ];
};

/** Lays a sound where the device keeps what the microphone heard. */
async function lay(page: Page, bytes: Uint8Array): Promise<void> {
  await page.evaluate(async (base64) => {
    const { buffer } = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
    const opening = indexedDB.open('sedgeline-voice', 2);
    opening.onupgradeneeded = () => {
      opening.result.createObjectStore('sounds');
      opening.result.createObjectStore('begun');
    };
    await new Promise<void>((resolve, reject) => {
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const tx = opening.result.transaction('sounds', 'readwrite');
        tx.objectStore('sounds').put({ bytes: buffer, type: 'audio/wav' }, 'n');
        tx.oncomplete = () => {
          opening.result.close();
          resolve();
        };
      };
    });
  }, Buffer.from(bytes).toString('base64'));
}

/** Notes every player that the page sets going, and lets it play as it does: a player stands in no page, so no selector finds it. */
const listenIn = (page: Page) =>
  page.addInitScript(() => {
    const players: HTMLMediaElement[] = [];
    const { play } = HTMLMediaElement.prototype;
    HTMLMediaElement.prototype.play = function () {
      players.push(this);
      return play.call(this);
    };
    Object.assign(window, { players });
  });

/** The last player: where it is, seconds, and whether it plays. */
const player = (page: Page) =>
  page.evaluate(() => {
    const { players } = window as unknown as { players: HTMLMediaElement[] };
    const last = players.at(-1);
    return { atS: last?.currentTime ?? -1, isPlaying: last !== undefined && !last.paused };
  });

test('a sound that was kept is heard from two seconds before a rep’s whistle, and stopped, by hand and by keyboard', async ({
  page,
}) => {
  await listenIn(page);
  await bringFieldSession(page, keptFacts(sha256(SOUND)));
  await lay(page, SOUND);
  await page.goto('/back/s');
  await expect(page.locator('.back-kept')).toHaveText(listenScreen.before.one('Microphone', LENGTH_S, 2));
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: hear(3, 35) }).click();
  await expect.poll(async () => (await player(page)).isPlaying).toBe(true);
  // It begins at 33 s and has gone on for no longer than a busy machine takes to look.
  await expect.poll(async () => (await player(page)).atS).toBeGreaterThan(33);
  expect((await player(page)).atS).toBeLessThan(60);
  const stop = page.getByRole('button', { name: back.sound.stop });
  await expect(stop).toHaveCount(1);
  await stop.click();
  expect((await player(page)).isPlaying).toBe(false);
  await expect(stop).toHaveCount(0);
  // By keyboard, and one sound at a time; of a whistle in the first second it begins at the beginning.
  await page.getByRole('button', { name: back.sound.hear, exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect(stop).toBeFocused();
  await expect.poll(async () => (await player(page)).atS).toBeLessThan(20);
  await page.getByRole('button', { name: hear(1, 1) }).focus();
  await page.keyboard.press('Space');
  await expect(stop).toHaveCount(1);
  await expect(stop).toBeFocused();
  await page.keyboard.press('Space');
  await expect(stop).toHaveCount(0);
  expect((await player(page)).isPlaying).toBe(false);
});

test('a sound that is gone, and one that was never kept, say so in plain words', async ({ page }) => {
  await bringFieldSession(page, [
    ...keptFacts(sha256(SOUND)),
    {
      kind: 'sound-heard',
      s: 400,
      body: {
        sound: 'o',
        session: 's',
        from: 'file',
        name: 'field.wav',
        lengthS: 90,
        whistles: [],
        clicks: [],
      },
    },
  ]);
  await page.goto('/back/s');
  await expect(page.getByText(back.sound.timesOnly)).toHaveCount(1);
  await page.getByRole('button', { name: hear(3, 35) }).click();
  await expect(page.getByRole('alert')).toHaveText(back.sound.fault('gone'));
  await expect(page.getByRole('button', { name: back.sound.stop })).toHaveCount(0);
});

for (const [name, width, size] of [
  ['a page zoomed to 400 %', 320, '100%'],
  ['text at twice its size', 390, '200%'],
] as const) {
  test(`${name}: the keys of film and sound are whole and nothing runs off the side`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await bringFieldSession(page, [
      ...keptFacts(sha256(SOUND)),
      { kind: 'film-linked', s: 500, body: { film: 'f', session: 's', name: 'hedge.mp4', bytes: 900 } },
      {
        kind: 'film-marked',
        s: 501,
        body: { mark: 'm', film: 'f', rep: 'r3', what: 'sent', atS: 3763, frameS: 0.04 },
      },
    ]);
    await page.goto('/back/s');
    await page.addStyleTag({ content: `html { font-size: ${size} }` });
    await page.getByRole('button', { name: hear(3, 35) }).click();
    await expect(page.getByRole('alert')).toBeVisible();
    const keys = page.locator('.back-rep-ways .button, .back-sound-key');
    await expect(keys.first()).toBeVisible();
    for (const key of await keys.all()) {
      await key.scrollIntoViewIfNeeded();
      const box = await key.boundingBox();
      expect(Math.min(box!.width, box!.height)).toBeGreaterThanOrEqual(48);
      expect(await key.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(1);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  });
}

test('a sound that is no sound says that it can’t be played', async ({ page }) => {
  const noSound = Buffer.from('no sound at all');
  await bringFieldSession(page, keptFacts(sha256(noSound)));
  await lay(page, noSound);
  await page.goto('/back/s');
  await page.getByRole('button', { name: back.sound.hear, exact: true }).click();
  await expect(page.getByRole('alert')).toHaveText(back.sound.fault('cannot'));
});
