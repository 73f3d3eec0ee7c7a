import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greetingName } from "../../../lib/reply/greeting-name";

describe("greetingName", () => {
  it.each([
    ["Ana Example", "Ana Example"], ["  Ana\tExample ", "Ana Example"], ["ليلى الحداد", "ليلى الحداد"], ["Thea and Magnus Bellwether", "Thea and Magnus Bellwether"],
    ["Ana Example, Hallow", "Ana Example, Hallow"], ["Example, MBE", "Example, MBE"], ["Smith, Jones & Partners", "Smith, Jones & Partners"], ["Ana of Kent", "Ana of Kent"], ["The House of Rugs", "The House of Rugs"], ["Sheikh Ivo bin Sample", "Sheikh Ivo bin Sample"],
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
  it.each([
    ["Mrs Edith Farrant", "Mrs Farrant"], ["Mr. Ivo Sample", "Mr. Sample"], ["Dr Ana Example-Sample", "Dr Example-Sample"], ["Ms Ana O’Sample", "Ms O’Sample"], ["Mrs E. A. Farrant", "Mrs Farrant"], ["Mrs E Farrant", "Mrs Farrant"], ["Mx Rin van der Sample", "Mx van der Sample"],
    ["Mrs Edith Farrant, 12 Mill Lane", "Mrs Farrant"],
  ])("greets by title and last name: %j", (name, greeted) => expect(greetingName(name)).toBe(greeted));
  it.each([
    ["Example, Ana", "Ana Example"], ["SMITH, John", "John Smith"], ["Example, Ana, 12 Mill Lane", "Ana Example"], ["Farrant, Mrs Edith", "Mrs Farrant"], ["van der Sample, Rin", "Rin van der Sample"], ["Nagy, István", "István Nagy"], ["Example, A.", "A. Example"],
  ])("reads by its comma which name is which: %j", (name, greeted) => expect(greetingName(name)).toBe(greeted));
  it.each([
    "Nagy István", "Szabó Ágnes", "Tanaka Yuki", "Wang Wei", "Kim Min-jun", "Mr Wang Wei", "Ms Tanaka Yuki", "Mrs Szabó Ágnes", "Mr Orbán Zoltán", "Dr Nguyen Thi Sample", "田中 雪", "김민준", "Ms Kim Sample",
  ])("greets by the whole name where nobody can tell which is the last: %j", (name) => expect(greetingName(name)).toBe(name));
  it.each([
    ["Mr NAGY István", "Mr Nagy"], ["Mrs Edith FARRANT", "Mrs Farrant"], ["NAGY István", "Nagy István"], ["Ana EXAMPLE-O’SAMPLE", "Ana Example-O’Sample"], ["John MCSAMPLE", "John McSample"],
  ])("knows a last name by its capitals: %j", (name, greeted) => expect(greetingName(name)).toBe(greeted));
  it.each(["ABC Rugs", "JP Example", "ANA EXAMPLE", "IVO"])("leaves other capitals: %j", (name) => expect(greetingName(name)).toBe(name));
  it.each([
    "Mrs Farrant", "Mr and Mrs Farrant", "Mr & Mrs Ivo Farrant", "Mrs Edith Farrant and Ivo Sample", "Mrs Edith Anne Farrant", "Mrs Maria Sample Example", "Sir Ivo Sample", "Edith Farrant", "Misso Example", "Mrs Edith Farrant & Sons", "Drew Example", "J. Farrant", "J Farrant",
  ])("leaves whole what may be more than that: %j", (name) => expect(greetingName(name)).toBe(name));
  it.each(["J", "J.", "j", "J. S.", "J.S.", "É"])("greets nobody by initials alone: %j", (name) => expect(greetingName(name)).toBeNull());
  it.each(["info", "Info", "OFFICE", "enquiries", "no-reply", "sales, ", "info <info@example.org>"])("greets no mailbox of an office: %j", (name) => expect(greetingName(name)).toBeNull());
  it.each(["Post Office Rugs", "Infa", "Ana Post", "Hello Rugs Ltd"])("greets whom only part of it names: %j", (name) => expect(greetingName(name)).toBe(name));
  it.each(["李", "Jo", "Ed", "و"])("takes a short name for a name: %j", (name) => expect(greetingName(name)).toBe(name));
  it("gives one line with a letter in it, or nothing, whatever was typed", () => fc.assert(fc.property(fc.string({ unit: "grapheme" }), (name) => {
    const greeted = greetingName(name);
    if (greeted !== null) expect(greeted).toMatch(/^(?=[^]*\p{L})[^\r\n{}<>@]+$/u);
  })));
});
