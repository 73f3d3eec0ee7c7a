import { describe, expect, it } from "vitest";
import { cmFromFeet, parseLength, type LengthUnit } from "../../../lib/words/read-length";

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

describe("cmFromFeet", () => {
  // One foot is 30.48 cm, one inch 2.54 cm exactly.
  it.each([[5, 0, 152], [8, 0, 244], [0, 10, 25], [5, 7, 170], [0, 0, 0]])("makes %d feet %d inches %d cm", (feet, inches, cm) => {
    expect(cmFromFeet(feet, inches)).toBe(cm);
  });
  it("gives no number for no number", () => expect(cmFromFeet(Number.NaN, 0)).toBeNaN());
});
