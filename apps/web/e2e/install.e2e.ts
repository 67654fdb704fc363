import { expect, test } from './served-app.ts';
import { said } from './steps.ts';
import { violations } from './violations.ts';

const { install } = said.setup;

for (const theme of ['sun', 'dusk'] as const) {
  test(`the browser's offer stands in Setup, by keyboard, in ${theme}`, async ({ page }) => {
    await page.addInitScript((name) => {
      localStorage.setItem('sedgeline.settings', JSON.stringify({ state: { theme: name }, version: 1 }));
    }, theme);
    await page.goto('/setup');
    const part = page.getByRole('region', { name: install.title });
    await expect(page.getByRole('heading', { level: 1, name: said.setup.title })).toBeVisible();
    await page.evaluate(() => {
      const offer = new Event('beforeinstallprompt', { cancelable: true });
      dispatchEvent(Object.assign(offer, { prompt: async () => ({ outcome: 'dismissed' }) }));
    });
    const key = part.getByRole('button', { name: install.ask });
    await expect(key).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: said.setup.demo.enter }).focus();
    await page.keyboard.press('Shift+Tab');
    await expect(key).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(part.getByRole('status')).toHaveText(install.answered.dismissed);
    await expect(part.getByRole('status')).toBeFocused();
    await expect(key).toBeHidden();
  });
}
