import { resolveBrowser } from './browser.mjs';
import { build } from './build.mjs';
import { install } from './install.mjs';
import { runAsMain } from './repository.mjs';
import { runScripts } from './run-scripts.mjs';

/** Runs every bench of `bench/`, or those whose names are given, on a built app and with a browser at hand. */
await runAsMain(import.meta.url, async (names) => {
  await install();
  await build();
  process.env.SEDGELINE_BROWSER = await resolveBrowser();
  await runScripts('bench', names, []);
});
