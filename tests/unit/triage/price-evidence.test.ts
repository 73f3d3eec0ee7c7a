import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CLASSES_WITH_SILK } from "../../../lib/trade/prices";
import type { NamedFibre } from "../../../lib/trade/likelihood-table";
import { NAMED } from "../../../lib/triage/classes";
import { priceLikelihood, pricesToExpect, readPrice, type PriceEvidence } from "../../../lib/triage/price-evidence";
import { seededRandom } from "../../../lib/triage/random";

const price = (pounds: number, more: Partial<PriceEvidence> = {}): PriceEvidence => ({ logPounds: Math.log(pounds), loosePlace: false, yearKnown: true, make: null, ...more });
const db = (fibre: NamedFibre, p: PriceEvidence) => 10 * Math.log10(priceLikelihood(p)[NAMED.indexOf(fibre)] as number);
const context = { currency: "GBP", year: 2026, make: null };

describe("readPrice", () => {
  it("brings a price to pounds of 2024", () => {
    expect(readPrice({ amount: 250, currency: "GBP", year: 2024, place: null }, context)).toEqual({ logPounds: Math.log(250), loosePlace: false, yearKnown: true, make: null });
  });
  it("takes the workshop's currency and this year where they are not told, and says that the year is not known", () => {
    const read = readPrice({ amount: 250, currency: null, year: null }, { ...context, year: 2024 });
    expect(read).toMatchObject({ logPounds: Math.log(250), yearKnown: false });
  });
  it.each([
    ["nothing paid", { amount: 0, currency: "GBP", year: 2020 }],
    ["less than nothing", { amount: -5, currency: "GBP", year: 2020 }],
    ["no number", { amount: Number.NaN, currency: "GBP", year: 2020 }],
    ["endless", { amount: Infinity, currency: "GBP", year: 2020 }],
    ["a year before the table", { amount: 250, currency: "GBP", year: 1999 }],
  ])("reads no price from %s", (_, value) => {
    expect(readPrice(value, context)).toBeNull();
  });
  it("reads no price where neither the price nor the workshop has a known currency", () => {
    expect(readPrice({ amount: 250, currency: null, year: 2020 }, { ...context, currency: "CHF" })).toBeNull();
    expect(readPrice("250", context)).toBeNull();
  });
  it.each([["bazaar", true], ["auction", true], ["secondhand", true], ["gift", true], ["specialist", false], ["online", false]])("goes by prices of a %s loosely: %s", (place, loose) => {
    expect(readPrice({ amount: 250, currency: "GBP", year: 2020, place }, context)?.loosePlace).toBe(loose);
  });
});

describe("priceLikelihood", () => {
  it("is the ratio of the log-normal densities: knotted wool at 110 pounds against knotted viscose", () => {
    // Both rows have median 450 and log-sd .8, so the price says nothing between them.
    expect(db("wool", price(110, { make: "knots" }))).toBeCloseTo(0, 9);
    // Machine-made wool (110, .6) against viscose (180, .95) at 110: ln(1/.6) − ln(1/.95) + (ln(180/110)/.95)²/2, in dB.
    const expected = (10 / Math.LN10) * (Math.log(0.95 / 0.6) + (Math.log(180 / 110) / 0.95) ** 2 / 2);
    expect(db("wool", price(110, { make: "machine" }))).toBeCloseTo(expected, 9);
  });
  it("is one-sided for silk: −15 dB against viscose when very cheap, never above +3, never falling as the price rises", () => {
    expect(db("silk", price(30))).toBeCloseTo(-15, 9);
    expect(db("silk", price(5000))).toBeCloseTo(3, 9);
    const anyPrice = fc.double({ min: 0.01, max: 1e7, noNaN: true });
    fc.assert(fc.property(anyPrice, anyPrice, fc.constantFrom(...CLASSES_WITH_SILK), fc.boolean(), fc.boolean(), fc.constantFrom(null, "knots", "loomed", "machine"), (a, b, fibre, loosePlace, yearKnown, make) => {
      const more = { loosePlace, yearKnown, make } as Partial<PriceEvidence>;
      const [low, high] = [db(fibre, price(Math.min(a, b), more)), db(fibre, price(Math.max(a, b), more))];
      expect(low).toBeLessThanOrEqual(high + 1e-9);
      expect(low).toBeGreaterThanOrEqual(-15 - 1e-9);
      expect(high).toBeLessThanOrEqual(3 + 1e-9);
    }));
  });
  it("is finite for every class at any price", () => {
    fc.assert(fc.property(fc.double({ min: 1e-6, max: 1e12, noNaN: true }), (p) => {
      for (const l of priceLikelihood(price(p))) expect(l > 0 && Number.isFinite(l)).toBe(true);
    }));
  });
  it("says less when the rug came from a bazaar, or the year is not known", () => {
    expect(db("silk", price(300, { loosePlace: true }))).toBeGreaterThan(db("silk", price(300)));
    expect(Math.abs(db("polypropylene", price(120, { yearKnown: false })))).toBeLessThan(Math.abs(db("polypropylene", price(120))));
  });
  it("moves when its medians are drawn", () => {
    const random = seededRandom(1, "price");
    expect(priceLikelihood(price(300), random)).not.toEqual(priceLikelihood(price(300), random));
  });
});

describe("pricesToExpect", () => {
  it("covers every price for every class", () => {
    const bands = pricesToExpect();
    NAMED.forEach((_, i) => expect(bands.reduce((s, b) => s + (b.column[i] as number), 0)).toBeCloseTo(1, 6));
  });
  it("puts most silk in the dearest bands and most polypropylene in the cheapest", () => {
    const share = (fibre: NamedFibre, k: number) => pricesToExpect()[k]?.column[NAMED.indexOf(fibre)] ?? 0;
    expect(share("silk", 4) + share("silk", 3)).toBeGreaterThan(0.9);
    // Median 40, log-sd .6: Φ(ln(60/40)/.6) = Φ(.6758) = .7504 of prices lie below 60.
    expect(share("polypropylene", 0)).toBeCloseTo(0.7504, 3);
  });
});
