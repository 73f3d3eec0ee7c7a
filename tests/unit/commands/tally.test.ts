import { describe, expect, it } from "vitest";
import { sum, summaryLine, tallyOf, tallyOfPlaywright, tallyOfVitest } from "../../../lib/commands/tally";

const tally = (passed: number, failed: number, skipped = 0) => ({ passed, failed, skipped });

describe("tallyOfVitest", () => {
  const file = (status: string, ...tests: string[]) => ({
    name: "tests/a.test.ts", status, message: "Cannot find it", assertionResults: tests.map((t, n) => ({ status: t, fullName: `adds ${n}`, failureMessages: t === "failed" ? ["\u001b[31mexpected 1\nto be 2"] : [] })),
  });

  it("counts the tests, and a file that could not be loaded as a failure", () => {
    const report = { numPassedTests: 3, numFailedTests: 1, numPendingTests: 2, numTodoTests: 1, testResults: [file("passed", "passed"), file("failed", "failed", "passed")] };
    expect(tallyOfVitest(report)).toMatchObject(tally(3, 1, 3));
    expect(tallyOfVitest({ ...report, testResults: [...report.testResults, file("failed")] })).toMatchObject(tally(3, 2, 3));
  });
  it("names each failure with what it says, without the colours of a terminal", () => {
    const report = { numPassedTests: 1, numFailedTests: 1, numPendingTests: 0, numTodoTests: 0, testResults: [file("passed", "passed"), file("failed", "passed", "failed"), file("failed")] };
    expect(tallyOfVitest(report).failures).toEqual(["tests/a.test.ts › adds 1\n  expected 1\n  to be 2", "tests/a.test.ts\n  Cannot find it"]);
  });
});

describe("tallyOfPlaywright", () => {
  it("counts a flaky test and an error outside of any test as failures", () => {
    expect(tallyOfPlaywright({ stats: { expected: 5, unexpected: 1, flaky: 2, skipped: 1 }, errors: [{}], suites: [] })).toMatchObject(tally(5, 4, 1));
  });
  it("names the failures of every suite, however deep", () => {
    const spec = (title: string, status: string) => ({ title, tests: [{ status, results: [{}, { error: { message: "not seen" } }] }] });
    const suites = [{ file: "a.spec.ts", specs: [spec("is well", "expected")], suites: [{ file: "a.spec.ts", specs: [spec("is ill", "unexpected")] }] }];
    expect(tallyOfPlaywright({ stats: { expected: 1, unexpected: 1, flaky: 0, skipped: 0 }, errors: [{ message: "no browser" }], suites }).failures).toEqual(["a.spec.ts › is ill\n  not seen", "outside of any test\n  no browser"]);
  });
});

describe("tallyOf", () => {
  it("is what was counted, where the exit code agrees", () => {
    expect(tallyOf(tally(4, 0), 0)).toEqual(tally(4, 0));
    expect(tallyOf(tally(4, 2), 1)).toEqual(tally(4, 2));
  });

  it("is a failure where no report was written, nothing ran, or the program ended badly for no counted reason", () => {
    expect(tallyOf(null, 0)).toEqual(tally(0, 1));
    expect(tallyOf(tally(0, 0, 3), 0)).toEqual(tally(0, 1, 3));
    expect(tallyOf(tally(4, 0), 1)).toEqual(tally(4, 1));
  });
});

describe("summaryLine", () => {
  it("is the sum in the words that .ci/run reads", () => {
    expect(summaryLine(sum([tally(1, 0), tally(20, 2, 1), tally(0, 1)]))).toBe("21 passed, 3 failed");
    expect(summaryLine(sum([]))).toBe("0 passed, 0 failed");
  });
});
