import { describe, expect, it } from "vitest";
import { sum, summaryLine, tallyOf, tallyOfPlaywright, tallyOfVitest } from "../../../lib/commands/tally";

const tally = (passed: number, failed: number, skipped = 0) => ({ passed, failed, skipped });

describe("tallyOfVitest", () => {
  const file = (status: string, ...tests: string[]) => ({ status, assertionResults: tests.map((t) => ({ status: t })) });

  it("counts the tests, and a file that could not be loaded as a failure", () => {
    const report = { numPassedTests: 3, numFailedTests: 1, numPendingTests: 2, numTodoTests: 1, testResults: [file("passed", "passed"), file("failed", "failed", "passed")] };
    expect(tallyOfVitest(report)).toEqual(tally(3, 1, 3));
    expect(tallyOfVitest({ ...report, testResults: [...report.testResults, file("failed")] })).toEqual(tally(3, 2, 3));
  });
});

describe("tallyOfPlaywright", () => {
  it("counts a flaky test and an error outside of any test as failures", () => {
    expect(tallyOfPlaywright({ stats: { expected: 5, unexpected: 1, flaky: 2, skipped: 1 }, errors: [{}] })).toEqual(tally(5, 4, 1));
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
