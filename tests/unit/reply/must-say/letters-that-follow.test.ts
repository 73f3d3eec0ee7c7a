import { describe, expect, it } from "vitest";
import { newestOfWater, saidSince } from "../../../../lib/enquiry/wet-by-words";
import { composeDraft } from "../../../../lib/reply/draft";
import type { Came, RugForDraft } from "../../../../lib/reply/facts";
import { composeFollowing, composeWholeAgain } from "../../../../lib/reply/following";
import { ANSWER_HERE, openPlaces } from "../../../../lib/reply/open-places";
import { PHOTO_KINDS, UNSAID_PHOTO } from "../../../../lib/trade/questions";
import { FIRST_AID_SAID, inputOf, type OneRug } from "../make";
import { plainly, missing, said, says } from "./letter-of";

/** A letter after one of ours, while the assessment still has first aid in it. Lists written from the trade's first aid (common practice). */
const PUDDLE: OneRug = {
  sketch: { fibres: { wool: 0.8 }, evidence: [{ what: "label", value: { text: "Wool", says: "wool", pile: null }, strength: "label-typed" }], mechanisms: { "urine-fresh": 0.8 }, rest: { firstAid: FIRST_AID_SAID } },
  answers: { incidents: ["pet-urine"], liquid: "urine" }, enquiry: { wetNow: "wet" },
};
const FLOOD: OneRug = { ...PUDDLE, answers: { incidents: ["flood"] } };
const CAME: Came = { message: true, answers: false, photos: 0, tested: false };
const first = (rug: OneRug) => { const { text, paragraphs, leftOut } = composeDraft(inputOf(rug)); return { text, paragraphs: [...paragraphs, ...leftOut] }; };
const saying = (rug: OneRug, more: Partial<RugForDraft>) => { const input = inputOf(rug); return { ...input, assessments: input.assessments.map((r) => ({ ...r, ...more })) }; };
const following = (rug: OneRug, more: Partial<RugForDraft> = {}) => plainly(composeFollowing(saying(rug, more), { told: first(rug), came: CAME }).text);
const again = (rug: OneRug, more: Partial<RugForDraft> = {}, came: Partial<Came> = {}) => plainly(composeWholeAgain(saying(rug, more), { told: first(rug), came: { ...CAME, ...came } }).text);

const WHOLE_AID = [says("to press a cloth", /white cloth straight down/i), says("to do it first", /do this first/i), says("where the whole list stands", /whole list/i)];
const IF_WET = says("what holds if it is still wet, in a line", /If any of it is still wet[^.]*\./);

describe("a letter after one that told first aid", () => {
  it.each([["whatever they wrote", null], ["after “It is dry now”", "dry"]] as const)("has one line of it, %s, in the short letter and in the whole one", (_when, saidOfWater) => {
    for (const text of [following(PUDDLE, { saidOfWater }), again(PUDDLE, { saidOfWater })]) {
      expect(missing(text, [IF_WET])).toEqual([]);
      expect(said(text, WHOLE_AID)).toEqual([]);
    }
  });
  it("says it whole where their newest words speak of water again", () => {
    expect(missing(following(PUDDLE, { saidOfWater: "wet" }), WHOLE_AID)).toEqual([]);
  });
  it("still lets nobody touch what flood water was in, dry or not, and speaks of no change", () => {
    const text = following(FLOOD, { saidOfWater: "dry" });
    expect(missing(text, [says("nobody touches it", /nobody touch/i), says("children and pets", /children and pets/i)])).toEqual([]);
    expect(said(text, [says("a firm first, told already", /until then/i), says("a change", /has changed|can say more/)])).toEqual([]);
  });
});

describe("a first letter", () => {
  it("has one line of first aid once they wrote that it is dry", () => {
    const text = plainly(composeDraft(saying(PUDDLE, { saidOfWater: "dry" })).text);
    expect(missing(text, [IF_WET])).toEqual([]);
    expect(said(text, WHOLE_AID)).toEqual([]);
  });
  it("has all of it otherwise", () => expect(missing(first(PUDDLE).text, WHOLE_AID)).toEqual([]));
});

describe("the whole letter once more", () => {
  it("keeps the place for the answer, and thanks for what came, whatever came", () => {
    for (const came of [{}, { message: false, photos: 3 }, { message: false, answers: true }]) {
      const text = again(PUDDLE, {}, came);
      expect(openPlaces(text)).toEqual([ANSWER_HERE]);
      expect(text).toMatch(/Thank you for (?:your message|the new photos|your answers)\./);
      expect(text).not.toMatch(/has changed|can say more|replaces/);
    }
  });
  const TROUBLE = new RegExp(`photo of ${PHOTO_KINDS.trouble.ask}`, "i");
  const stain = (photo: string): OneRug => ({ sketch: {
    fibres: { wool: 0.5, viscose: 0.4 }, words: "about as likely as not", evidence: [{ what: "photo", value: [photo], strength: "told", decibans: 0 }], mechanisms: { "food-old": 0.7 },
    rest: { advice: { action: "ask-for-more", why: "", referTo: null, losses: [] }, nextQuestions: [{ kind: "photo", id: "trouble", ask: "", why: "" }, { kind: "photo", id: "label", ask: "", why: "" }] },
  }, enquiry: { wetNow: "no" } });
  it("asks for no photo of the trouble where photos came that nobody has named, but for the label", () => {
    const text = again(stain(UNSAID_PHOTO), {}, { photos: 3 });
    expect(text).not.toMatch(TROUBLE);
    expect(text).toMatch(/photo of the label/i);
  });
  it("asks for it where what came shows something else", () => {
    expect(again(stain("back"), {}, { photos: 1 })).toMatch(TROUBLE);
  });
});

describe("newestOfWater", () => {
  const at = (day: number, text: string) => ({ at: new Date(Date.UTC(2026, 10, day)), text });
  it("goes by the newest message that speaks of it, in any order", () => {
    expect(newestOfWater([])).toBeNull();
    expect(newestOfWater([at(1, "When can you come?")])).toBeNull();
    expect(newestOfWater([at(1, "It is dry now."), at(2, "What would it cost?")])).toBe("dry");
    expect(newestOfWater([at(3, "It leaked again, and the rug is soaking."), at(1, "It is dry now.")])).toBe("wet");
    expect(newestOfWater([at(1, "It is dry on top, but damp beneath.")])).toBe("wet");
    expect(newestOfWater([at(1, "It is not dry.")])).toBe("wet");
  });
});

describe("saidSince", () => {
  const at = (minute: number, text: string) => ({ at: new Date(Date.UTC(2026, 10, 2, 9, minute)), text });
  const answered = (isDry: boolean, minute: number) => ({ isDry, at: new Date(Date.UTC(2026, 10, 2, 9, minute)) });
  it("goes by whichever is newer, the answer or the words, and by older words only where the answer says as they do that it is dry", () => {
    expect(saidSince([at(1, "It is dry now.")], answered(false, 0))).toBe("dry");
    expect(saidSince([at(1, "It is dry now.")], answered(true, 5))).toBe("dry");
    expect(saidSince([at(1, "It is dry now.")], answered(false, 5))).toBeNull();
    expect(saidSince([at(1, "It is soaking wet.")], answered(true, 5))).toBeNull();
    expect(saidSince([at(9, "It leaked again, and the rug is soaking."), at(1, "It is dry now.")], answered(true, 5))).toBe("wet");
  });
});
