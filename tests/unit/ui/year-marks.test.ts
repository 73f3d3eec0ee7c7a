import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wordsIn } from "../../../lib/words/words";
import { markLabel, yearMarks } from "../../../lib/ui/year-marks";

describe("yearMarks", () => {
  it("holds the highest year with three to seven even marks, from now on", () => {
    fc.assert(fc.property(fc.double({ min: 0.01, max: 400, noNaN: true }), (highest) => {
      const { end, marks } = yearMarks(highest);
      expect(end).toBeGreaterThanOrEqual(highest);
      expect([marks[0], marks.at(-1)]).toEqual([0, end]);
      expect(marks.length).toBeGreaterThanOrEqual(3);
      expect(marks.length).toBeLessThanOrEqual(7);
    }));
  });
  it("steps by one year where four are shown, by two where nine are", () => {
    expect(yearMarks(4).marks).toEqual([0, 1, 2, 3, 4, 5]);
    expect(yearMarks(8.2).marks).toEqual([0, 2, 4, 6, 8, 10]);
  });
});

describe("markLabel", () => {
  it.each([[0, false, "now"], [0.5, false, "½"], [1.5, false, "1½"], [8, false, "8"], [10, true, "10 years"], [1, true, "1 year"], [2.5, true, "2½ years"]] as const)(
    "writes %d (last: %j) as %j", (years, isLast, words) => expect(markLabel(years, isLast, wordsIn("en-GB"))).toBe(words));
});
