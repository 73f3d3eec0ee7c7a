import { describe, expect, it } from "vitest";
import { faultsOf, isNeeded, MOST_PARAGRAPH_CHARS, overpromisesOf, paragraphReading } from "../../../lib/reply/check-paragraph";
import { SHIPPED, shippedParagraph, type Wording } from "../../../lib/reply/library";

const own = (change: Partial<Wording> = {}): Wording => ({ place: "notes", text: "We are closed in August.", tones: {}, when: {}, about: null, order: 100, off: false, ...change });
const shippedAs = (id: string, change: Partial<Wording> = {}): Wording => {
  const { place, text, tones = {}, when, about = null, order, off } = shippedParagraph(id)!;
  return { place, text, tones, when, about, order, off, ...change };
};
const fields = (id: string, wording: Wording) => faultsOf(id, wording).map((f) => f.field);

describe("faultsOf", () => {
  it("finds nothing wrong with anything that is shipped", () => {
    for (const { id } of SHIPPED) expect(faultsOf(id, shippedAs(id)), id).toEqual([]);
  });
  it("wants a text, but no variant", () => {
    expect(fields("own-1", own({ text: "" }))).toEqual(["text"]);
    expect(fields("own-1", own({ tones: { warm: "" } }))).toEqual([]);
  });
  it("names a slot that does not exist, in any tone", () => {
    expect(faultsOf("own-1", own({ tones: { warm: "Dear {nmae}," } }))).toEqual([{ field: "warm", say: expect.stringContaining("{nmae}") }]);
  });
  it.each(["Dear {name", "Dear name}", "Dear {{name}}"])("finds the open brace in %s", (text) => expect(fields("own-1", own({ text }))).toContain("text"));
  it("takes a text of the most characters and none longer", () => {
    expect(fields("own-1", own({ text: "a".repeat(MOST_PARAGRAPH_CHARS) }))).toEqual([]);
    expect(fields("own-1", own({ text: "a".repeat(MOST_PARAGRAPH_CHARS + 1) }))).toEqual(["text"]);
  });
  it("keeps the evidence, the word of chance and the range in a paragraph that shipped with them", () => {
    expect(faultsOf("fibre", shippedAs("fibre", { text: "{rug} is {fibre}." })).map((f) => f.say)).toEqual([expect.stringContaining("{evidence}"), expect.stringContaining("{likely}")]);
    expect(fields("outlook", shippedAs("outlook", { text: "It comes back well." }))).toEqual(["text"]);
    expect(fields("outlook", shippedAs("outlook", { tones: { brief: "It may come back." } }))).toEqual(["brief"]);
  });
  it("wants the evidence in every new paragraph that says what it is", () => {
    expect(fields("own-1", own({ place: "fibre", text: "It may be {fibre}." }))).toEqual(["text"]);
    expect(fields("own-1", own({ place: "fibre", text: "Going by {evidence}, it may be {fibre}." }))).toEqual([]);
  });
  it("wants something for {chance} to speak of", () => {
    expect(fields("own-1", own({ text: "It is {chance} that it is mould." }))).toEqual(["text"]);
    expect(fields("own-1", own({ text: "It is {chance} that it is mould.", about: "mould" }))).toEqual([]);
  });
  it("refuses a condition that can never hold", () => {
    expect(fields("own-1", own({ when: { is: { leading: ["silk"] }, not: { leading: ["silk"] } } }))).toEqual(["when"]);
  });
  it("leaves what a letter needs and what keeps people from harm switched on and unconditional", () => {
    for (const id of ["signature", "next-step", "fibre", "greeting-nameless", "cause-mould", "cause-flood", "first-aid"]) {
      expect(isNeeded(shippedParagraph(id)!), id).toBe(true);
      expect(fields(id, shippedAs(id, { off: true })), id).toContain("off");
      expect(fields(id, shippedAs(id, { when: { is: { rugs: ["several"] } } })), id).toContain("when");
    }
    expect(isNeeded(shippedParagraph("life")!)).toBe(false);
    expect(fields("life", shippedAs("life", { off: true }))).toEqual([]);
  });
});

describe("overpromisesOf", () => {
  it("finds nothing in anything that is shipped, with examples in its slots", () => {
    for (const row of SHIPPED) expect(overpromisesOf({ text: row.text, tones: row.tones ?? {} }), row.id).toEqual([]);
  });
  it("finds a promise in any tone", () => {
    expect(overpromisesOf(own({ text: "The stain will come out." }))).toHaveLength(1);
    expect(overpromisesOf(own({ tones: { warm: "We guarantee that {rug} is {fibre}." } })).length).toBeGreaterThan(0);
  });
});

describe("paragraphReading", () => {
  it("counts a slot as the words that will stand there", () => expect(paragraphReading("Dear {name},").words).toBe(3));
});
