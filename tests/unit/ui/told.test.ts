import { describe, expect, it } from "vitest";
import { rulesBroken } from "../../../lib/reply/promises/check";
import { sentencesOf } from "../../../lib/reply/promises/sentences";
import { PHOTO_KINDS, QUESTIONS } from "../../../lib/trade/questions";
import { questionLetter } from "../../../lib/ui/question-letter";
import { conflictIn, shortFinding } from "../../../lib/ui/short-finding";
import { labelOf, rugFacts, toldAnswer, toldOfEnquiry, toldOfRug } from "../../../lib/ui/told";

describe("labelOf", () => {
  it("gives the words the client saw, 'not sure' for unsure, and an id it does not know as it is", () => {
    expect(labelOf("footprints", "stay")).toBe("It stays");
    expect(labelOf("footprints", "unsure")).toBe("not sure");
    expect(labelOf("footprints", "from-an-older-table")).toBe("from-an-older-table");
  });
});

describe("toldOfRug", () => {
  it("lists label, seller's words and answers, and leaves out what was not answered", () => {
    expect(toldOfRug({ labelText: "100 % viscose", sellerWords: "pure silk", incidents: ["spill", "sun"], treatments: [] })).toEqual([
      { ask: "The label, as typed", says: ["“100 % viscose”"] },
      { ask: "In the seller's words", says: ["pure silk"] },
      { ask: "What happened", says: ["Food or drink was spilled", "It lies in the sun"] },
    ]);
  });
  it("calls no words a seller's of a rug that came as a gift", () => {
    expect(toldOfRug({ sellerWords: "pure silk", sellerSaid: "silk", boughtWhere: "gift" }).map((t) => t.ask)).toEqual(["In words passed on", "It was called", "Came from"]);
    expect(toldOfRug({ sellerWords: "pure silk", boughtWhere: "online" }).map((t) => t.ask)).toEqual(["In the seller's words", "Came from"]);
  });
  it("says that there is no label", () => {
    expect(toldOfRug({ labelText: "silk" }, { labels: ["“100% WOOL”, read from the photo, agreed by the client"] }).map((t) => [t.ask, t.says])).toEqual([
      ["The label", ["“100% WOOL”, read from the photo, agreed by the client"]], ["The label, as typed", ["“silk”"]],
    ]);
    expect(toldOfRug({ labelFound: "none" })[0]?.says).toEqual(["There is no label"]);
  });
  it("tells when it happened with the day it was told on, and no other answer", () => {
    const told = toldOfRug({ since: "hour", treatments: ["nothing"] }, { sinceToldOn: "27 November 2026" });
    expect(told.map((t) => t.says)).toEqual([["Within the last hour, as told on 27 November 2026"], ["Nothing yet"]]);
  });
  it("does not repeat the questions of the enquiry", () => {
    expect(toldOfEnquiry({ wetNow: "no" })).toEqual([{ ask: "Wet now", says: ["No, it is dry"] }]);
    expect(toldOfRug({})).toEqual([]);
  });
});

const METRIC = { locale: "en-GB", areaUnit: "m2" } as const;
describe("toldAnswer", () => {
  it("tells one answer by its head, in the words the client saw and the workshop's figures", () => {
    const given = { wetNow: "no", labelText: "100% silk", liquid: "coffee-tea", incidents: ["spill", "sun"], price: 4000, currency: "GBP", boughtYear: 2019, widthCm: 170, lengthCm: 240 } as const;
    const told = (of: Parameters<typeof toldAnswer>[0]) => toldAnswer(of, { ...given, incidents: [...given.incidents] }, METRIC);
    expect(told("liquid")).toEqual({ ask: "What got on it", says: ["Coffee or tea"] });
    expect(told("wetNow").says).toEqual(["No, it is dry"]);
    expect(told("incidents").says).toEqual(["Food or drink was spilled", "It lies in the sun"]);
    expect((["label", "price", "boughtYear", "size"] as const).map((of) => told(of).says)).toEqual([["100% silk"], ["£4,000"], ["2019"], ["170 × 240 cm"]]);
  });
  it("says nothing of what was not answered", () => {
    for (const of of ["label", "price", "boughtYear", "size", "liquid", "changes"] as const) expect(toldAnswer(of, {}, METRIC).says, of).toEqual([]);
  });
});

describe("rugFacts", () => {
  it("tells year, price, place, size and the price per square metre", () => {
    expect(rugFacts({ boughtYear: 2024, price: 4080, currency: "GBP", boughtPlace: "Harrow & Daughters", widthCm: 170, lengthCm: 240 }, METRIC))
      .toBe("Bought 2024 for £4,080 at Harrow & Daughters. 170 × 240 cm, £1,000 a square metre.");
  });
  it("tells the price by the square foot where the workshop reckons so", () => {
    expect(rugFacts({ price: 1000, currency: "USD", widthCm: 304.8, lengthCm: 304.8 }, { locale: "en-US", areaUnit: "sqft" })).toContain("$10.00 a square foot");
  });
  it("says nothing of what is not known", () => {
    expect(rugFacts({}, METRIC)).toBe("");
    expect(rugFacts({ boughtWhere: "online" }, METRIC)).toBe("Bought online.");
    expect(rugFacts({ boughtWhere: "gift" }, METRIC)).toBe("");
    expect(rugFacts({ price: 900, currency: "EUR", widthCm: 100 }, METRIC)).toBe("Bought for €900.");
  });
});

describe("shortFinding", () => {
  it("heads an answer with its question in a word or two", () => {
    expect(shortFinding({ what: "shine", value: "two-tone", strength: "told", from: "client" }, METRIC)).toBe("Shine: light from one end, dark from the other");
    expect(shortFinding({ what: "treatedBy", value: "owner", strength: "told", from: "client" }, METRIC)).toBe("By whom: I did, or someone at home");
  });
  it("joins several answers", () => {
    expect(shortFinding({ what: "changes", value: ["stiff", "paler"], strength: "told", from: "client" }, METRIC)).toBe("How it changed: the pile is stiff or matted; paler, as if bleached");
  });
  it("tells measures and prices by the workshop's unit and locale", () => {
    const feet = { locale: "en-US", areaUnit: "sqft" } as const;
    const told = (what: string, value: Parameters<typeof shortFinding>[0]["value"]) => [METRIC, feet].map((figures) => shortFinding({ what, value, strength: "told", from: "client" }, figures));
    // 100 per m² is 9.29 per square foot (0.09290304 m², exact); 300 cm are 118.11 in; 929.03 cm² are 144 sq in; 3.048 m are 10 ft.
    expect(told("price-per-m2", { amount: 100, currency: "USD", year: 2019 })).toEqual(["The price was US$100 a square metre in 2019", "The price was $9.29 a square foot in 2019"]);
    expect(told("size", { widthCm: 200, lengthCm: 300 })).toEqual(["It measures 200 × 300 cm", "It measures 6 ft 7 in × 9 ft 10 in"]);
    expect(told("damaged-area", { cm2: 929.03, share: 0.02, uncertainty: 64.516 })[1]).toBe("The damaged places drawn on the photo take 144 sq in (2 % of the rug, give or take 10 sq in)");
    expect(told("cut-down", { bindingM: 3.048 })[1]).toBe("The rug was planned to be cut down, with 10 ft of new edges");
  });
});

describe("conflictIn", () => {
  it("tells a price that does not fit in the workshop's unit, as the rug's facts beside it do: it stood by the square metre beside a price by the square foot", () => {
    const [seller, price] = [{ what: "sellerSaid", value: "silk", strength: "told", from: "client" }, { what: "price-per-m2", value: { amount: 192, currency: "GBP", year: 2023 }, strength: "told", from: "client" }] as const;
    const conflict = { between: ["sellerSaid", "price"] as [string, string], staff: "These do not agree: the seller called it “Silk”; the price was £192 a square metre in 2023.", client: "" };
    expect(conflictIn(conflict, [seller, price], { locale: "en-GB", areaUnit: "sqft" })).toBe("These do not agree: the seller called it “Silk”; the price was £17.84 a square foot in 2023.");
    expect(conflictIn(conflict, [seller, price], METRIC)).toBe(conflict.staff);
  });
});

describe("questionLetter", () => {
  const letter = { reference: "K7-204", name: "Ada Birch", signature: "Kind regards\nThe workshop", workshop: "The workshop", rang: false, hasPage: true };
  const why = "";
  it("asks for photos and answers in order, and never for a bench test", () => {
    const { subject, text } = questionLetter({ ...letter, questions: [
      { id: "label", kind: "photo", ask: "Photo: the label", why }, { id: "bench", kind: "bench-test", ask: "Burn a thread", why }, { id: "liquid", kind: "question", ask: "What was it that got on it?", why },
    ] });
    expect(subject).toBe("A question about your rug (K7-204)");
    expect(text).toMatch(/^Dear Ada Birch,\n\n/);
    expect(text).toContain("– A photo of the label. Usually sewn under a corner; close enough to read it.\n– What was it that got on it?");
    expect(text).not.toContain("Burn");
    expect(text).toMatch(/Kind regards\nThe workshop$/);
  });
  it("greets as letters do, and nobody by an initial", () => {
    const greeted = (name: string) => questionLetter({ ...letter, name, questions: [] }).text.split("\n")[0];
    expect([greeted("Mrs Edith Farrant"), greeted("J")]).toEqual(["Dear Mrs Farrant,", "Good day,"]);
  });
  it("brings along the answers of a question that means nothing without them", () => {
    const { text } = questionLetter({ ...letter, questions: [{ id: "household", kind: "question", ask: "Does any of this apply?", why }] });
    expect(text).toContain("– Does any of this apply? Perhaps: a cat or a dog lives here; small children play on it;");
    expect(text).not.toContain("none of these");
  });
  it("thanks whoever rang for ringing, and speaks of a link to those alone who have one", () => {
    const endings = ([rang, hasPage]: [boolean, boolean]) => questionLetter({ ...letter, questions: [], rang, hasPage }).text.match(/(?<=Thank you for )[^.]*|[^.]*\blink\b[^.]*/g);
    expect(endings([false, true])).toEqual(["writing to us about your rug", " You can answer this letter, or use the link in our first one"]);
    expect(endings([true, false])).toEqual(["ringing us about your rug"]);
  });
  it("promises nothing and advises nothing, whatever it asks for", () => {
    const photos = Object.entries(PHOTO_KINDS).map(([id, { ask }]) => ({ id, kind: "photo" as const, ask, why }));
    const questions = Object.entries(QUESTIONS).map(([id, { ask }]) => ({ id, kind: "question" as const, ask, why }));
    for (const asked of [...photos, ...questions]) {
      const { text } = questionLetter({ ...letter, questions: [asked] });
      expect(sentencesOf(text).filter((s) => rulesBroken(s).length > 0), asked.id).toEqual([]);
    }
  });
  it("leaves room for a question where none is known to help, and signs with the workshop's name where there is no signature", () => {
    const { text } = questionLetter({ ...letter, signature: "", questions: [] });
    expect(text).toContain("\n\n– \n\n");
    expect(text).toMatch(/Kind regards\nThe workshop$/);
  });
});
