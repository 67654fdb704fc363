import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';
import { legs, said, startFirst } from './steps.ts';

/** Where the stop's bar stands, in metres from the send point, read from the drawing alone. */
function barM(page: Page): Promise<number> {
  return page.locator('.work-face .field-card').evaluate((svg) => {
    const number = (element: Element, name: string) => Number(element.getAttribute(name));
    const bar = svg.querySelector('[data-mark="stop"]');
    if (bar === null) return Number.NaN;
    const x = (number(bar, 'x1') + number(bar, 'x2')) / 2;
    const y = (number(bar, 'y1') + number(bar, 'y2')) / 2;
    const units = Math.hypot(x - number(svg, 'data-send-x'), y - number(svg, 'data-send-y'));
    return units * number(svg, 'data-metres-per-unit');
  });
}

test('a stop moved from 20 m to 35 m is drawn at 35 m', async ({ page }) => {
  await page.goto('/');
  await startFirst(page, 'Plover', 'stop');
  const skills = await legs(page).evaluateAll((items) =>
    items.map((item) => item.getAttribute('data-skill')),
  );
  expect(skills).toContain('stop');
  await page.getByRole('button', { name: said.work.more, exact: true }).click();
  await page.getByRole('tab', { name: said.trade.skill('stop'), exact: true }).click();
  const stepper = page.locator('.work-stepper[data-field="distanceM"]');
  await stepper.getByRole('textbox').fill('20');
  await stepper.getByRole('textbox').press('Enter');
  // A bar is drawn on whole and tenth units: 0.3 m is less than a unit of the card at this scale.
  await expect.poll(() => barM(page)).toBeCloseTo(20, 0);
  const fiveMore = stepper.getByRole('button', { name: said.work.add('distanceM', '5 m') });
  for (let tap = 0; tap < 3; tap++) await fiveMore.click();
  await expect(stepper.getByRole('textbox')).toHaveValue('35');
  await expect.poll(() => barM(page)).toBeCloseTo(35, 0);
  await expect.poll(async () => Math.abs((await barM(page)) - 35)).toBeLessThan(0.3);
  // What was set is what the pad grades: the sentence of the next rep is still this one.
  await page.getByRole('button', { name: said.work.panel.close }).click();
  await expect.poll(async () => Math.abs((await barM(page)) - 35)).toBeLessThan(0.3);
});
