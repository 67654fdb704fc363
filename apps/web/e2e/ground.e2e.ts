import type { Locator, Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { exportedFacts, said } from './steps.ts';
import { violations } from './violations.ts';

const { editor, walk } = said.ground;

interface Placed {
  readonly thing: string;
  readonly kind: string;
  readonly eastM: number;
  readonly northM: number;
  readonly blind?: boolean;
}
interface Drawn {
  readonly layout: string;
  readonly ground?: string;
  readonly name?: string;
  readonly handlerAt: { readonly eastM: number; readonly northM: number };
  readonly sendFrom?: { readonly eastM: number; readonly northM: number };
  readonly things: readonly Placed[];
}

/** Layouts as the record has them, in the order they were drawn. */
async function drawnLayouts(page: Page): Promise<Drawn[]> {
  const facts = await exportedFacts(page);
  return facts.filter(({ kind }) => kind === 'layout-drawn').map(({ body }) => body as unknown as Drawn);
}

async function addGround(page: Page, name: string): Promise<void> {
  await page.goto('/grounds');
  await page.getByRole('button', { name: said.ground.add.title }).click();
  await page.getByLabel(said.ground.add.name, { exact: true }).fill(name);
  await page.getByRole('button', { name: said.ground.add.save, exact: true }).click();
  await expect(page.getByRole('heading', { level: 2, name })).toBeVisible();
}

const board = (page: Page) => page.locator('.board-top');
const handle = (page: Page, name: string) =>
  board(page).getByRole('button', { name: new RegExp(`^${name}`, 'i') });
const saveKey = (page: Page) => page.getByRole('button', { name: editor.save, exact: true });

async function save(page: Page): Promise<void> {
  await saveKey(page).click();
  await expect(saveKey(page)).toBeDisabled();
}

async function middleOf(target: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const box = await target.boundingBox();
  if (box === null) throw new Error('expected it to be on the screen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('the whole editor by keys alone: put down, move, name by figures, take back, save', async ({ page }) => {
  await page.goto('/grounds/-/new/empty');
  await handle(page, editor.you).focus();
  await page.keyboard.press('p');
  const post = handle(page, said.picture.thing('post', 'asked'));
  await expect(post).toBeFocused();
  // An empty field has north up: the new post lies 20 m out, one up and five to the right of that afterwards.
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Shift+ArrowRight');
  await expect(post).toHaveAttribute('aria-label', /^post, 22 m, /);
  await page.keyboard.press('b');
  await expect(handle(page, said.picture.goal('blind'))).toBeFocused();
  await page.keyboard.press('Delete');
  await expect(handle(page, said.picture.goal('blind'))).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(handle(page, said.picture.goal('blind'))).toHaveCount(1);
  await page.keyboard.press('Control+y');
  await expect(handle(page, said.picture.goal('blind'))).toHaveCount(0);
  await post.focus();
  await page.keyboard.press('s');
  // sqrt(21^2 + 5^2) = 21.59 m is 28.8 paces of 0.75 m: 29 paces are 21.75 m, kept to a centimetre
  // and so shown as 21.7 or 21.8; atan(5/21) = 13.39 degrees.
  await expect(page.getByLabel(editor.chosen.distance)).toHaveValue(/^21\.[78]$/);
  await expect(page.getByLabel(editor.chosen.bearing)).toHaveValue('13');
  await page.getByLabel(editor.chosen.distance).fill('30');
  await page.keyboard.press('Enter');
  await page.getByLabel(editor.chosen.bearing).fill('90');
  await page.keyboard.press('Enter');
  await page.getByLabel(editor.layoutName).fill('By keys');
  await page.keyboard.press('Enter');
  await saveKey(page).focus();
  await page.keyboard.press('Enter');
  await expect(saveKey(page)).toBeDisabled();
  await expect(page).toHaveURL(/\/grounds\/-\/[^/]+$/);
  const [drawn, ...others] = await drawnLayouts(page);
  expect(others).toEqual([]);
  expect(drawn).toMatchObject({ name: 'By keys', handlerAt: { eastM: 0, northM: 0 } });
  expect(drawn?.things).toHaveLength(1);
  expect(drawn?.things[0]).toMatchObject({ kind: 'post', eastM: 30, northM: 0 });
});

test('by drag: figures live, one step of undo, saved on its ground and copied to another', async ({
  page,
}) => {
  await addGround(page, 'Long Acre');
  await addGround(page, 'Far Side');
  await page.getByRole('link', { name: 'Long Acre' }).click();
  await page.getByRole('link', { name: said.ground.starting('memory-by-wall').name }).click();
  const name = `${said.picture.thing('dummy', 'asked')} 1`;
  const dummy = handle(page, name);
  await expect(dummy).toHaveAttribute('aria-label', /, 34 m, /);
  const [from, unit] = [
    await middleOf(dummy),
    Number(await board(page).getAttribute('data-metres-per-unit')),
  ];
  const width = (await board(page).boundingBox())?.width ?? 0;
  const viewWidth = Number((await board(page).getAttribute('viewBox'))?.split(' ')[2]);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x, from.y + 30, { steps: 5 });
  await page.mouse.move(from.x, from.y + 60, { steps: 5 });
  const moving = page.locator('[data-moving] text');
  await expect(moving).toHaveText(new RegExp(`^${name}, \\d+ m$`));
  await page.mouse.up();
  await expect(moving).toHaveCount(0);
  const placed = await middleOf(dummy);
  // What was dropped is where the pointer was, to a pixel; the ground may have been fitted anew only if it left the board.
  expect(Math.hypot(placed.x - from.x, placed.y - from.y - 60)).toBeLessThan(2);
  await page.getByRole('button', { name: editor.undo }).click();
  await expect(dummy).toHaveAttribute('aria-label', /, 34 m, /);
  await page.getByRole('button', { name: editor.redo }).click();
  await expect(dummy).not.toHaveAttribute('aria-label', /, 34 m, /);
  await save(page);
  await page.getByLabel(editor.copy.to, { exact: true }).selectOption({ label: 'Far Side' });
  await page.getByRole('button', { name: editor.copy.do, exact: true }).click();
  await expect(page.getByText(editor.copy.done('Far Side'))).toBeVisible();
  const [drawn, copy] = await drawnLayouts(page);
  const thing = drawn?.things.find((each) => each.thing === 'a');
  const movedM = Math.hypot((thing?.eastM ?? 0) - 0, (thing?.northM ?? 0) - 34);
  // 60 pixels in metres at the board's scale; half a pixel at either end.
  const pixelM = (unit * viewWidth) / width;
  expect(Math.abs(movedM - 60 * pixelM)).toBeLessThan(1.5 * pixelM);
  expect(copy?.things).toEqual(drawn?.things);
  expect(copy?.ground).not.toBe(drawn?.ground);
  expect(copy?.layout).not.toBe(drawn?.layout);
});

test('what was drawn and not saved is there after a reload, and can be let go', async ({ page }) => {
  await page.goto('/grounds/-/new/fence-line');
  await handle(page, editor.you).focus();
  await page.keyboard.press('h');
  await page.reload();
  await expect(page.getByText(editor.draft)).toBeVisible();
  await expect(handle(page, said.picture.thing('hazard', 'asked'))).toHaveCount(1);
  await page.getByRole('button', { name: editor.beginAfresh }).click();
  await expect(handle(page, said.picture.thing('hazard', 'asked'))).toHaveCount(0);
  await page.reload();
  await expect(handle(page, editor.you)).toBeVisible();
  await expect(page.getByText(editor.draft)).toBeHidden();
});

test('handler and send point are two things: parted, moved apart, put together again', async ({ page }) => {
  await page.goto('/grounds/-/new/fence-line');
  await handle(page, editor.you).focus();
  await page.getByRole('button', { name: editor.sendApart }).click();
  const dog = handle(page, editor.dog);
  await expect(dog).toHaveAttribute('aria-label', /, 6 m, 8 paces, at 0°$/);
  await dog.focus();
  await page.keyboard.press('Shift+ArrowUp');
  await expect(dog).toHaveAttribute('aria-label', /, 11 m, /);
  // The dummy lies 40 m from the handler and 29 m from where the dog is sent now.
  await expect(handle(page, said.picture.thing('dummy', 'asked'))).toHaveAttribute('aria-label', /, 29 m, /);
  await save(page);
  await dog.focus();
  await page.getByRole('button', { name: editor.sendTogether }).click();
  await expect(dog).toHaveCount(0);
  await save(page);
  const [apart, together] = await drawnLayouts(page);
  expect(apart?.sendFrom).toEqual({ eastM: 0, northM: 11 });
  expect(together?.sendFrom).toBeUndefined();
  // Saved twice, it is one layout.
  expect(together?.layout).toBe(apart?.layout);
});

test('bad figures are told where they are typed, and nothing moves', async ({ page }) => {
  await page.goto('/grounds/-/new/fence-line');
  const dummy = handle(page, said.picture.thing('dummy', 'asked'));
  await dummy.focus();
  const distance = page.getByLabel(editor.chosen.distance);
  for (const typed of ['NaN', '-4', '0', '99999']) {
    await distance.fill(typed);
    await distance.press('Enter');
    await expect(page.getByRole('alert')).toBeVisible();
    await expect(distance).toHaveValue(typed);
  }
  await expect(dummy).toHaveAttribute('aria-label', /, 40 m, /);
  await distance.fill('0.2');
  await distance.press('Enter');
  const atFeet = editor.warnings.atHandler('Dummy');
  await expect(page.getByText(atFeet).first()).toBeVisible();
  await page.getByLabel(editor.wind.speed).fill('4');
  await page.getByLabel(editor.wind.speed).press('Enter');
  await expect(page.getByText(/not from where/).first()).toBeVisible();
  await expect(page.locator('main')).not.toContainText(/NaN|undefined|Infinity/);
});

test.describe('walked with the phone', () => {
  test.use({ permissions: ['geolocation'], geolocation: { latitude: 52, longitude: -1, accuracy: 4 } });

  test('a post 40 m north of where one began lies 40 m north on the drawing', async ({ page, context }) => {
    await page.goto('/grounds/-/new/empty');
    await page.getByRole('button', { name: walk.start, exact: true }).click();
    await expect(page.getByText(/averaged/)).toBeVisible();
    await page.locator('.edit-walk').getByRole('button', { name: walk.handler, exact: true }).click();
    // One metre of latitude at 52 degrees is 1/111,267 degree.
    await context.setGeolocation({ latitude: 52 + 40 / 111_267, longitude: -1, accuracy: 4 });
    await expect(page.getByText(walk.from(40, '0°'))).toBeVisible();
    await page
      .locator('.edit-walk')
      .getByRole('button', { name: editor.kind('post'), exact: true })
      .click();
    await save(page);
    const [drawn] = await drawnLayouts(page);
    const [post] = drawn?.things ?? [];
    expect(post?.kind).toBe('post');
    // To the centimetre that is kept, and the degree's length of the middle latitude.
    expect(Math.abs((post?.northM ?? 0) - 40)).toBeLessThan(0.03);
    expect(Math.abs(post?.eastM ?? 1)).toBeLessThan(0.03);
  });
});

test('a refusal of the location is told plainly, and drawing goes on', async ({ page, context }) => {
  await context.clearPermissions();
  await page.goto('/grounds/-/new/empty');
  await page.getByRole('button', { name: walk.start, exact: true }).click();
  await expect(page.locator('.edit-walk').getByRole('alert')).toHaveText(walk.fault('refused'));
  await handle(page, editor.you).focus();
  await page.keyboard.press('p');
  await expect(handle(page, said.picture.thing('post', 'asked'))).toHaveCount(1);
});

for (const theme of ['sun', 'dusk'] as const) {
  test(`no violations on the grounds, a ground and a layout in ${theme}`, async ({ page }) => {
    await page.addInitScript((name) => {
      const state = { theme: name, record: 'demo' };
      localStorage.setItem('sedgeline.settings', JSON.stringify({ state, version: 1 }));
    }, theme);
    await page.goto('/grounds');
    const first = page.locator('.ground-row-name a').first();
    await expect(first).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await first.click();
    await expect(page.locator('.layout-tile').nth(3)).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('link', { name: said.ground.starting('water-edge').name }).click();
    await handle(page, `${said.picture.thing('dummy', 'asked')} 1`).focus();
    expect(await violations(page)).toEqual([]);
  });
}
