import { describe, expect, it } from "vitest";
import { strengthsOf } from "../../../lib/reply/facts";
import type { Assessment } from "../../../lib/triage/assessment";
import type { Strength } from "../../../lib/triage/finding";

const judged = (...findings: [Strength, number][]) => ({ findings: findings.map(([strength, decibans]) => ({ strength, decibans })) }) as Assessment;

describe("strengthsOf", () => {
  it("gives the kinds of evidence, strongest first, each once", () => {
    expect(strengthsOf(judged(["told", 2], ["bench", 14], ["label-typed", 6], ["told", -1]))).toEqual(["bench", "label-typed", "told"]);
  });
  it("leaves out a test or a report that says nothing of the pile, such as of a damp place or of the fringe", () => {
    expect(strengthsOf(judged(["told", 2], ["bench", 0], ["laboratory", 0]))).toEqual(["told"]);
    expect(strengthsOf(judged(["told", 2], ["bench", 0], ["bench", 3]))).toEqual(["bench", "told"]);
  });
  it("keeps words that weigh nothing: a letter says that it goes by them", () => expect(strengthsOf(judged(["told", 0]))).toEqual(["told"]));
});
