import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greetingName } from "../../../lib/reply/greeting-name";

describe("greetingName", () => {
  it.each([
    ["Ana Example", "Ana Example"], ["  Ana\tExample ", "Ana Example"], ["ليلى الحداد", "ليلى الحداد"], ["Thea and Magnus Bellwether", "Thea and Magnus Bellwether"],
    ["Example, Ana", "Example, Ana"], ["Smith, Jones & Partners", "Smith, Jones & Partners"], ["Ana of Kent", "Ana of Kent"], ["The House of Rugs", "The House of Rugs"], ["Sheikh Ivo bin Sample", "Sheikh Ivo bin Sample"],
  ])("leaves a name as it is: %j", (name, greeted) => expect(greetingName(name)).toBe(greeted));
  it.each([
    ["Ana Example <ana@example.org>", "Ana Example"], ["Ana Example (ana@example.org)", "Ana Example"], ["Ana Example, ana@example.org", "Ana Example"], ["Ana Example www.example.org", "Ana Example"], ["Ana Example https://example.org/x", "Ana Example"],
    ["Ana Example\n12 Mill Lane\nHallow", "Ana Example"], ["Ana Example, 12 Mill Lane", "Ana Example"], ["Ana Example 12 Mill Lane", "Ana Example"], ["Ana Example, Mill Lane, Hallow", "Ana Example"],
    ["Marguerite Example of Upper Hallow Old Schoolhouse", "Marguerite Example"], ["Ana Example, 01632 960000", "Ana Example"],
  ])("leaves out addresses and telephone numbers: %j", (name, greeted) => expect(greetingName(name)).toBe(greeted));
  it.each([
    "Studio 54", "Warp 7", "Studio54", "Rugs4You", "Rugs 4 You", "Carpets 2 Go Ltd", "Room 9 Interiors", "Rugs 2000", "1st Class Carpets", "20th Century Rugs", "3 Sisters Antiques", "House of 9 Rugs", "Lantern Yard 3 Rugs",
  ])("keeps the number that is part of a firm's name: %j", (name) => expect(greetingName(name)).toBe(name));
  it.each([
    ["Studio 54, 12 Mill Lane", "Studio 54"], ["Studio 54, Mill Lane, Hallow", "Studio 54"], ["Studio 54 <desk@studio.example>", "Studio 54"], ["Studio 54\n12 Mill Lane", "Studio 54"],
    ["Ana Example 12", "Ana Example"], ["Ana Example 12 Upper Hallow", "Ana Example"], ["Example Rugs 12 Mill Lane", "Example Rugs"], ["Example Rugs Unit 5", "Example Rugs"], ["Ana Example, Flat 3", "Ana Example"], ["Ana Example Lindenstraße 12", "Ana Example Lindenstraße"],
    ["Example Rugs AB12 3CD", "Example Rugs"], ["Example Rugs 90210", "Example Rugs"], ["Example Rugs 01632 960000", "Example Rugs"], ["Example Rugs 07 70", "Example Rugs"],
  ])("tells it from a house, a postcode and a telephone: %j", (name, greeted) => expect(greetingName(name)).toBe(greeted));
  it.each(["", "  ", "\u0000\u202e", "ana.example@example.org", "12 Mill Lane", "Flat 3, 12 Mill Lane", "3 Upper Hallow", "https://example.org", "-- , ;"])("greets nobody by name: %j", (name) => expect(greetingName(name)).toBeNull());
  it("gives one line with a letter in it, or nothing, whatever was typed", () => fc.assert(fc.property(fc.string({ unit: "grapheme" }), (name) => {
    const greeted = greetingName(name);
    if (greeted !== null) expect(greeted).toMatch(/^(?=[^]*\p{L})[^\r\n{}<>@]+$/u);
  })));
});
