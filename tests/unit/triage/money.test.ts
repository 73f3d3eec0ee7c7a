import { describe, expect, it } from "vitest";
import type { Finding } from "../../../lib/triage/finding";
import { defaultSettings } from "../../../lib/triage/assess";
import { cleaningCost, cutDownCost, judgeMoney } from "../../../lib/triage/money";
import { belief, told } from "./told";

const prices = { cleanPerM2: 30, cleanMinimum: 60, bindingPerM: 20 };
const SIZE = { size: { widthCm: 200, lengthCm: 300, m2: 6 } };
const judge = (answers: Record<string, Finding["value"]>, fibres = belief({ wool: 1 }), currency = "GBP") =>
  judgeMoney(told(answers), fibres, { settings: defaultSettings({ prices, currency }), year: 2024 });

describe("cleaningCost", () => {
  it("is never under the minimum: below, at, above two square metres", () => {
    const low = (m2: number) => cleaningCost({ widthCm: 100, lengthCm: m2 * 100 }, prices).low;
    expect([low(1.9), low(2), low(2.1)].map((x) => Math.round(x * 10) / 10)).toEqual([60, 60, 63]);
  });
});

describe("cutDownCost", () => {
  it("is one end, an end and a side, or all round, with 2 cm of turn each", () => {
    const c = cutDownCost({ widthCm: 170, lengthCm: 240 }, prices, null);
    expect(c.low).toBeCloseTo(1.72 * 20, 9);
    expect(c.median).toBeCloseTo((1.72 + 2.42) * 20, 9);
    expect(c.high).toBeCloseTo(2 * (1.72 + 2.42) * 20, 9);
  });
  it("is the binding drawn on the plan, where the place of the damage is known", () => {
    expect(cutDownCost({ widthCm: 170, lengthCm: 240 }, prices, 3.5)).toEqual({ low: 70, median: 70, high: 70 });
    expect(judge({ ...SIZE, "cut-down": { bindingM: 2.5 } }).money?.cutDown?.median).toBeCloseTo(50, 9);
    expect(judge({ ...SIZE, "cut-down": { bindingM: -1 } }).money?.cutDown).toEqual(judge(SIZE).money?.cutDown);
  });
});

describe("judgeMoney", () => {
  it("never holds a clean that costs nothing for more than a rug is worth, and one of a penny for it hardly ever", () => {
    const at = (price: number) => judgeMoney(told({ ...SIZE, back: "machine", age: "10-25" }), belief({ polypropylene: 1 }), { settings: defaultSettings({ prices: { ...prices, cleanPerM2: price, cleanMinimum: price }, currency: "GBP" }), year: 2024 });
    expect(at(0)).toMatchObject({ notWorthIt: 0, money: { clean: null } });
    expect(at(0.01).notWorthIt).toBeLessThan(0.001);
    expect(at(500).notWorthIt).toBeGreaterThan(0.9);
  });
  it("tells no cost where its price was kept as 0, and any above that", () => {
    const at = (price: number) => judgeMoney(told(SIZE), belief({ wool: 1 }), { settings: defaultSettings({ prices: { cleanPerM2: price, cleanMinimum: 0, bindingPerM: price }, currency: "GBP" }), year: 2024 }).money;
    expect(at(0)).toMatchObject({ clean: null, cutDown: null });
    expect([at(0.01)?.clean?.high, at(0.01)?.cutDown?.high].every((high) => high !== undefined && high > 0)).toBe(true);
  });
  it("says why there is no price without a size", () => expect(judge({})).toMatchObject({ money: null, why: expect.stringContaining("size") }));
  it("takes a replacement's price around what was paid in a shop", () => {
    const paid = { "price-per-m2": { amount: 200, currency: "GBP", year: 2024, place: "specialist", priceTotal: 1200 } };
    const median = judge({ ...SIZE, ...paid }).money?.replace?.median ?? NaN;
    expect(median).toBeGreaterThan(1200);
    expect(median).toBeLessThan(1200 * 1.1);
  });
  it("does not go by a bazaar's price: the piles decide", () => {
    const paid = (place: string) => ({ "price-per-m2": { amount: 5000, currency: "GBP", year: 2024, place, priceTotal: 30000 } });
    expect(judge({ ...SIZE, ...paid("bazaar") }).money?.replace?.median).toBe(judge(SIZE).money?.replace?.median);
    expect(judge({ ...SIZE, ...paid("specialist") }).money?.replace?.median).toBeGreaterThan(20_000);
  });
  it("a hand-knotted wool new: the median of its price row, 450 pounds of 2024 per m²", () => {
    const pounds = judge({ ...SIZE, back: "knots" }).money?.replace?.median ?? NaN;
    expect(pounds / 6 / 450).toBeGreaterThan(0.99);
    expect(pounds / 6 / 450).toBeLessThan(1.1);
  });
  const PAID = { "price-per-m2": { amount: 200, currency: "GBP", year: 2024, place: "specialist", priceTotal: 1200 } };
  const valueShare = (answers: Record<string, Finding["value"]>, fibres = belief({ wool: 1 })) => {
    const m = judge({ ...SIZE, ...PAID, ...answers }, fibres).money;
    return (m?.valueToday?.median ?? NaN) / (m?.replace?.median ?? NaN);
  };
  it("values a new rug at its replacement, and less with every answer of age", () => {
    expect(valueShare({ boughtWhere: "specialist", boughtYear: 2024 })).toBeCloseTo(1, 3);
    const ages = ["under-2", "2-5", "5-10", "10-25"].map((age) => valueShare({ age, back: "knots" }));
    for (let i = 1; i < ages.length; i += 1) expect(ages[i]).toBeLessThan(ages[i - 1] as number);
  });
  it("lets a viscose lose its value faster than a knotted wool, and heavy wear hasten it", () => {
    const of = (f: "viscose" | "wool", changes: string[] = ["none"]) => valueShare({ boughtWhere: "specialist", boughtYear: 2021, back: "knots", changes }, belief({ [f]: 1 }));
    expect(of("viscose")).toBeLessThan(of("wool"));
    expect(of("wool", ["flat"])).toBeLessThan(of("wool"));
  });
  it("leaves a hand-knotted rug past the published tables to a valuer", () => {
    const { money, why } = judge({ ...SIZE, age: "25-80", back: "knots" });
    expect(money).toMatchObject({ valueToday: null });
    expect(money?.replace).not.toBeNull();
    expect(why).toContain("valuer");
  });
  it("says why nothing is stated in a currency it has no prices for", () => expect(judge(SIZE, belief({ wool: 1 }), "SEK")).toMatchObject({ money: { replace: null, valueToday: null }, why: expect.stringContaining("euros") }));
  it("gives an antique neither value nor replacement nor a cut", () => {
    const { money, why } = judge({ ...SIZE, age: "antique" });
    expect(money).toMatchObject({ replace: null, valueToday: null, cutDown: null });
    expect(money?.clean).not.toBeNull();
    expect(why).toContain("valuer");
  });
});

describe("notWorthIt", () => {
  const chance = (answers: Record<string, Finding["value"]>, fibres = belief({ wool: 1 })) => judge({ boughtWhere: "furniture", boughtYear: 2021, ...answers }, fibres).notWorthIt;
  const paid = (amount: number) => chance({ ...SIZE, "price-per-m2": { amount, currency: "GBP", year: 2024, place: "furniture", priceTotal: amount * 6 } });
  it("is high for a cheap rug, low for a dear one, and falls with the price", () => {
    expect(paid(20)).toBeGreaterThan(0.9);
    expect(paid(800)).toBeLessThan(0.05);
    expect(paid(60)).toBeGreaterThan(paid(100));
  });
  it("goes by what such piles cost where no price was told, less surely", () => {
    expect(chance(SIZE, belief({ polypropylene: 1 }))).toBeGreaterThan(chance(SIZE, belief({ silk: 1 })));
    expect(chance(SIZE)).toBeGreaterThan(paid(800));
    expect(chance(SIZE)).toBeLessThan(paid(20));
  });
  it("is nothing where the size is not known, or for an antique", () => {
    expect(chance({})).toBe(0);
    expect(chance({ ...SIZE, age: "antique" })).toBe(0);
  });
});
