import { mkdirSync, rmSync } from 'node:fs';
import { resolveBrowser } from './browser.mjs';
import { build } from './build.mjs';
import { install } from './install.mjs';
import { inRoot, report, runAsMain, ToolFailure } from './repository.mjs';
import { runNode } from './run-command.mjs';
import { addCounts, allGood, countLine, countPlaywright, countVitest } from './test-count.mjs';

const reportFolder = inRoot('.cache', 'test');
const reportFile = (name) => `${reportFolder}/${name}.json`;

/** A runner that takes longer hangs: it is ended, and counts as crashed. */
const UNIT_LIMIT_MS = 25 * 60_000;
const BROWSER_LIMIT_MS = 40 * 60_000;

async function runVitest() {
  const vitest = inRoot('node_modules', 'vitest', 'vitest.mjs');
  const file = reportFile('unit');
  const args = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const { code } = await runNode(vitest, args, { output: 'inherit', limitMs: UNIT_LIMIT_MS });
  return countVitest(file, code);
}

async function runPlaywright() {
  const browser = await resolveBrowser();
  const playwright = inRoot('node_modules', '@playwright', 'test', 'cli.js');
  const file = reportFile('browser');
  const env = { ...process.env, SEDGELINE_BROWSER: browser, PLAYWRIGHT_JSON_OUTPUT_FILE: file };
  const { code } = await runNode(playwright, ['test', '--reporter=line,json'], {
    env,
    output: 'inherit',
    limitMs: BROWSER_LIMIT_MS,
  });
  return countPlaywright(file, code);
}

/** Which runners were asked for: both, unless one is named. */
export function wantedRunners(args) {
  const stray = args.find((arg) => arg !== '--unit' && arg !== '--browser');
  if (stray !== undefined) {
    throw new ToolFailure('USAGE', `${stray} is no option; give --unit, --browser or nothing for both`);
  }
  const both = args.length === 0 || (args.includes('--unit') && args.includes('--browser'));
  return { unit: both || args.includes('--unit'), browser: both || args.includes('--browser') };
}

/** One stage of the run; what keeps it from running at all counts as one failed. */
async function stage(name, run) {
  try {
    const count = await run();
    if (count.crash !== undefined) process.stderr.write(`error[TESTS_CRASHED]: ${name}: ${count.crash}\n`);
    return count;
  } catch (error) {
    report(error);
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

/**
 * Installs, builds, runs the unit tests, then the browser tests on the built app. The very last line says how many
 * passed and failed; the exit status is 0 only when some ran and none failed.
 */
async function test(args) {
  const wanted = wantedRunners(args);
  rmSync(reportFolder, { recursive: true, force: true });
  mkdirSync(reportFolder, { recursive: true });
  const prepared = await stage('preparing', async () => {
    await install();
    await build();
    return { passed: 0, failed: 0, skipped: 0 };
  });
  const counts = [prepared];
  if (prepared.failed === 0) {
    if (wanted.unit) counts.push(await stage('unit tests', runVitest));
    if (wanted.browser) counts.push(await stage('browser tests', runPlaywright));
  }
  const sum = addCounts(counts);
  process.exitCode = allGood(sum) ? 0 : 1;
  process.stdout.write(`${countLine(sum)}\n`);
}

await runAsMain(import.meta.url, test);
