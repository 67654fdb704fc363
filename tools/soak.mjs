import { resolveBrowser } from './browser.mjs';
import { build } from './build.mjs';
import { inRoot, runAsMain, ToolFailure } from './repository.mjs';
import { runNode } from './run-command.mjs';
import { runScripts } from './run-scripts.mjs';

/** Folders of browser tests that have a long form. */
const BROWSER_SOAKS = { kill: 'apps/web/e2e/kill' };
const SOAK_LIMIT_MS = 3 * 3_600_000;

/** Runs a folder of browser tests in its long form, on the app as it is built now. */
async function runBrowserSoak(folder) {
  process.stdout.write(`\n== ${folder}\n`);
  await build();
  const env = { ...process.env, SEDGELINE_BROWSER: await resolveBrowser(), SEDGELINE_LONG: '1' };
  const playwright = inRoot('node_modules', '@playwright', 'test', 'cli.js');
  const run = { env, output: 'inherit', limitMs: SOAK_LIMIT_MS };
  const { code } = await runNode(playwright, ['test', folder, '--reporter=line'], run);
  if (code !== 0) throw new ToolFailure('SOAK_FAILED', `failed: ${folder}; see above`);
}

/** Runs the long form of every study of `studies/` and of the browser tests that have one, or of those that are named. */
await runAsMain(import.meta.url, async (names) => {
  const studies = names.filter((name) => !(name in BROWSER_SOAKS));
  if (names.length === 0 || studies.length > 0) await runScripts('studies', studies, ['--long']);
  for (const [name, folder] of Object.entries(BROWSER_SOAKS)) {
    if (names.length === 0 || names.includes(name)) await runBrowserSoak(folder);
  }
});
