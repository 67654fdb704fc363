import type { BrowserContext, Page } from '@playwright/test';

/** Lets the kennel's worker begin with a script of the test's. */
export async function beginWorkerWith(where: Page | BrowserContext, script: string): Promise<void> {
  await where.route('**/*kennel-worker*.js', async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, body: script + (await answer.text()) });
  });
}
