import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changesBetween, isOpen, takenIn, type Told } from "../../../lib/reply/changes";
import { composeDraft, type ComposedDraft } from "../../../lib/reply/draft";
import type { Came } from "../../../lib/reply/facts";
import { composeFollowing } from "../../../lib/reply/following";
import { ANSWER_HERE, openPlaces, openPlacesSay } from "../../../lib/reply/open-places";
import { piecesOf } from "../../../lib/reply/pieces";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import { anyInput } from "./any-input";
import { CASES } from "./cases";
import { inputOf, range } from "./make";

const MESSAGE: Came = { message: true, answers: false, photos: 0, tested: false };
const toldBy = ({ text, paragraphs, leftOut }: ComposedDraft): Told => ({ text, paragraphs: [...paragraphs, ...leftOut] });
const WINE = CASES["wool with an old coffee stain"]!;
const first = inputOf(WINE);
const priced = (low: number, high: number) => inputOf({ ...WINE, sketch: { ...WINE.sketch, rest: { ...WINE.sketch.rest, money: { currency: "GBP", clean: range(low, (low + high) / 2, high), cutDown: null, replace: null, valueToday: null } } } });
const SHORT = `Dear Ana Example,\n\nThank you for your message.\n\n${ANSWER_HERE}\n\nWith kind regards,\nMira Quill\nLantern Yard Rug Workshop`;

describe("composeFollowing", () => {
  it("greets, thanks, leaves the answer open and closes where nothing changed", () => {
    expect(composeFollowing(first, { told: toldBy(composeDraft(first)), came: MESSAGE }).text).toBe(SHORT);
  });

  it("names what came, in one sentence, and thanks for nothing where nothing came", () => {
    const thanks = (came: Partial<Came>) => composeFollowing(first, { told: toldBy(composeDraft(first)), came: { ...MESSAGE, message: false, ...came } }).text.split("\n\n")[1];
    expect(thanks({ photos: 1 })).toBe("Thank you for the new photo.");
    expect(thanks({ message: true, answers: true, photos: 2 })).toBe("Thank you for your message, your answers and the new photos.");
    expect(thanks({})).toBe(ANSWER_HERE);
  });

  it("says a price that moved as a change, and nothing else again", () => {
    const { text, paragraphs } = composeFollowing(priced(65, 80), { told: toldBy(composeDraft(first)), came: MESSAGE });
    expect(text.split("\n\n").slice(1, -2)).toEqual([
      "Thank you for your message. With what you have sent us since, our answer has changed.",
      "Cleaning would cost about £65 to £80. That is an estimate; we agree price and limits with you before we begin.",
    ]);
    expect(paragraphs.map((p) => p.id)).toEqual(["greeting", "thanks", "since-came", "price-clean", "signature"]);
  });

  it("says the first sentences of the answer again, with their limits, once one of them changed", () => {
    const after = inputOf({ ...WINE, sketch: { ...WINE.sketch, words: "likely" } });
    const { text } = composeFollowing(after, { told: toldBy(composeDraft(first)), came: { ...MESSAGE, tested: true } });
    expect(text).toContain("Since our last letter there is a test to go by, and our answer has changed.\n\nGoing by the label as you typed it (“Wool”) and what you told us, your grey rug is likely wool.");
    expect(text).toMatch(/15–75.%.*only a test of the pile would settle it/);
    expect(text).toContain("hidden corner");
    expect(text).not.toContain("£150");
  });

  it("takes a paragraph that was only worded anew, with the same facts, for no news", () => {
    const { text, paragraphs, leftOut } = composeDraft(first);
    const elsewise = (p: (typeof paragraphs)[number]) => ({ ...p, version: 1, text: `Earlier: ${p.text}`, said: `Earlier: ${p.said}` });
    const told = { text: text.toUpperCase(), paragraphs: [...paragraphs, ...leftOut].map(elsewise) };
    expect(composeFollowing(first, { told, came: MESSAGE }).text).toBe(SHORT);
  });

  it("knows by its words what a letter said of which no more was kept", () => {
    const { text, paragraphs } = composeDraft(first);
    const told = { text, paragraphs: paragraphs.map((p) => ({ ...p, said: null })) };
    expect(composeFollowing(first, { told, came: MESSAGE }).text).toBe(SHORT);
  });

  it("writes, over 500 pairs of assessments, one open place, the same letter again, and never a judgement without its limits", () => {
    fc.assert(fc.property(anyInput, anyInput, (a, b) => {
      const before = composeDraft({ ...b, assessments: a.assessments.slice(0, b.assessments.length) });
      const since = { told: toldBy(before), came: MESSAGE };
      const letter = composeFollowing(b, since);
      expect(openPlaces(letter.text)).toEqual([ANSWER_HERE]);
      expect(composeFollowing(b, since)).toEqual(letter);
      expect(checkLetter(letter.text, knownOf(b.assessments))).toEqual([]);
      for (const { text } of [composeFollowing(b, { told: toldBy(composeDraft(b)), came: MESSAGE })]) expect(text).not.toMatch(/our answer has changed|Going by/);
    }), { numRuns: 500 });
  }, 240_000);
});

describe("openPlaces", () => {
  it("are whatever stands in braces on one line", () => {
    expect(openPlaces("Dear Ana,\n{Your answer} and {telephone}.")).toEqual(["{Your answer}", "{telephone}"]);
    expect(openPlaces("Dear Ana,\n{ not\nclosed } {}")).toEqual([]);
    expect(openPlacesSay("Yes, on Thursday.")).toBeNull();
    expect(openPlacesSay("{a}")).toContain("an open place: {a}.");
    expect(openPlacesSay("{a} {b}")).toContain("2 open places: {a}.");
  });
});

describe("changesBetween", () => {
  const changes = (before: typeof first, after: typeof first) => changesBetween(toldBy(composeDraft(before)), composeDraft(after), piecesOf(after).readsToday);

  it("names what would read otherwise, with its words then and now, and nothing where the assessment is the same", () => {
    expect(changes(first, first)).toEqual([]);
    expect(changes(first, priced(65, 80))).toEqual([{
      place: "Price",
      was: "Cleaning would cost about £150 to £240. That is an estimate; we agree price and limits with you before we begin.",
      now: "Cleaning would cost about £65 to £80. That is an estimate; we agree price and limits with you before we begin.",
    }]);
  });

  it("names what would no longer stand, and what would be new", () => {
    const without = inputOf({ ...WINE, sketch: { ...WINE.sketch, rest: { ...WINE.sketch.rest, money: null } } });
    expect(changes(first, without)).toMatchObject([{ place: "Price", now: null }]);
    expect(changes(without, first)).toMatchObject([{ place: "Price", was: null }]);
  });

  it("is the same letter as today once every change is taken in, over 500 pairs", () => {
    fc.assert(fc.property(anyInput, anyInput, (a, b) => {
      const n = b.assessments.length;
      if (a.assessments.length < n) return;
      const before = { ...b, assessments: a.assessments.slice(0, n) };
      const all = changes(before, b);
      const text = all.reduce((letter, change) => takenIn(change, letter), composeDraft(before).text);
      expect(all.filter((c) => c.now !== null && !text.includes(c.now))).toEqual([]);
    }), { numRuns: 500 });
  }, 120_000);
});

describe("takenIn", () => {
  const change = { place: "Price", was: "It costs £65 to £310.", now: "It costs £65." };
  it("puts the new words in place of the old ones, and leaves the rest", () => {
    expect(takenIn(change, "Dear Ana,\n\nYes. It costs £65 to £310. Bring it.\n\nMira")).toBe("Dear Ana,\n\nYes. It costs £65. Bring it.\n\nMira");
  });
  it("gives them a block of their own before the last one where the old ones were written otherwise", () => {
    expect(takenIn(change, "Dear Ana,\n\nAbout £300.\n\nMira")).toBe("Dear Ana,\n\nAbout £300.\n\nIt costs £65.\n\nMira");
  });
  it("takes out what no longer holds, without a gap", () => {
    expect(takenIn({ ...change, now: null }, "Dear Ana,\n\nIt costs £65 to £310.\n\nMira")).toBe("Dear Ana,\n\nMira");
    expect(takenIn({ ...change, now: null }, "Yes. It costs £65 to £310. Bring it.")).toBe("Yes. Bring it.");
  });
  it("settles a change, which is open while the old words stand or the new ones do not", () => {
    expect(isOpen(change, "It costs £65 to £310.")).toBe(true);
    expect(isOpen(change, "About £300.")).toBe(true);
    expect(isOpen(change, "It costs £65.")).toBe(false);
    expect(isOpen({ ...change, now: null }, "About £300.")).toBe(false);
  });
});
