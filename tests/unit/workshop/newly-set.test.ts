import { describe, expect, it } from "vitest";
import { NEWLY_SET, newlySetFaults } from "../../../lib/workshop/newly-set";
import { keptPrice, MOST_PRICE, mostIn, PRICE_FIELDS, shownPrice } from "../../../lib/workshop/price-fields";
import { DEFAULT_SETTINGS, workshopSettingsSchema } from "../../../lib/workshop/settings-schema";

const isTelephone = (text: string) => NEWLY_SET.telephone.safeParse(text).success;

describe("a telephone number that is newly set", () => {
  it.each(["", "01632 960 200", "+44 (0)1632 960-200", "(020) 7946.0123", "030/123456", "+1 555 0100 ext. 12", "01632 960200 x4", "01632 960200 extension 7", "123456"])("takes %j", (text) => expect(isTelephone(text)).toBe(true));
  it.each(["call me", "12345", "+44 12", "12345 ext. 67", "01632 960 200 (Nell)", "ext. 123456", "01632 960 200 ext."])("refuses %j", (text) => expect(isTelephone(text)).toBe(false));
});

describe("how a rug comes, newly set", () => {
  const isTaken = (text: string) => NEWLY_SET.collecting.safeParse(text).success;
  it.each(["", "We don’t collect.", "We collect within 15 miles", "You bring it."])("takes %j", (text) => expect(isTaken(text)).toBe(true));
  it.each(["Yes", "Yes.", "We collect.", "Yes – free!", "– – –"])("refuses %j, which is no sentence of three words", (text) => expect(isTaken(text)).toBe(false));
});

describe("newlySetFaults", () => {
  const of = (change: object, before: object = {}) => newlySetFaults({ ...DEFAULT_SETTINGS, ...before }, workshopSettingsSchema.parse({ ...DEFAULT_SETTINGS, ...before, ...change }));
  it("names each field that was changed to something it cannot be", () => {
    expect(of({ telephone: "call me", prices: { cleanPerM2: 42_000, cleanMinimum: 90, bindingPerM: 35 } })).toEqual({
      telephone: "Write the telephone number in figures, at least 6, such as +44 1632 960 200 ext. 4, or leave it empty.", cleanPerM2: "Cleaning, per square metre: at most 2,000. Has a nought slipped in?",
    });
    expect(of({ signature: " " }, { signature: "Mira Quill" })).toEqual({ signature: "Write the signature: it stands under every letter." });
  });
  it("leaves what an earlier release kept, and takes prices up to their bounds", () => {
    expect(of({ hours: "9 to 17" }, { telephone: "call me", signature: "", prices: { cleanPerM2: 42_000, cleanMinimum: 90, bindingPerM: 35 } })).toEqual({});
    expect(of({ prices: MOST_PRICE })).toEqual({});
    expect(of({ hours: "9 to 17" }, { collecting: "Yes.", prices: { cleanPerM2: 0, cleanMinimum: 0, bindingPerM: 0 } })).toEqual({});
    for (const id of ["cleanPerM2", "cleanMinimum", "bindingPerM"] as const) expect(Object.keys(of({ prices: { ...MOST_PRICE, [id]: MOST_PRICE[id] + 0.01 } }))).toEqual([id]);
  });
});

describe("a price of 0, newly set", () => {
  const of = (prices: object, areaUnit: "m2" | "sqft" = "m2") => newlySetFaults({ ...DEFAULT_SETTINGS, areaUnit }, workshopSettingsSchema.parse({ ...DEFAULT_SETTINGS, areaUnit, prices: { ...DEFAULT_SETTINGS.prices, ...prices } }));
  it("is refused under the field it was typed in, by itself or with another, and a cent is taken", () => {
    expect(of({ cleanPerM2: 0 })).toEqual({ cleanPerM2: "Cleaning, per square metre: more than 0, since letters tell by it what cleaning costs. It cannot stay empty." });
    expect(of({ bindingPerM: 0 })).toEqual({ bindingPerM: "Binding, per metre: more than 0, since letters tell by it what new edges cost. It cannot stay empty." });
    expect(Object.keys(of({ cleanPerM2: 0, bindingPerM: 0 }, "sqft"))).toEqual(["cleanPerSqft", "bindingPerFt"]);
    expect(of({ cleanPerM2: 0.01, bindingPerM: 0.01 })).toEqual({});
  });
  it("is no least charge where it stands for that", () => expect(of({ cleanMinimum: 0 })).toEqual({}));
});

describe("prices in the unit of areas", () => {
  const [cleaning, , binding] = PRICE_FIELDS.sqft;
  it("shows a price by the exact international foot: 45 a square metre is 4.18 a square foot (45 × 0.09290304), 35 a metre 10.67 a foot (35 × 0.3048)", () => {
    expect(cleaning && shownPrice(45, cleaning)).toBe(4.18);
    expect(binding && shownPrice(35, binding)).toBe(10.67);
    expect(PRICE_FIELDS.m2.map((f) => shownPrice(39.37008, f))).toEqual([39.37, 39.37, 39.37]);
  });
  it("keeps a price that was left as it was shown to its last digit, and reads a new one by the foot (4 ÷ 0.09290304 = 43.0556)", () => {
    expect(cleaning && keptPrice(4.18, 45, cleaning)).toBe(45);
    expect(PRICE_FIELDS.m2.map((f) => keptPrice(39.37, 39.37008, f))).toEqual([39.37008, 39.37008, 39.37008]);
    expect(cleaning && keptPrice(4, 45, cleaning)).toBeCloseTo(43.0556, 4);
  });
  it("takes the same most price in either unit, whole (2,000 × 0.09290304 = 185.8)", () => expect([...PRICE_FIELDS.m2, ...PRICE_FIELDS.sqft].map(mostIn)).toEqual([2_000, 10_000, 1_000, 185, 10_000, 304]));
});
