import { defineConfig } from '@playwright/test';

/** The resolver's browser (`node tools/browser.mjs`); left out, Playwright's own. */
const browser = process.env.SEDGELINE_BROWSER;

/** The built app in a browser. `npm test` builds it and names the browser; the server is the fixture's (`served-app.ts`). */
export default defineConfig({
  testDir: 'apps/web/e2e',
  testMatch: '**/*.e2e.ts',
  outputDir: 'test-results',
  workers: 1,
  retries: 0,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  forbidOnly: true,
  use: {
    browserName: 'chromium',
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    serviceWorkers: 'allow',
    screenshot: 'only-on-failure',
    trace: 'retain-on-failure',
    launchOptions: {
      ...(browser === undefined ? {} : { executablePath: browser }),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
});
