import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cmFromFeet, parseAmount, parseCm, parseDecimal, parseFeetAndInches } from "../../../lib/enquiry/amounts";

describe("parseDecimal", () => {
  it.each([["170", 170], ["170.5", 170.5], ["170,5", 170.5], [" 240 cm ", 240], ["5 ft", 5], ["11\"", 11], [".5", 0.5], ["0", 0]])("reads %j as %d", (text, value) => {
    expect(parseDecimal(text)).toBe(value);
  });
  it.each(["", "  ", "about 170", "1,2,3", "1.2.3", "-5", "1e3", "0x10", "Infinity", "."])("gives null for %j", (text) => {
    expect(parseDecimal(text)).toBeNull();
  });
});

describe("parseCm", () => {
  it.each([["170", 170], ["170,5 cm", 170.5], ["1.7 m", 170], ["1,70 m", 170], ["2 m", 200], ["1 m 70", 170], ["1 m 70 cm", 170], ["2m05", 205], ["2.405 metres", 240.5]])("reads %j as %d cm", (text, cm) => expect(parseCm(text)).toBe(cm));
  it.each(["", "m", "1 m 70 m", "about 2 m", "-1 m", "1.2.3 m"])("gives null for %j", (text) => expect(parseCm(text)).toBeNull());
});

describe("parseFeetAndInches", () => {
  it.each([["5 ft 7 in", 5, 7], ["5'7\"", 5, 7], ["5′ 7½″", 5, 7.5], ["6 feet 0 inches", 6, 0], ["7' 10", 7, 10], ["5 ft 7.25 in", 5, 7.25]])("reads %j", (text, feet, inches) => expect(parseFeetAndInches(text)).toEqual({ feet, inches }));
  it.each(["5", "5 ft", "7 in", "five ft two", "", "5.5 ft 2 in"])("is null for %j, which is not both", (text) => expect(parseFeetAndInches(text)).toBeNull());
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

describe("cmFromFeet", () => {
  // One foot is 30.48 cm, one inch 2.54 cm exactly.
  it.each([[5, 0, 152], [8, 0, 244], [0, 10, 25], [5, 7, 170], [0, 0, 0]])("makes %d feet %d inches %d cm", (feet, inches, cm) => {
    expect(cmFromFeet(feet, inches)).toBe(cm);
  });
  it("gives no number for no number", () => expect(cmFromFeet(Number.NaN, 0)).toBeNaN());
});
