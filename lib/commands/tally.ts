/** How many checks of a kind passed, failed and were left out. */
export interface Tally { passed: number; failed: number; skipped: number }

interface VitestReport {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numTodoTests: number;
  testResults: { status: string; assertionResults: { status: string }[] }[];
}
interface PlaywrightReport { stats: { expected: number; unexpected: number; flaky: number; skipped: number }; errors: unknown[] }

/** A file that could not even be loaded has no test in it that failed, and is a failure all the same. */
export function tallyOfVitest(report: VitestReport): Tally {
  const broken = report.testResults.filter((f) => f.status === "failed" && !f.assertionResults.some((t) => t.status === "failed")).length;
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken, skipped: report.numPendingTests + report.numTodoTests };
}

/** A test that passed only when repeated did not pass. */
export function tallyOfPlaywright({ stats, errors }: PlaywrightReport): Tally {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length, skipped: stats.skipped };
}

/**
 * What a step counts for, from its report (null: none was written) and its exit code. A program that ended badly
 * without a failed check, or without any check at all, is one failure.
 */
export function tallyOf(counted: Tally | null, exitCode: number): Tally {
  if (!counted) return { passed: 0, failed: 1, skipped: 0 };
  const nothingRan = counted.passed + counted.failed === 0;
  return counted.failed === 0 && (exitCode !== 0 || nothingRan) ? { ...counted, failed: 1 } : counted;
}

export const sum = (tallies: readonly Tally[]): Tally =>
  tallies.reduce((a, b) => ({ passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped }), { passed: 0, failed: 0, skipped: 0 });

/** The last line of `npm test`. */
export const summaryLine = ({ passed, failed }: Tally): string => `${passed} passed, ${failed} failed`;
