import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inRoot } from './repository.mjs';
import { runNode } from './run-command.mjs';
import { addCounts, allGood, countLine, countPlaywright, countVitest } from './test-count.mjs';

// Inside the repository, so that the runners are found from there.
let folder;
beforeAll(() => {
  mkdirSync(inRoot('.cache'), { recursive: true });
  folder = mkdtempSync(inRoot('.cache', 'count-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const env = Object.fromEntries(
  Object.entries(process.env).filter(([name]) => !/^(VITEST|TEST|NODE_ENV$)/.test(name)),
);
const three = (from) => `import { test } from '${from}';
test('passes', () => {});
test('fails', () => { throw new Error('on purpose'); });
test.${'skip'}('is left out', () => {});
`;

async function vitestOn(name, files) {
  const root = join(folder, name);
  mkdirSync(root);
  for (const [file, text] of Object.entries(files)) writeFileSync(join(root, file), text);
  writeFileSync(join(root, 'vitest.config.mjs'), "export default { test: { include: ['*.test.mjs'] } };\n");
  const report = join(root, 'report.json');
  const vitest = inRoot('node_modules', 'vitest', 'vitest.mjs');
  const args = ['run', '--root', root, '--reporter=json', `--outputFile.json=${report}`];
  const { code } = await runNode(vitest, args, { cwd: root, env });
  return countVitest(report, code);
}

describe("vitest's own report", () => {
  test('one passed, one failed, one skipped', async () => {
    expect(await vitestOn('three', { 'a.test.mjs': three('vitest') })).toEqual({
      passed: 1,
      failed: 1,
      skipped: 1,
    });
  });
  test('a file that does not load is one failed', async () => {
    const good = "import { test } from 'vitest';\ntest('passes', () => {});\n";
    const count = await vitestOn('broken', {
      'a.test.mjs': good,
      'b.test.mjs': "throw new Error('on purpose');\n",
    });
    expect(count).toEqual({ passed: 1, failed: 1, skipped: 0 });
  });
  test('an error outside every test is one failed', async () => {
    const text = `import { test } from 'vitest';
test('passes', async () => {
  setTimeout(() => { throw new Error('on purpose'); }, 0);
  await new Promise((done) => setTimeout(done, 50));
});
`;
    expect(await vitestOn('stray', { 'a.test.mjs': text })).toMatchObject({ passed: 1, failed: 1 });
  });
});

test("Playwright's own report: one passed, one failed, one skipped", async () => {
  const root = join(folder, 'playwright');
  mkdirSync(root);
  writeFileSync(join(root, 'a.e2e.mjs'), three('@playwright/test'));
  const config = "export default { testDir: '.', testMatch: '*.e2e.mjs', outputDir: './results' };\n";
  writeFileSync(join(root, 'playwright.config.mjs'), config);
  const report = join(root, 'report.json');
  const playwright = inRoot('node_modules', '@playwright', 'test', 'cli.js');
  const withReport = { ...env, PLAYWRIGHT_JSON_OUTPUT_FILE: report };
  const { code } = await runNode(playwright, ['test', '--reporter=json'], { cwd: root, env: withReport });
  expect(countPlaywright(report, code)).toEqual({ passed: 1, failed: 1, skipped: 1 });
});

describe('what cannot be trusted counts as failed', () => {
  test.each([countVitest, countPlaywright])('no report at all', (count) => {
    expect(count(join(folder, 'nowhere.json'), 0)).toMatchObject({
      passed: 0,
      failed: 1,
      crash: expect.any(String),
    });
  });
  test('half a report', () => {
    const file = join(folder, 'half.json');
    writeFileSync(file, '{"numPassedTests": 3');
    expect(countVitest(file, 0)).toMatchObject({ passed: 0, failed: 1 });
  });
  test('a good report of a runner that then crashed', () => {
    const file = join(folder, 'good.json');
    writeFileSync(file, '{"numPassedTests": 3, "numFailedTests": 0, "testResults": []}');
    expect(countVitest(file, null)).toMatchObject({ passed: 3, failed: 1 });
    expect(countVitest(file, 0)).toEqual({ passed: 3, failed: 0, skipped: 0 });
  });
  test('a test that passed at its second try', () => {
    const file = join(folder, 'flaky.json');
    writeFileSync(file, '{"stats":{"expected":2,"unexpected":0,"flaky":1,"skipped":0},"errors":[]}');
    expect(countPlaywright(file, 0)).toEqual({ passed: 2, failed: 1, skipped: 0 });
  });
});

describe('the closing line', () => {
  const unit = { passed: 7, failed: 0, skipped: 0 };
  test('adds up, and names skipped tests only where there are any', () => {
    expect(countLine(addCounts([unit, { passed: 2, failed: 1, skipped: 0 }]))).toBe('9 passed, 1 failed');
    expect(countLine(addCounts([unit, { passed: 2, failed: 0, skipped: 3 }]))).toBe(
      '9 passed, 0 failed, 3 skipped',
    );
  });
  test('is good only when something ran and nothing failed', () => {
    expect(allGood(unit)).toBe(true);
    expect(allGood({ ...unit, failed: 1 })).toBe(false);
    expect(allGood(addCounts([]))).toBe(false);
  });
});
