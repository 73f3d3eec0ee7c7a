import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseAmount } from "../../../lib/enquiry/amounts";
import { currencyOf, parsePrice } from "../../../lib/enquiry/typed-price";
import { parseYear } from "../../../lib/enquiry/typed-year";
import { CURRENCIES } from "../../../lib/trade/questions";

describe("parsePrice", () => {
  it.each([
    ["950", 950, null], ["about 950", 950, null], ["ca 950", 950, null], ["ca. 950", 950, null], ["c. 950", 950, null], ["circa 950", 950, null], ["~950", 950, null], ["≈ 950", 950, null], ["approx. 950", 950, null],
    ["Around 950 or so", 950, null], ["roughly 950", 950, null], ["950 I think", 950, null], ["950?", 950, null],
    ["about £1,200", 1200, "GBP"], ["£ about 1,200", 1200, "GBP"], ["1.200,00 €", 1200, "EUR"], ["1 200 euros", 1200, "EUR"], ["EUR 900", 900, "EUR"], ["900 gbp", 900, "GBP"], ["1,200 pounds", 1200, "GBP"], ["200 quid", 200, "GBP"],
    ["US$ 900", 900, "USD"], ["A$900", 900, "AUD"], ["AU$900", 900, "AUD"], ["C$900", 900, "CAD"], ["CA$ 900", 900, "CAD"], ["ca. C$900", 900, "CAD"], ["NZ$900", 900, "NZD"], ["900 nzd", 900, "NZD"],
    ["1.2k", 1200, null], ["1,2 k", 1200, null], ["£3K", 3000, "GBP"], ["12 thousand pounds", 12_000, "GBP"],
  ])("reads %j as %d in %j", (text, amount, currency) => expect(parsePrice(text)).toEqual({ amount, currency, isDollars: false }));
  it.each(["$900", "about 900 dollars"])("knows %j for dollars of nobody knows where", (text) => expect(parsePrice(text)).toEqual({ amount: 900, currency: null, isDollars: true }));
  it.each(["", "about", "£", "ten", "950-1200", "950 to 1200", "-5", "JPY 900", "kr 900", "£900 each", "1.2kg", "about five hundred", "£5 €", "1k5", "cats 9"])("reads nothing in %j", (text) => expect(parsePrice(text)).toBeNull());
  it("reads every bare amount as parseAmount does, whatever stands round it", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.constantFrom(",", ".", " ", ""), fc.constantFrom(...CURRENCIES), fc.constantFrom("", "about ", "~"), (n, mark, code, roughly) => {
      const text = String(n).replace(/\B(?=(\d{3})+$)/g, mark);
      for (const typed of [`${roughly}${code} ${text}`, `${roughly}${text} ${code}`]) expect(parsePrice(typed)).toEqual({ amount: parseAmount(text), currency: code, isDollars: false });
    }));
  });
  it("is never below zero and never something that is no number", () => {
    fc.assert(fc.property(fc.string(), (text) => {
      const amount = parsePrice(text)?.amount ?? 0;
      expect(Number.isFinite(amount) && amount >= 0).toBe(true);
    }));
  });
});

describe("currencyOf", () => {
  it("is what was typed, else what was chosen; dollars alone only where dollars were chosen", () => {
    expect(currencyOf({ amount: 1, currency: "GBP", isDollars: false }, "EUR")).toBe("GBP");
    expect(currencyOf({ amount: 1, currency: null, isDollars: false }, "EUR")).toBe("EUR");
    expect(currencyOf({ amount: 1, currency: null, isDollars: false }, undefined)).toBeUndefined();
    expect(currencyOf({ amount: 1, currency: null, isDollars: true }, "NZD")).toBe("NZD");
    expect(currencyOf({ amount: 1, currency: null, isDollars: true }, "EUR")).toBeNull();
    expect(currencyOf({ amount: 1, currency: null, isDollars: true }, undefined)).toBeNull();
  });
});

describe("parseYear", () => {
  it.each([
    ["2019", 2019], [" 2019 ", 2019], ["about 2019", 2019], ["in 2019", 2019], ["ca. 2019", 2019], ["~2019", 2019], ["2019?", 2019], ["2019ish", 2019], ["3 years ago", 2023], ["about 3 years ago", 2023], ["3 yrs", 2023],
    ["three years ago", 2023], ["one year ago", 2025], ["a year ago", 2025], ["ten years or so ago", 2016], ["0 years ago", 2026], ["last year", 2025], ["this year", 2026], ["201", 201],
  ])("reads %j, in 2026, as %d", (text, year) => expect(parseYear(text, 2026)).toBe(year));
  it.each(["", "long ago", "2015-2019", "when we married", "2019.5", "-3", "3 months ago", "1000 years ago"])("reads no year in %j", (text) => expect(parseYear(text, 2026)).toBeNull());
});
