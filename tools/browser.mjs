import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { packagedChromium } from './browser-package.mjs';
import { inRoot, runAsMain, ToolFailure } from './repository.mjs';
import { runCommand, runNode } from './run-command.mjs';

const PROGRAM_NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];
const MAC_APPS = ['Chromium', 'Google Chrome', 'Microsoft Edge'];

/** Where a browser of the system may lie: each name in each folder of the path, and the apps of a Mac. */
export function systemCandidates(platform, path) {
  const folders = (path ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = PROGRAM_NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  if (platform !== 'darwin') return onPath;
  return [...onPath, ...MAC_APPS.map((app) => `/Applications/${app}.app/Contents/MacOS/${app}`)];
}

/**
 * The version a candidate answers to `--version`, or `null`: that the file is there says nothing (a wrapper without its
 * browser, a missing library).
 */
export async function answeredVersion(path) {
  if (!existsSync(path)) return null;
  const { code, text } = await runCommand(path, ['--version'], { limitMs: 15_000 });
  const version = /(?:Chrom(?:e|ium)|Edge)\D*(\d+\.[\d.]+)/.exec(text);
  return code === 0 && version !== null ? version[1] : null;
}

/** The first of some candidates that answers, or `null`. */
export async function firstThatAnswers(paths, answers = answeredVersion) {
  for (const path of paths) if ((await answers(path)) !== null) return path;
  return null;
}

async function playwrightsOwn() {
  const { chromium } = await import('@playwright/test');
  return firstThatAnswers([chromium.executablePath()]);
}

const ofTheSystem = () => firstThatAnswers(systemCandidates(process.platform, process.env.PATH));

async function byPlaywrightsInstaller() {
  process.stderr.write('No browser found; trying the installer of Playwright (60 s at most) ...\n');
  const cli = inRoot('node_modules', '@playwright', 'test', 'cli.js');
  await runNode(cli, ['install', '--no-shell', 'chromium'], { limitMs: 60_000 });
  return playwrightsOwn();
}

async function byDebian() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return null;
  process.stderr.write('Installing chromium with apt-get ...\n');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  await runCommand('apt-get', ['update'], { env, output: 'stderr', limitMs: 120_000 });
  const args = ['install', '-y', '--no-install-recommends', 'chromium'];
  await runCommand('apt-get', args, { env, output: 'stderr', limitMs: 600_000 });
  return ofTheSystem();
}

const STEPS = [
  playwrightsOwn,
  ofTheSystem,
  byPlaywrightsInstaller,
  () => packagedChromium(firstThatAnswers),
  byDebian,
];

/**
 * The path of a Chromium that runs. `SEDGELINE_CHROMIUM`, where set, is the only candidate: one that does not run is an
 * error and nothing else is tried. Else the first of: Playwright's own, the system's, what Playwright's installer
 * brings, the one inside an npm package (Linux on x64), Debian's (as root).
 */
export async function resolveBrowser(env = process.env, steps = STEPS, answers = answeredVersion) {
  const named = env.SEDGELINE_CHROMIUM;
  if (named !== undefined && named !== '') {
    if ((await answers(named)) !== null) return named;
    throw new ToolFailure(
      'BROWSER_BROKEN',
      `SEDGELINE_CHROMIUM is ${named}, which does not answer --version; set it to a Chromium that runs, or unset it`,
    );
  }
  for (const step of steps) {
    const found = await step();
    if (found !== null) return found;
  }
  throw new ToolFailure(
    'NO_BROWSER',
    'no Chromium found for the browser tests; do one of three: install chromium, Chrome or Edge on the system; ' +
      'or run "npx playwright install chromium"; or set SEDGELINE_CHROMIUM to the path of one',
  );
}

await runAsMain(import.meta.url, async () => {
  process.stdout.write(`${await resolveBrowser()}\n`);
});
