import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseAmount, parseDecimal, typedNumber } from "../../../lib/enquiry/amounts";

describe("parseDecimal", () => {
  it.each([["170", 170], ["170.5", 170.5], ["170,5", 170.5], [" 240 ", 240], [".5", 0.5], ["0", 0]])("reads %j as %d", (text, value) => {
    expect(parseDecimal(text)).toBe(value);
  });
  it.each(["", "  ", "about 170", "240 cm", "5 ft", "11\"", "1,2,3", "1.2.3", "-5", "1e3", "0x10", "Infinity", "."])("gives null for %j", (text) => {
    expect(parseDecimal(text)).toBeNull();
  });
});

describe("typedNumber", () => {
  it.each([["12", 12], ["-5", -1], ["− 3", -1], ["soon", Number.NaN]])("makes %j %d", (text, value) => expect(typedNumber(text, parseDecimal)).toBe(value));
});

describe("parseAmount", () => {
  it.each([
    ["4200", 4200], ["4,200", 4200], ["4.200", 4200], ["4 200", 4200], ["4'200", 4200], ["£1,200.00", 1200], ["1.200,00 €", 1200],
    ["1,234,567", 1_234_567], ["950", 950], ["9.50", 9.5], ["9,5", 9.5], ["EUR 900", 900], ["0", 0],
  ])("reads %j as %d", (text, value) => expect(parseAmount(text)).toBe(value));
  it.each(["", "abc", "1.2.3", "12,34,56", "-5", "ten", "1,200,00.0.0"])("gives null for %j", (text) => expect(parseAmount(text)).toBeNull());
  it("takes three digits after one mark for thousands, one or two for decimals", () => {
    expect(parseAmount("1.500")).toBe(1500);
    expect(parseAmount("1.50")).toBe(1.5);
    expect(parseAmount("1.5")).toBe(1.5);
  });
  it("reads back every whole amount however its thousands are grouped", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.constantFrom(",", ".", " ", ""), (amount, mark) => {
      const text = String(amount).replace(/\B(?=(\d{3})+$)/g, mark);
      expect(parseAmount(text)).toBe(amount);
    }));
  });
  it("is never below zero and never something that is no number", () => {
    fc.assert(fc.property(fc.string(), (text) => {
      const amount = parseAmount(text);
      expect(amount === null || (Number.isFinite(amount) && amount >= 0)).toBe(true);
    }));
  });
});
