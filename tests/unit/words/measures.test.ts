import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OFFERED_LOCALES } from "../../../lib/words/locales";
import { area, decimal, DOUBT_FIGURES, estimate, feetAndInches, length, longDate, longDateAndHour, M2_PER_SQFT, M_PER_FOOT, money, number, ratePerArea, ratePerLength, roughly, run, size, smallArea, type Figures } from "../../../lib/words/measures";

const METRIC: Figures = { locale: "en-GB", areaUnit: "m2" };
const FEET: Figures = { locale: "en-US", areaUnit: "sqft" };

describe("the foot", () => {
  // International yard and pound agreement of 1959; NIST Special Publication 811 (2008), B.8: foot 3.048 E-01 m, square foot 9.290 304 E-02 m².
  it("is 0.3048 m exactly, and its square 0.09290304 m²", () => {
    expect(M_PER_FOOT).toBe(0.3048);
    expect(M2_PER_SQFT).toBeCloseTo(0.09290304, 15);
  });
  it("gives 9.75 m² as 104.9 square feet (9.75 / 0.09290304 = 104.948)", () => expect(area(9.75, FEET)).toBe("104.9 sq ft"));
});

describe("lengths", () => {
  it("are centimetres, or feet and inches to the nearest inch", () => {
    expect(length(170, METRIC)).toBe("170 cm");
    expect(length(170.5, METRIC)).toBe("170.5 cm");
    expect(length(170, FEET)).toBe("5 ft 7 in");
  });
  it("never say twelve inches, and leave out what is none", () => {
    expect(length(182.88, FEET)).toBe("6 ft");
    // 5 ft 11.49 in and 5 ft 11.51 in: either side of the half inch below six feet.
    expect([length(181.58, FEET), length(181.63, FEET)]).toEqual(["5 ft 11 in", "6 ft"]);
    expect([length(20, FEET), length(0, FEET)]).toEqual(["8 in", "0 in"]);
  });
  it("come back as the inches that were typed, through whole centimetres", () => {
    fc.assert(fc.property(fc.integer({ min: 8, max: 787 }), (inches) => {
      const { feet, inches: rest } = feetAndInches(Math.round(inches * 2.54));
      expect(feet * 12 + rest).toBe(inches);
      expect(rest).toBeLessThan(12);
    }));
  });
  it("tell a rug's two sides in one", () => {
    expect(size(170, 240, METRIC)).toBe("170 × 240 cm");
    expect(size(170, 240, FEET)).toBe("5 ft 7 in × 7 ft 10 in");
    expect(size(1200, 90, METRIC)).toBe("1,200 × 90 cm");
  });
  it("tell a run of edge in metres to a tenth, or in feet", () => {
    expect([run(6.44, METRIC), run(6, METRIC), run(6.44, FEET)]).toEqual(["6.4 m", "6.0 m", "21 ft"]);
  });
});

describe("areas", () => {
  it("are told in the unit that is set", () => {
    expect([area(9.75, METRIC), area(4.08, METRIC), area(4.08, FEET)]).toEqual(["9.75 m²", "4.08 m²", "43.9 sq ft"]);
    expect([smallArea(420.4, METRIC), smallArea(420, FEET)]).toEqual(["420 cm²", "65 sq in"]);
    // 2663 / 2.54² = 412.8; to three figures, and a doubt to two.
    expect([smallArea(2663, METRIC), smallArea(2663, FEET), smallArea(104, METRIC, DOUBT_FIGURES), smallArea(0, METRIC)]).toEqual(["2,660 cm²", "413 sq in", "100 cm²", "0 cm²"]);
  });
  it("give a rate by the same exact factor: £45.00 a square metre is £4.18 a square foot (45 × 0.09290304 = 4.1806)", () => {
    expect(ratePerArea(45, "GBP", METRIC)).toBe("£45.00 a square metre");
    expect(ratePerArea(45, "GBP", { locale: "en-GB", areaUnit: "sqft" })).toBe("£4.18 a square foot");
  });
  // 35 × 0.3048 = 10.668.
  it("writes a rate for a metre of binding by the foot too", () => expect([METRIC, FEET].map((f) => ratePerLength(35, "USD", f))).toEqual(["US$35.00 a metre", "$10.67 a foot"]));
  it("writes exactly so many decimals where it is asked to", () => expect([decimal(5, "en-GB", 1), decimal(13.86, "en-GB", 1), decimal(1234.5, "en-US", 1)]).toEqual(["5.0", "13.9", "1,234.5"]));
});

describe("money, numbers and dates", () => {
  // CLDR 44 and later: en-GB and en-IE "d MMMM y", en-US "MMMM d, y"; "US$" for the dollar outside the United States.
  it.each([
    ["en-GB", "28 November 2026", "£4,200", "US$4,200", "€4,200"],
    ["en-IE", "28 November 2026", "£4,200", "US$4,200", "€4,200"],
    ["en-US", "November 28, 2026", "£4,200", "$4,200", "€4,200"],
  ] as const)("are written as in %s", (locale, date, pounds, dollars, euros) => {
    expect(longDate(new Date("2026-11-28T12:00:00Z"), { locale, timeZone: "UTC" })).toBe(date);
    expect([money(4200.4, "GBP", locale), money(4200.4, "USD", locale), money(4200.4, "EUR", locale)]).toEqual([pounds, dollars, euros]);
    expect(number(1234.5, locale, 1)).toBe("1,234.5");
  });
  // CLDR 44 and later: a bare "$" is the dollar of the locale's own place, and every other says whose it is.
  it.each([
    ["en-GB", ["US$95", "A$95", "CA$95", "NZ$95"]], ["en-IE", ["US$95", "A$95", "CA$95", "NZ$95"]], ["en-US", ["$95", "A$95", "CA$95", "NZ$95"]],
    ["en-CA", ["US$95", "A$95", "$95", "NZ$95"]], ["en-AU", ["USD\u00a095", "$95", "CAD\u00a095", "NZD\u00a095"]], ["en-NZ", ["US$95", "A$95", "CA$95", "$95"]],
  ] as const)("tell four dollars apart in %s", (locale, four) => {
    expect(["USD", "AUD", "CAD", "NZD"].map((currency) => money(95, currency, locale))).toEqual(four);
  });
  it("show pennies only where they are asked for", () => {
    // To two significant figures, at and beside the middle between two of them.
    expect([123.4, 124.99, 125.01, 9.4, 0, 4_260].map((amount) => estimate(amount, "GBP", "en-GB"))).toEqual(["£120", "£120", "£130", "£9", "£0", "£4,300"]);
    expect([money(45, "GBP", "en-GB", 2), money(0, "EUR", "en-IE"), money(-12, "GBP", "en-GB")]).toEqual(["£45.00", "€0", "-£12"]);
  });
  it("known only roughly are rounded outward, in steps of a tenth of them at most", () => {
    const ends = (amount: number) => [roughly(amount, "low", "GBP", "en-GB"), roughly(amount, "high", "GBP", "en-GB")];
    // Below 100 by 5, from 100 by 10, from 250 by 25, from 500 by 50, from 1,000 by 100, from 2,500 by 250.
    expect([93, 99.9, 101, 249, 251, 499, 501, 999, 1_001, 2_499, 2_501].map(ends)).toEqual([
      ["£90", "£95"], ["£95", "£100"], ["£100", "£110"], ["£240", "£250"], ["£250", "£275"], ["£475", "£500"], ["£500", "£550"], ["£950", "£1,000"], ["£1,000", "£1,100"], ["£2,400", "£2,500"], ["£2,500", "£2,750"],
    ]);
    expect([0, 3, 12].map(ends)).toEqual([["£0", "£0"], ["£0", "£5"], ["£10", "£15"]]);
    fc.assert(fc.property(fc.integer({ min: 0, max: 100_000_000 }).map((pence) => pence / 100), (amount) => {
      const [low, high] = ends(amount).map((said) => Number(said.replace(/[£,]/g, ""))) as [number, number];
      expect(low <= amount && amount <= high).toBe(true);
      expect(high - low).toBeLessThanOrEqual(Math.max(5, amount * 0.1) + 1e-6);
    }));
  });
  it("tell the day of the workshop, not of the server", () => {
    const at = new Date("2026-11-28T23:30:00Z");
    expect([longDate(at, { locale: "en-GB", timeZone: "Europe/London" }), longDate(at, { locale: "en-NZ", timeZone: "Pacific/Auckland" })]).toEqual(["28 November 2026", "29 November 2026"]);
    expect(longDateAndHour(at, { locale: "en-GB", timeZone: "Europe/London" })).toMatch(/^28 November 2026 at \d\d:\d\d$/u);
    expect(longDateAndHour(new Date("2026-07-01T16:40:00Z"), { locale: "en-GB", timeZone: "Europe/London" })).toBe("1 July 2026 at 17:40");
    expect(longDateAndHour(new Date("2026-07-01T16:40:00Z"), { locale: "en-US", timeZone: "America/New_York" })).toMatch(/^July 1, 2026 at 12:40\sPM$/u);
  });
  it("know every locale that is offered: none falls back to another's data", () => {
    for (const locale of OFFERED_LOCALES) {
      expect(new Intl.NumberFormat(locale).resolvedOptions().locale).toBe(locale);
      expect(new Intl.DateTimeFormat(locale).resolvedOptions().locale).toBe(locale);
    }
  });
});
