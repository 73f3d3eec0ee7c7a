import { describe, expect, it } from "vitest";
import type { Finding } from "../../../lib/triage/finding";
import { defaultSettings } from "../../../lib/triage/assess";
import { chanceNotWorthIt, cleaningCost, cutDownCost, judgeMoney } from "../../../lib/triage/money";
import { belief, told } from "./told";

const prices = { cleanPerM2: 30, cleanMinimum: 60, bindingPerM: 20 };
const SIZE = { size: { widthCm: 200, lengthCm: 300, m2: 6 } };
const judge = (answers: Record<string, Finding["value"]>, fibres = belief({ wool: 1 }), currency = "GBP") =>
  judgeMoney(told(answers), fibres, { settings: defaultSettings({ prices, currency }), year: 2024, lifeYears: { low: 2, median: 5, high: 10 }, meanAge: 5 });

describe("cleaningCost", () => {
  it("is never under the minimum: below, at, above two square metres", () => {
    const low = (m2: number) => cleaningCost({ widthCm: 100, lengthCm: m2 * 100 }, prices).low;
    expect([low(1.9), low(2), low(2.1)].map((x) => Math.round(x * 10) / 10)).toEqual([60, 60, 63]);
  });
});

describe("cutDownCost", () => {
  it("is one end, an end and a side, or all round, with 2 cm of turn each", () => {
    const c = cutDownCost({ widthCm: 170, lengthCm: 240 }, prices);
    expect(c.low).toBeCloseTo(1.72 * 20, 9);
    expect(c.median).toBeCloseTo((1.72 + 2.42) * 20, 9);
    expect(c.high).toBeCloseTo(2 * (1.72 + 2.42) * 20, 9);
  });
});

describe("judgeMoney", () => {
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
  it("values today at the share of its life that is left", () => {
    const m = judge(SIZE).money;
    expect((m?.valueToday?.median ?? NaN) / (m?.replace?.median ?? NaN)).toBeCloseTo(0.5, 9);
  });
  it("gives an antique neither value nor replacement nor a cut", () => {
    const { money, why } = judge({ ...SIZE, age: "antique" });
    expect(money).toMatchObject({ replace: null, valueToday: null, cutDown: null });
    expect(money?.clean).not.toBeNull();
    expect(why).toContain("valuer");
  });
});

describe("chanceNotWorthIt", () => {
  const chance = (amount: number) => {
    const answers = { ...SIZE, "price-per-m2": { amount, currency: "GBP", year: 2024, place: "furniture", priceTotal: amount * 6 } };
    return chanceNotWorthIt(told(answers), judge(answers).money);
  };
  it("is high for a cheap rug, low for a dear one, and falls with the price", () => {
    expect(chance(20)).toBeGreaterThan(0.9);
    expect(chance(800)).toBeLessThan(0.05);
    expect(chance(60)).toBeGreaterThan(chance(100));
  });
  it("is nothing where no price was told", () => expect(chanceNotWorthIt(told(SIZE), judge(SIZE).money)).toBe(0));
});
