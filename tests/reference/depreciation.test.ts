import { describe, expect, it } from "vitest";
import { USEFUL_LIVES } from "../../lib/trade/depreciation";
import { shareLeft } from "../../lib/triage/value-today";

describe("value today against published examples", () => {
  it("genuine Oriental of 10 years, replacement 2,000 at 4 % a year: 1,200 (National Joint Council of the Public Service of Canada)", () => {
    expect(2_000 * shareLeft(10, 25)).toBeCloseTo(1_200, 9);
  });
  it("the same rug as a carpet of 15 years: 600 by its rounded 7 % a year, within 70 by the years themselves", () => {
    expect(Math.abs(2_000 * shareLeft(10, 15) - 600)).toBeLessThan(70);
  });
  it("a carpet of 10 years burnt in its seventh: the tenant pays 30 % of new (Swiss parity table, wehrlipartner.ch)", () => expect(shareLeft(7, 10)).toBeCloseTo(0.3, 12));
  it("a carpet of 10 years loses 20 % of its new value every two years (German case law, wohnung.net)", () => {
    for (const years of [2, 4, 6, 8, 10]) expect(shareLeft(years, 10)).toBeCloseTo(1 - (0.2 * years) / 2, 12);
  });
  it("five-year life span, two years old: up to 60 % of replacement (urban.co.uk)", () => expect(shareLeft(2, 5)).toBeCloseTo(0.6, 12));
  it("a shirt of 11 months and two years' life, 9.75 new: 5.85 by the table of NAVEDTRA 10287F (60 %), within a tenth by a straight line", () => {
    expect(Math.abs((9.75 * shareLeft(11 / 12, 2)) / 5.85 - 1)).toBeLessThan(0.1);
  });
  it("is never under nothing nor over its price new", () => expect([shareLeft(40, 25), shareLeft(0, 5), shareLeft(-1, 5)]).toEqual([0, 1, 1]));
  it("no useful life is outside the published 4 to 25 years, and a hand-knotted rug outlives every other class", () => {
    const longest = (of: string) => Math.max(...USEFUL_LIVES.filter((u) => u.of === of).map((u) => u.years));
    for (const u of USEFUL_LIVES) expect(u.years >= 4 && u.years <= 25, u.source).toBe(true);
    for (const u of USEFUL_LIVES) if (u.of !== "hand-knotted") expect(longest("hand-knotted")).toBeGreaterThan(u.years);
  });
});
