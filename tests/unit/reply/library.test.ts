import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { libraryOf, readParagraphKey, SHIPPED, textIn, type OwnVersion, type Wording } from "../../../lib/reply/library";
import { PARAGRAPHS, PLACES } from "../../../lib/reply/paragraphs";
import { inputOf } from "./make";

const WORDING: Wording = { place: "signature", text: "Yours, {signature}", tones: {}, when: {}, about: null, order: 100, off: false };
const own = (id: string, wording: Partial<Wording> | null, version = 1): OwnVersion => ({ language: "en", id, version, wording: wording && { ...WORDING, ...wording } });
const letter = (versions: OwnVersion[], tone?: "warm" | "brief") => {
  const input = inputOf({ sketch: { fibres: { wool: 0.9 } } });
  return composeDraft({ ...input, workshop: { ...input.workshop, ...(tone ? { tone } : {}) }, library: libraryOf(versions) });
};
const ids = (versions: OwnVersion[]) => libraryOf(versions).map((r) => r.id);

describe("libraryOf", () => {
  it("is the shipped library where the workshop wrote nothing", () => {
    expect(ids([]).sort()).toEqual(PARAGRAPHS.map((p) => p.id).sort());
    expect(libraryOf([]).every((r) => r.from === "shipped" && !r.off)).toBe(true);
  });
  it("stands place by place, in the order of the places", () => {
    const places = [...new Set(libraryOf([]).map((r) => r.place))];
    expect(places).toEqual(PLACES.map((p) => p.id).filter((id) => id !== "notes"));
  });
  it("tries shipped rows of a place in the order they ship in", () => {
    for (const place of PLACES) expect(libraryOf([]).filter((r) => r.place === place.id).map((r) => r.id)).toEqual(PARAGRAPHS.filter((r) => r.place === place.id).map((r) => r.id));
  });
  it("puts the workshop's version in place of the shipped one, with its own number", () => {
    const row = libraryOf([own("signature", {}, 4)]).find((r) => r.id === "signature");
    expect(row).toMatchObject({ text: "Yours, {signature}", version: 4, from: "workshop" });
    expect(ids([own("signature", {})])).toHaveLength(SHIPPED.length);
  });
  it("goes back to the shipped text where the newest version has no wording", () => {
    expect(libraryOf([own("signature", null, 5)]).find((r) => r.id === "signature")).toMatchObject({ version: 1, from: "shipped" });
  });
  it("adds paragraphs of the workshop's own where their order puts them", () => {
    const greeting = (order: number) => libraryOf([own("own-1", { place: "greeting", order })]).filter((r) => r.place === "greeting").map((r) => r.id);
    expect([greeting(50)[0], greeting(150)[1], greeting(300)[2]]).toEqual(["own-1", "own-1", "own-1"]);
  });
});

describe("a letter from the workshop's own library", () => {
  it("uses the workshop's words, and says which version of which it used", () => {
    const { text, paragraphs } = letter([own("signature", {}, 3)]);
    expect(text).toMatch(/\n\nYours, Mira Quill\n/);
    expect(paragraphs.at(-1)).toEqual({ language: "en", id: "signature", version: 3, from: "workshop", text: "Yours, {signature}", place: "signature", rug: null, said: "Yours, Mira Quill\nLantern Yard Rug Workshop", stands: true });
    expect(paragraphs[0]).toMatchObject({ language: "en", id: "greeting", version: 1, from: "shipped", text: "Dear {name}," });
  });
  it("leaves out what is switched off", () => expect(letter([own("signature", { off: true })]).text).not.toMatch(/Mira Quill/));
  it("uses a note of the workshop's own before the next step", () => {
    expect(letter([own("own-1", { place: "notes", text: "We are closed in August." })]).text).toMatch(/We are closed in August\.\n\n.*(?:inspection|answer this letter)/);
  });
  it("leaves out a paragraph whose slot has no value here instead of leaving the slot open", () => {
    const { text } = letter([own("own-1", { place: "notes", text: "It would cost {clean}." }), own("own-2", { place: "notes", text: "Call us, {name}." })]);
    expect(text).not.toMatch(/It would cost|[{}]/);
    expect(text).toContain("Call us, Ana Example.");
  });
  it("reads no slots inside what people wrote", () => {
    const input = inputOf({ sketch: { fibres: { wool: 0.9 } } });
    expect(composeDraft({ ...input, workshop: { ...input.workshop, signature: "Nell {name}" } }).text).toMatch(/Nell \{name\}$/);
  });
  it("speaks in the workshop's tone where a paragraph has a variant, and in its own words where it has none", () => {
    const versions = [own("signature", { tones: { warm: "Warmly, {signature}" } })];
    expect([letter(versions), letter(versions, "warm"), letter(versions, "brief")].map((l) => /(\w+), Mira/.exec(l.text)?.[1])).toEqual(["Yours", "Warmly", "Yours"]);
    expect(textIn({ ...SHIPPED[0]!, tones: { brief: "Hello." } }, "brief")).toBe("Hello.");
  });
});

describe("the language of a paragraph", () => {
  it("is English where its key names none, and nothing where there is no reviewed set of it", () => {
    expect([readParagraphKey("greeting"), readParagraphKey("en:greeting"), readParagraphKey("own-5f:1"), readParagraphKey("cy:greeting")]).toEqual([
      { language: "en", id: "greeting" }, { language: "en", id: "greeting" }, { language: "en", id: "own-5f:1" }, null,
    ]);
    expect(SHIPPED.every((row) => row.language === "en")).toBe(true);
  });
});
