import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chancePercent, chanceRange, countInWords, decibans, oddsInWords, percent, percentRange, sentenceCase } from "../../../lib/ui/figures";

const NBSP = "\u00a0";

describe("countInWords", () => {
  it.each([[0, "none"], [1, "one"], [11, "eleven"], [20, "twenty"], [21, "21"], [300, "300"]])("tells %i as %s", (n, words) => {
    expect(countInWords(n)).toBe(words);
  });
  it.each([-1, 1.5, Number.NaN])("throws on %d, which is no count", (n) => {
    expect(() => countInWords(n)).toThrow(/whole number/);
  });
});

describe("sentenceCase", () => {
  it("makes the first letter large and leaves the rest", () => {
    expect(sentenceCase("wool and Silk")).toBe("Wool and Silk");
    expect(sentenceCase("")).toBe("");
    expect(sentenceCase("pH of a spot")).toBe("pH of a spot");
  });
});

describe("percent", () => {
  it.each([
    [0, `0${NBSP}%`], [0.0049, `under 1${NBSP}%`], [0.005, `1${NBSP}%`], [0.1249, `12${NBSP}%`], [0.99, `99${NBSP}%`], [0.995, `over 99${NBSP}%`],
    [0.9951, `over 99${NBSP}%`], [1, `100${NBSP}%`],
  ])("tells %d as %s", (p, words) => {
    expect(percent(p)).toBe(words);
  });
  it("never tells a chance between the ends as none or as all", () => {
    fc.assert(fc.property(fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }), (p) => {
      expect(percent(p)).not.toBe(`0${NBSP}%`);
      expect(percent(p)).not.toBe(`100${NBSP}%`);
    }));
  });
});

describe("a chance", () => {
  it("is never told as 100 %, as a share may be: below, at", () => {
    expect([chancePercent(0.994), chancePercent(1), percent(1)]).toEqual([`99${NBSP}%`, `over 99${NBSP}%`, `100${NBSP}%`]);
    expect([chanceRange(0.96, 1), chanceRange(1, 1)]).toEqual([`96 to over 99${NBSP}%`, `over 99${NBSP}%`]);
  });
});

describe("percentRange", () => {
  it("joins two ends, and tells one figure only where both round to the same", () => {
    expect(percentRange(0.12, 0.47)).toBe(`12–47${NBSP}%`);
    expect(percentRange(0.121, 0.124)).toBe(`12${NBSP}%`);
  });
  it("keeps what it does not know at either end", () => {
    expect(percentRange(0.001, 0.03)).toBe(`under 1 to 3${NBSP}%`);
    expect(percentRange(0.96, 0.999)).toBe(`96 to over 99${NBSP}%`);
  });
});

describe("decibans", () => {
  it.each([[14.23, "+14.2"], [-0.5, "−0.5"], [0.04, "0"], [-0.04, "0"], [0.05, "+0.1"]])("tells %d as %s", (db, words) => {
    expect(decibans(db)).toBe(words);
  });
});

describe("oddsInWords", () => {
  // 10 decibans are ten to one by definition; 3.0103 are two to one.
  it.each([[0, "about even"], [3.0103, "about 2 to 1"], [10, "about 10 to 1"], [20, "about 100 to 1"], [-10, "about 1 to 10"], [-3.0103, "about 1 to 2"]])("tells %d decibans as %s", (db, words) => {
    expect(oddsInWords(db)).toBe(words);
  });
});
