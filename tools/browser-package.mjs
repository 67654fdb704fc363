import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inRoot } from './repository.mjs';
import { runCommand, runNpm } from './run-command.mjs';

const PACKAGE = '@sparticuz/chromium';
const VERSION = '147.0.0';

/** Prints as JSON where the package unpacked its browser, and the variables that the browser needs to run. */
const UNPACK = `
const module = require('${PACKAGE}');
(module.default ?? module).executablePath().then((path) => {
  const { LD_LIBRARY_PATH, FONTCONFIG_PATH } = process.env;
  console.log(JSON.stringify({ path, LD_LIBRARY_PATH, FONTCONFIG_PATH }));
});`;

const quoted = (text) => `'${text.replaceAll("'", "'\\''")}'`;

/** A shell script that starts a browser with its own libraries and fonts; `exec`, so that killing it kills the browser. */
export function launcherScript({ path, LD_LIBRARY_PATH, FONTCONFIG_PATH }) {
  const lines = ['#!/bin/sh'];
  if (LD_LIBRARY_PATH) lines.push(`export LD_LIBRARY_PATH=${quoted(LD_LIBRARY_PATH)}`);
  if (FONTCONFIG_PATH) lines.push(`export FONTCONFIG_PATH=${quoted(FONTCONFIG_PATH)}`);
  return `${[...lines, `exec ${quoted(path)} "$@"`].join('\n')}\n`;
}

/**
 * A configuration of fontconfig that knows the fonts lying beside it. The package's own looks for them in folders of a
 * cloud function and in the temporary folder, and a browser that has no font at all crashes at its first word.
 */
export function fontsConfiguration(folder) {
  const inXml = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${inXml(join(folder, 'fonts'))}</dir>
  <cachedir>${inXml(join(folder, 'cache'))}</cachedir>
</fontconfig>
`;
}

/**
 * A Chromium that comes inside an npm package, fetched on demand into `.cache/` (66 MB; no root needed). Linux on x64
 * only. `null` where it cannot be had. Three things it wants, all found the hard way: it unpacks the libraries of NSS
 * only where it believes itself on a cloud function's Node 20, it unpacks into the temporary folder, which two users of
 * one machine would otherwise share, and it must then be told where its fonts are.
 */
export async function packagedChromium(firstThatAnswers) {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null;
  const folder = inRoot('.cache', `chromium-${VERSION}`);
  const launcher = join(folder, 'chromium');
  const ready = await firstThatAnswers([launcher]);
  if (ready !== null) return ready;
  process.stderr.write(`Fetching ${PACKAGE} ${VERSION} for the browser tests ...\n`);
  const temporary = join(folder, 'unpacked');
  mkdirSync(temporary, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  const args = ['install', '--no-save', '--no-audit', '--no-fund', '--workspaces=false', '--prefix', folder];
  const fetched = await runNpm([...args, `${PACKAGE}@${VERSION}`], { cwd: folder, limitMs: 300_000 });
  if (fetched.code !== 0) {
    process.stderr.write(`It cannot be fetched: ${fetched.text.trim().split('\n')[0] ?? ''}\n`);
    return null;
  }
  const env = { ...process.env, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x', TMPDIR: temporary };
  const unpacked = await runCommand(process.execPath, ['-e', UNPACK], { cwd: folder, env, limitMs: 60_000 });
  const answer = unpacked.code === 0 ? unpacked.text.trim().split('\n').at(-1) : undefined;
  if (answer === undefined) {
    process.stderr.write(`It does not unpack: ${unpacked.text.trim().split('\n')[0] ?? ''}\n`);
    return null;
  }
  const parts = JSON.parse(answer);
  if (parts.FONTCONFIG_PATH) {
    writeFileSync(join(parts.FONTCONFIG_PATH, 'fonts.conf'), fontsConfiguration(parts.FONTCONFIG_PATH));
  }
  writeFileSync(launcher, launcherScript(parts));
  chmodSync(launcher, 0o755);
  return firstThatAnswers([launcher]);
}
