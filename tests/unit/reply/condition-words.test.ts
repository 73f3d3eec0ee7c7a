import { describe, expect, it } from "vitest";
import { NUMBER_FACTS, WORD_FACTS, type Condition, type NumberFact, type WordFact } from "../../../lib/reply/condition";
import { conditionLines, FACT_VALUES, inPercent, LARGEST, neverHolds } from "../../../lib/reply/condition-words";
import { PARAGRAPHS } from "../../../lib/reply/paragraphs";

describe("FACT_VALUES", () => {
  it("has every value that a shipped condition asks for, and words for it", () => {
    for (const { id, when } of PARAGRAPHS)
      for (const [fact, values] of [...Object.entries(when.is ?? {}), ...Object.entries(when.not ?? {})] as [WordFact, string[]][])
        for (const value of values) expect(FACT_VALUES[fact].map((v) => v.id), `${id}: ${fact}`).toContain(value);
  });
  it("has at least two values of every fact, each with words of its own", () => {
    for (const fact of Object.keys(WORD_FACTS) as WordFact[]) {
      const says = FACT_VALUES[fact].map((v) => v.says);
      expect(says.length, fact).toBeGreaterThanOrEqual(2);
      expect(new Set(says).size, fact).toBe(says.length);
    }
  });
  it("knows how large every number can be", () => expect(Object.keys(LARGEST).sort()).toEqual(Object.keys(NUMBER_FACTS).sort()));
});

describe("conditionLines", () => {
  it("says every part of a condition in a line, and nothing of one that always holds", () => {
    expect(conditionLines({})).toEqual([]);
    expect(conditionLines({ is: { leading: ["silk", "wool"] }, not: { who: ["trade"] }, atLeast: { beyondRepair: 0.33 }, below: { improvementHigh: 25 } })).toEqual([
      "The most probable fibre: silk or wool", "Who writes: not another cleaner", "Chance that it is beyond economic repair: at least 33 per cent", "Upper end of the improvement: below 25 per cent",
    ]);
  });
});

describe("neverHolds", () => {
  const never = (when: Condition) => neverHolds(when) !== null;
  it("lets every shipped condition through", () => { for (const { id, when } of PARAGRAPHS) expect(neverHolds(when), id).toBeNull(); });
  it("finds nothing chosen", () => expect(never({ is: { leading: [] } })).toBe(true));
  it("finds what must be and must not be, where nothing else is left", () => {
    expect(never({ is: { leading: ["silk"] }, not: { leading: ["silk", "wool"] } })).toBe(true);
    expect(never({ is: { leading: ["silk", "viscose"] }, not: { leading: ["silk"] } })).toBe(false);
  });
  it("finds bounds that cross or touch, and not those that leave room", () => {
    const between = (low: number, high: number) => never({ atLeast: { worse: low }, below: { worse: high } });
    expect([between(0.5, 0.4), between(0.5, 0.5), between(0.5, 0.6)]).toEqual([true, true, false]);
  });
  it("finds a number that would have to be below nothing", () => expect([never({ below: { worse: 0 } }), never({ below: { worse: 0.01 } })]).toEqual([true, false]));
});

describe("inPercent", () => {
  it.each([["worse", 0.33, 33], ["improvementHigh", 25, 25]] as const)("%s of %d is %d per cent", (fact, value, percent) => expect(inPercent(fact satisfies NumberFact, value)).toBe(percent));
});
