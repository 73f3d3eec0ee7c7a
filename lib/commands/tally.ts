/** How many checks of a kind passed, failed and were left out. */
export interface Tally {
  passed: number;
  failed: number;
  skipped: number;
  /** Each failed check with the beginning of what it says, so that the end of a long run tells what to look at. */
  failures?: readonly string[];
}

interface VitestReport {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numTodoTests: number;
  testResults: { name: string; status: string; message?: string; assertionResults: { status: string; fullName: string; failureMessages?: string[] }[] }[];
}
interface PlaywrightSuite { file: string; suites?: PlaywrightSuite[]; specs?: { title: string; tests: { status: string; results: { error?: { message?: string } }[] }[] }[] }
interface PlaywrightReport { stats: { expected: number; unexpected: number; flaky: number; skipped: number }; errors: { message?: string }[]; suites: PlaywrightSuite[] }

/** Characters of what a failed check says: a property's counterexample and seed stand at the beginning. */
const SAID = 1_200;
const failure = (where: string, said: string | undefined): string => {
  const plain = (said ?? "").replace(/\u001b\[[0-9;]*m/g, "").trim();
  return `${where}\n  ${plain.slice(0, SAID).replaceAll("\n", "\n  ")}`;
};

/** A file that could not even be loaded has no test in it that failed, and is a failure all the same. */
export function tallyOfVitest(report: VitestReport): Tally {
  const broken = report.testResults.filter((f) => f.status === "failed" && !f.assertionResults.some((t) => t.status === "failed")).length;
  const failures = report.testResults.filter((f) => f.status === "failed").flatMap((f) => {
    const tests = f.assertionResults.filter((t) => t.status === "failed");
    return tests.length === 0 ? [failure(f.name, f.message)] : tests.map((t) => failure(`${f.name} › ${t.fullName}`, t.failureMessages?.[0]));
  });
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken, skipped: report.numPendingTests + report.numTodoTests, failures };
}

/** A test that passed only when repeated did not pass. */
export function tallyOfPlaywright({ stats, errors, suites }: PlaywrightReport): Tally {
  const failures = [...suites.flatMap(failuresOf), ...errors.map((e) => failure("outside of any test", e.message))];
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length, skipped: stats.skipped, failures };
}

const failuresOf = (suite: PlaywrightSuite): string[] => [
  ...(suite.specs ?? []).flatMap((spec) => spec.tests.filter((t) => t.status === "unexpected" || t.status === "flaky")
    .map((t) => failure(`${suite.file} › ${spec.title}`, t.results.find((r) => r.error)?.error?.message))),
  ...(suite.suites ?? []).flatMap(failuresOf),
];

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
