import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cmFromFeet, parseAmount, parseDecimal, parseLength, typedNumber, type LengthUnit } from "../../../lib/enquiry/amounts";

describe("parseDecimal", () => {
  it.each([["170", 170], ["170.5", 170.5], ["170,5", 170.5], [" 240 ", 240], [".5", 0.5], ["0", 0]])("reads %j as %d", (text, value) => {
    expect(parseDecimal(text)).toBe(value);
  });
  it.each(["", "  ", "about 170", "240 cm", "5 ft", "11\"", "1,2,3", "1.2.3", "-5", "1e3", "0x10", "Infinity", "."])("gives null for %j", (text) => {
    expect(parseDecimal(text)).toBeNull();
  });
});

describe("parseLength", () => {
  it.each([
    ["170", 170], ["170,5 cm", 170.5], [" 240 cm ", 240], ["240cm.", 240], ["1.7 m", 170], ["1,70 m", 170], ["2,44 m", 244], ["2 m", 200], ["1 m 70", 170], ["1 m 70 cm", 170], ["1 m 5 cm", 105], ["2m05", 205],
    ["2.405 metres", 240.5], ["1700 mm", 170], ["1705 Millimetres", 170.5],
  ])("reads %j as %d cm", (text, cm) => expect(parseLength(text, "cm")).toBe(cm));
  // One foot is 30.48 cm, one inch 2.54 cm exactly; told in whole centimetres.
  it.each([
    ["8 ft", 244], ["8 foot", 244], ["25 ft", 762], ["25ft.", 762], ["10'", 305], ["10’", 305], ["10′", 305], ["5.5 feet", 168], ["80 in", 203], ["80 inches", 203], ["80\"", 203], ["80''", 203], ["7½ in", 19], ["7 1/2 in", 19],
    ["5 ft 7 in", 170], ["5 ft. 7 in.", 170], ["5'7\"", 170], ["8’2\"", 249], ["5′ 7½″", 171], ["6 feet 0 inches", 183], ["7' 10", 239], ["5 ft 7.25 in", 171], ["5 feet and 7 inches", 170],
  ])("reads %j as %d cm, whatever the unit of a bare number", (text, cm) => {
    for (const bare of ["cm", "ft", "in"] as const) expect(parseLength(text, bare)).toBe(cm);
  });
  it.each<[string, LengthUnit, number]>([["25", "cm", 25], ["25", "ft", 762], ["25", "in", 64], ["8.5", "ft", 259], ["8 ½", "ft", 259]])("takes a bare %j in %s for %d cm", (text, bare, cm) => expect(parseLength(text, bare)).toBe(cm));
  it.each(["", "m", "ft", "1 m 70 m", "1 m 5", "about 2 m", "-1 m", "-8 ft", "1.2.3 m", "2 yards", "8 ft 2 cm", "2 ells", "five ft two", "5.5 ft 2 in", "170 cm 7", "8 x 10 ft", "8 3/8 in"])("gives null for %j, and drops no unit", (text) => {
    for (const bare of ["cm", "ft", "in"] as const) expect(parseLength(text, bare)).toBeNull();
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

describe("cmFromFeet", () => {
  // One foot is 30.48 cm, one inch 2.54 cm exactly.
  it.each([[5, 0, 152], [8, 0, 244], [0, 10, 25], [5, 7, 170], [0, 0, 0]])("makes %d feet %d inches %d cm", (feet, inches, cm) => {
    expect(cmFromFeet(feet, inches)).toBe(cm);
  });
  it("gives no number for no number", () => expect(cmFromFeet(Number.NaN, 0)).toBeNaN());
});
