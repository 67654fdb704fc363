import { execFileSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { answeredVersion, firstThatAnswers, resolveBrowser, systemCandidates } from './browser.mjs';
import { fontsConfiguration, launcherScript } from './browser-package.mjs';

const folder = mkdtempSync(join(tmpdir(), 'sedgeline-browser-'));
afterAll(() => rmSync(folder, { recursive: true }));
function program(name, script) {
  const path = join(folder, name);
  writeFileSync(path, `#!/bin/sh\n${script}\n`);
  chmodSync(path, 0o755);
  return path;
}
const never = async () => {
  throw new Error('this step must not be tried');
};
const nothing = async () => null;

describe('a candidate', () => {
  test.each([
    ['Chromium 156.0.1.2 built on Debian', '156.0.1.2'],
    ['Google Chrome 147.0.7000.1 ', '147.0.7000.1'],
    ['Microsoft Edge 150.0.1', '150.0.1'],
  ])('that answers "%s" is taken', async (words, version) => {
    expect(await answeredVersion(program('good', `echo "${words}"`))).toBe(version);
  });
  test('that is not there, fails or says something else is not', async () => {
    expect(await answeredVersion(join(folder, 'none'))).toBeNull();
    expect(await answeredVersion(program('fails', 'echo Chromium 156.0; exit 127'))).toBeNull();
    expect(await answeredVersion(program('other', 'echo "a fox 1.0"'))).toBeNull();
  });
  test('after one that does not run is still found', async () => {
    const good = program('second', 'echo Chromium 1.0');
    expect(await firstThatAnswers([join(folder, 'none'), program('bad', 'exit 1'), good])).toBe(good);
  });
});

describe('the order', () => {
  test('SEDGELINE_CHROMIUM goes before all', async () => {
    const path = program('named', 'echo Chromium 2.0');
    expect(await resolveBrowser({ SEDGELINE_CHROMIUM: path }, [never])).toBe(path);
  });
  test('SEDGELINE_CHROMIUM that does not run is an error, and nothing else is tried', async () => {
    const env = { SEDGELINE_CHROMIUM: join(folder, 'none') };
    await expect(resolveBrowser(env, [never])).rejects.toMatchObject({ code: 'BROWSER_BROKEN' });
  });
  test('the first step that finds one ends the search', async () => {
    expect(await resolveBrowser({}, [nothing, async () => '/found', never])).toBe('/found');
  });
  test('where none does, the three ways are named', async () => {
    const failure = resolveBrowser({}, [nothing, nothing]);
    await expect(failure).rejects.toMatchObject({ code: 'NO_BROWSER' });
    await expect(failure).rejects.toThrow(/on the system.*playwright install chromium.*SEDGELINE_CHROMIUM/);
  });
});

test('the system is searched along the path, and among the apps of a Mac', () => {
  expect(systemCandidates('linux', '/a:/b')).toEqual(
    expect.arrayContaining(['/a/chromium', '/b/google-chrome']),
  );
  expect(systemCandidates('linux', undefined)).toEqual([]);
  expect(systemCandidates('darwin', '').every((path) => path.startsWith('/Applications/'))).toBe(true);
});

test("the packaged browser's launcher hands on its libraries, and every argument as it is", () => {
  const inner = program("it's inner", 'printf "%s|" "$LD_LIBRARY_PATH" "$@"');
  const launcher = join(folder, 'launcher');
  writeFileSync(launcher, launcherScript({ path: inner, LD_LIBRARY_PATH: '/l i b' }));
  chmodSync(launcher, 0o755);
  expect(execFileSync(launcher, ['a b', '--c=$d']).toString()).toBe('/l i b|a b|--c=$d|');
});

test('the packaged browser is told of the fonts that lie beside its configuration', () => {
  expect(fontsConfiguration('/cache of A&B')).toContain('<dir>/cache of A&amp;B/fonts</dir>');
});
