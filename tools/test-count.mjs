import { existsSync, readFileSync } from 'node:fs';

/** What a run of tests came to. `crash` says why a runner's own words cannot be trusted, where they cannot. */
const noTests = { passed: 0, failed: 0, skipped: 0 };

function readReport(file) {
  if (!existsSync(file)) return { crash: 'the runner ended without a report' };
  try {
    return { report: JSON.parse(readFileSync(file, 'utf8')) };
  } catch {
    return { crash: 'the report of the runner is not whole' };
  }
}

/**
 * One runner's count from its report and its exit status. What the runner counts no test for, and still fails by (a file
 * that does not load, an error outside every test, a crash before or after the report), counts as one failed.
 */
function countRun(file, code, countOf) {
  const { report, crash } = readReport(file);
  if (crash !== undefined) return { ...noTests, failed: 1, crash };
  const count = countOf(report);
  if (count.failed === 0 && code !== 0) {
    return { ...count, failed: 1, crash: `the runner ended with status ${code} though no test failed` };
  }
  return count;
}

/** The count in a report of vitest's JSON reporter. A file that failed with no failed test in it counts as one failed. */
export const countVitest = (file, code) =>
  countRun(file, code, (report) => {
    const brokenFiles = (report.testResults ?? []).filter(
      ({ status, assertionResults }) =>
        status === 'failed' && !(assertionResults ?? []).some((test) => test.status === 'failed'),
    );
    return {
      passed: report.numPassedTests ?? 0,
      failed: (report.numFailedTests ?? 0) + brokenFiles.length,
      skipped: (report.numPendingTests ?? 0) + (report.numTodoTests ?? 0),
    };
  });

/** The count in a report of Playwright's JSON reporter. A test that passed only at a second try counts as failed. */
export const countPlaywright = (file, code) =>
  countRun(file, code, ({ stats = {}, errors = [] }) => ({
    passed: stats.expected ?? 0,
    failed: (stats.unexpected ?? 0) + (stats.flaky ?? 0) + errors.length,
    skipped: stats.skipped ?? 0,
  }));

/** Several runs as one. */
export const addCounts = (counts) =>
  counts.reduce(
    (sum, { passed, failed, skipped }) => ({
      passed: sum.passed + passed,
      failed: sum.failed + failed,
      skipped: sum.skipped + skipped,
    }),
    noTests,
  );

/** The closing line: `N passed, N failed`, and how many were skipped where any were. */
export const countLine = ({ passed, failed, skipped }) =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;

/** Whether the whole run may be called good: something ran, and nothing failed. */
export const allGood = ({ passed, failed }) => failed === 0 && passed > 0;
