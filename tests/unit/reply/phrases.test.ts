import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { WORSE, WORSE_OLD_LATEX } from "../../../lib/trade/improvement";
import { wordsIn } from "../../../lib/words/words";
import { cappedWord, harmFigures, harmRange, improvementFigures, improvementPhrase, isTellingPrice, lifePhrase, lifeTold, likelihood, listed, moneyPhrase, roughMoneyPhrase, yearsEnd, yearsPhrase } from "../../../lib/reply/phrases";
import { range } from "./make";

const ENGLISH = wordsIn("en-GB");

describe("improvementFigures", () => {
  it.each([[0.3, 31.6, "0–32\u00a0%"], [0, 3, "0–3\u00a0%"], [4.6, 5.4, "5\u00a0%"]])("tells %d to %d in whole per cent, as the letter does", (low, high, said) => {
    expect(improvementFigures({ low, high })).toBe(said);
    expect(improvementPhrase(range(low, (low + high) / 2, high))).toContain(`(${said})`);
  });
});

describe("improvementPhrase", () => {
  it.each([
    [2, 22, "anything from nothing to a fifth (2–22\u00a0%)"], [25, 50, "between a quarter and half (25–50\u00a0%)"], [0, 3, "next to nothing (0–3\u00a0%)"], [0, 5, "next to nothing (0–5\u00a0%)"],
    [3, 92, "between very little and nine tenths (3–92\u00a0%)"], [4, 53, "between very little and half (4–53\u00a0%)"], [5, 53, "between a twentieth and half (5–53\u00a0%)"],
    [0, 6, "anything from nothing to a twentieth (0–6\u00a0%)"], [80, 98, "between four fifths and nearly all (80–98\u00a0%)"], [16, 16, "about a tenth (16\u00a0%)"], [20, 24, "about a fifth (20–24\u00a0%)"],
    [33.4, 66.6, "between a third and two thirds (33–67\u00a0%)"], [0, 100, "anything from nothing to nearly all (0–100\u00a0%)"],
  ])("%d to %d", (low, high, said) => expect(improvementPhrase(range(low, (low + high) / 2, high))).toBe(said));
  it("never says all of it, whatever the range", () => fc.assert(fc.property(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }), (a, b) => {
    expect(improvementPhrase(range(Math.min(a, b), 0, Math.max(a, b)))).toMatch(/^(next to nothing|about |anything from nothing to |between ).*\(\d+(–\d+)?\u00a0%\)$/);
  })));
});

describe("yearsPhrase", () => {
  it.each([
    [0.7, 3.5, "between 8\u00a0months and 3½\u00a0years"], [2, 4, "between 2 and 4\u00a0years"], [0.3, 0.9, "between 3 and 10\u00a0months"], [1, 1.1, "about 1\u00a0year"], [0, 2.5, "up to 2½\u00a0years"],
    [0, 0.02, "less than a month"], [4.9, 20.4, "between 4½ and 20\u00a0years"], [12, 38, "between 12 and 38\u00a0years"], [0.96, 1.5, "between 11\u00a0months and 1½\u00a0years"], [0.02, 1.9, "up to 1½\u00a0years"], [0.08, 0.09, "up to 1\u00a0month"], [0.09, 0.1, "about 1\u00a0month"], [0.7, 9.1, "between 8\u00a0months and 9\u00a0years"],
  ])("%d to %d years", (low, high, said) => expect(yearsPhrase(range(low, (low + high) / 2, high))).toBe(said));
  it("has the ends that a letter gives alone, so that the desk and the letter name one number", () => fc.assert(fc.property(fc.double({ min: 1, max: 40, noNaN: true }), fc.double({ min: 1.1, max: 60, noNaN: true }), (low, wider) => {
    const said = yearsPhrase(range(low, low + wider / 2, low + wider));
    const number = (end: string) => end.split("\u00a0")[0];
    expect(said).toMatch(/^between /);
    expect(said).toContain(`between ${number(yearsEnd(low))} and ${yearsEnd(low + wider)}`);
  })));
});

describe("lifePhrase", () => {
  it.each([
    [8, 39, "between 8 and 39\u00a0years"], [8, 40, "between 8\u00a0years and some decades"], [3.5, 50, "between 3½\u00a0years and some decades"],
    [45, 90, "between 45 and 90\u00a0years"], [0.02, 50, "up to 50\u00a0years"],
  ])("%d to %d years", (low, high, said) => expect(lifePhrase(range(low, (low + high) / 2, high))).toBe(said));
});

describe("lifeTold", () => {
  it.each([
    [1, 5.9, "both"], [1, 6, "at-most"], [0.02, 0.99, "both"], [0.02, 1, "at-most"], [1.9, 10, "both"], [1.6, 10, "at-most"], [1.6, 10.1, "nothing"],
    [1.9, 12, "nothing"], [2, 12, "at-least"], [8, 101, "at-least"], [0, 3, "at-most"],
  ] as const)("%d to %d years: %s", (low, high, told) => expect(lifeTold(range(low, (low + high) / 2, high))).toBe(told));
});

describe("yearsEnd", () => {
  it.each([[8.9, "8\u00a0years"], [8.1, "8\u00a0years"], [2.9, "2½\u00a0years"], [2.4, "2\u00a0years"], [0.71, "8\u00a0months"], [1.1, "1\u00a0year"], [0.99, "11\u00a0months"]] as const)(
    "%d years: %s", (years, said) => expect(yearsEnd(years)).toBe(said));
  it("promises at neither end more than was worked out, and falls short of it by less than a step: a month, half a year, or a year from five on", () => fc.assert(fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (years) => {
    const [, figure = "", half, unit] = /^(\d+)(½?)\u00a0(month|year)s?$/.exec(yearsEnd(years)) ?? [];
    const said = (Number(figure) + (half ? 0.5 : 0)) / (unit === "month" ? 12 : 1);
    const step = years < 1 ? 1 / 12 : years < 5 ? 0.5 : 1;
    expect([said <= years, years - said < step + 1e-9]).toEqual([true, true]);
  })));
});

describe("isTellingPrice", () => {
  it.each([[100, 399, true], [100, 400, false], [100, 401, false], [0, 0, false]])("%d to %d: %s", (low, high, telling) => expect(isTellingPrice(range(low, low, high))).toBe(telling));
});

describe("moneyPhrase", () => {
  it("rounds both ends to two figures and writes the currency's sign", () => {
    expect(moneyPhrase(range(123, 150, 187), "GBP", ENGLISH)).toBe("£120 to £190");
    expect(moneyPhrase(range(1234, 1500, 1876), "EUR", ENGLISH)).toBe("€1,200 to €1,900");
  });
  it("says one figure where both ends round to it", () => expect(moneyPhrase(range(98, 99, 99), "GBP", ENGLISH)).toBe("£98 to £99"));
  it("says nothing twice", () => expect(moneyPhrase(range(0, 0, 0), "USD", ENGLISH)).toBe("US$0"));
});

describe("roughMoneyPhrase", () => {
  it("rounds the lower end down and the upper one up, each in its own step", () => {
    expect([range(93, 130, 182), range(630, 900, 1190), range(280, 400, 540)].map((r) => roughMoneyPhrase(r, "GBP", ENGLISH))).toEqual(["£90 to £190", "£600 to £1,200", "£275 to £550"]);
  });
  it("says nothing twice", () => expect(roughMoneyPhrase(range(100, 100, 100), "GBP", ENGLISH)).toBe("£100"));
});

describe("likelihood", () => {
  // Bands of the published scale: 0–10, 0–33, 33–66, 66–100, 90–100 per cent.
  it.each([[0.05, "very unlikely"], [0.2, "unlikely"], [0.5, "about as likely as not"], [0.65, "about as likely as not"], [0.67, "likely"], [0.89, "likely"], [0.9, "very likely"], [1, "very likely"]])(
    "%d is %s", (p, said) => expect(likelihood(p)).toBe(said));
  it("never says certain", () => expect(cappedWord("virtually certain")).toBe("very likely"));
});

describe("listed", () => {
  it("joins as people write", () => {
    expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"], "or")]).toEqual(["", "a", "a and b", "a, b or c"]);
  });
});

describe("harmRange", () => {
  it.each([["viscose", ".15–.30", "15–30\u00a0%"], ["silk", ".08–.15", "8–15\u00a0%"]] as const)("tells the chance of %s by the range it was elicited as, %s", (fibre, elicited, said) => {
    expect(WORSE[fibre].source).toContain(elicited);
    expect(harmFigures(WORSE[fibre].gentle)).toBe(said);
  });
  it("tells that of old latex by its range, .1 to .25", () => expect(harmFigures(WORSE_OLD_LATEX.chance)).toBe("10–25\u00a0%"));
  it("holds the chance, is never one figure from .1 on, and neither none nor certainty", () => fc.assert(fc.property(fc.integer({ min: 10, max: 990 }), (thousandths) => {
    const chance = thousandths / 1000;
    const { low, high } = harmRange(chance);
    expect([low <= chance + 0.005, high >= chance - 0.005, low >= 0.01, high <= 0.99, chance < 0.1 || low < high]).toEqual([true, true, true, true, true]);
  })));
});

describe("a share in words", () => {
  /** What each word means, in per cent; for the two that are no fractions, the least that they may stand for. */
  const SHARE: Readonly<Record<string, number>> = {
    nothing: 0, "very little": 0, "a twentieth": 5, "a tenth": 10, "a sixth": 100 / 6, "a fifth": 20, "a quarter": 25, "three tenths": 30, "a third": 100 / 3, "two fifths": 40, half: 50,
    "three fifths": 60, "two thirds": 200 / 3, "seven tenths": 70, "three quarters": 75, "four fifths": 80, "nine tenths": 90, "nearly all": 97,
  };
  /** Figures are whole per cent: a third is 33 of them. */
  const ROUNDING = 0.34;
  const meant = (word: string) => SHARE[word] ?? NaN;
  const endsOf = (low: number, high: number) => {
    const said = improvementPhrase(range(low, (low + high) / 2, high));
    const [, first = "nothing", last = ""] = /^between (.+) and (.+) \(/.exec(said) ?? [null, undefined, /^(?:about|anything from nothing to) (.+) \(/.exec(said)?.[1]];
    return { first: meant(said.startsWith("about") ? last : first), last: meant(last) };
  };
  it("is never more than its figure, at either end, and at most ten points short of it", () => fc.assert(fc.property(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 6, max: 100 }), (a, b) => {
    const [low, high] = [Math.min(a, b), Math.max(a, b)];
    const { first, last } = endsOf(low, high);
    expect([first <= low + ROUNDING, last <= high + ROUNDING, high - last < 10, first <= last]).toEqual([true, true, true, true]);
  }), { numRuns: 5000 }));
  it.each([[1, 71, "seven tenths"], [1, 69, "two thirds"], [5, 53, "half"], [10, 89, "four fifths"], [16, 80, "a tenth"], [19, 80, "a sixth"], [29, 89, "a quarter"], [33, 90, "a third"], [32, 96, "nine tenths"], [66, 97, "three fifths"]])(
    "%d to %d: %s", (low, high, word) => expect(improvementPhrase(range(low, 0, high))).toMatch(new RegExp(`(?:between|and|to) ${word} (?:and|\\()`)));
});
