import { describe, expect, it } from "vitest";
import { asksOf } from "../../../lib/reply/asks";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { aidFits, isHandsOff, ownAidOf } from "../../../lib/reply/happened";
import type { DraftInput } from "../../../lib/reply/pieces";
import type { RugAnswers } from "../../../lib/trade/questions";
import { assessmentOf, FIRST_AID_SAID, inputOf } from "./make";

const FLOODED: RugAnswers = { incidents: ["flood"], since: "hour" };
const MOULDY: RugAnswers = { liquid: "coffee-tea", changes: ["spots"] };
const GAS: RugAnswers = { liquid: "wine", since: "hour", treatments: ["bleach", "vinegar-soda"] };
const WINE: RugAnswers = { incidents: ["spill"], liquid: "wine", since: "hour" };
const SOAKED: RugAnswers = { incidents: ["water"], liquid: "water", since: "hour" };

const sketchOf = (mould: number) => ({ fibres: { wool: 0.93 }, mechanisms: { mould }, rest: { firstAid: FIRST_AID_SAID } });
const aided = (answers: RugAnswers, mould = 0) => ({ answers, assessment: assessmentOf(sketchOf(mould)) });
/** From where a letter warns of mould that nobody has told of, and just below. */
const [LIKELY, UNLIKELY] = [0.33, 0.32];
const MUSTY: RugAnswers = { incidents: ["damp"], changes: ["smell"] };

/** All of them wet now. `mould`: how likely it is in the first. */
function inputOfMould(mould: number, ...rugs: RugAnswers[]): DraftInput {
  const all = rugs.map((answers, at) => inputOf({ sketch: sketchOf(at === 0 ? mould : 0), answers, enquiry: { wetNow: "wet", reason: "just-happened" } }));
  return { ...(all[0] as DraftInput), assessments: all.flatMap((i) => i.assessments) };
}
const inputAbout = (...rugs: RugAnswers[]): DraftInput => inputOfMould(0, ...rugs);
const letterTo = (...rugs: RugAnswers[]) => composeDraft(inputAbout(...rugs)).text;
/** What stands before anything is said of the rugs at length. */
const top = (letter: string) => letter.split(/\n\n(?:First, for each|Rug 1:)/u)[0] ?? "";
const PRESS = /^– Press a plain white cloth/mu;
/** The blocks that tell somebody to press a cloth on a rug. */
const pressing = (letter: string) => top(letter).split("\n\n").filter((block) => PRESS.test(block));

describe("first aid of several rugs, one of which nobody may touch", () => {
  it.each<[string, RugAnswers]>([["flooded", FLOODED], ["mouldy", MOULDY], ["under what may be gas", GAS]])("tells how to blot fresh wine on the other, in its own block, and of the one that is %s only that nobody touches it", (_, held) => {
    for (const [letter, wine, other] of [[letterTo(held, WINE), 2, 1], [letterTo(WINE, held), 1, 2]] as const) {
      expect(pressing(letter)).toHaveLength(1);
      expect(pressing(letter)[0]).toMatch(new RegExp(`Only if rug ${wine} lies in a room that no flood water, mould or fumes reached:\\n(?:– [^\\n]+\\n?)+$`, "u"));
      expect(top(letter).split("\n\n")).toContain(`Please let nobody touch rug ${other}.`);
      expect(letter).not.toContain("what stands above comes first");
    }
  });
  it("lets nobody blot one of which nothing was told: the flood may have got into it too", () => {
    const letter = letterTo(FLOODED, {});
    expect(pressing(letter)).toEqual([]);
    expect(letter).not.toMatch(/lies in a room/);
    expect(letterTo(FLOODED, {}, WINE)).toMatch(/Please let nobody touch rugs 1 and 2\.\n\nOnly if rug 3 lies/u);
  });
  it("says it once of all where each may be touched, or none", () => {
    expect(pressing(letterTo(WINE, SOAKED))).toHaveLength(1);
    expect(pressing(letterTo(FLOODED, MOULDY))).toEqual([]);
    expect(letterTo(FLOODED, MOULDY)).not.toMatch(/lies in a room|let nobody touch rug\b/);
  });
  it("names two rugs that are alike in all else apart", () => {
    expect(pressing(letterTo(GAS, WINE))).toHaveLength(1);
  });
  it("stands in the letter that follows too, as what holds while it is still wet", () => {
    const { text, paragraphs, leftOut } = composeDraft(inputAbout(FLOODED));
    const next = composeFollowing(inputAbout(FLOODED, WINE), { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text;
    expect(next).toMatch(/Only if rug 2 [^\n]*:\n– Press a plain white cloth/u);
  });
  it("stands once in a letter that has nothing else to say of any rug, as the greeting and the end do", () => {
    for (const held of [FLOODED, MOULDY, GAS]) for (const rugs of [[held, WINE], [WINE, held], [held, WINE, {}]]) {
      const { text, paragraphs, leftOut } = composeDraft(inputAbout(...rugs));
      const next = composeFollowing(inputAbout(...rugs), { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: true, answers: false, photos: 0, tested: false } }).text;
      expect(next).not.toMatch(/Rug \d:/u);
      for (const once of [/^Dear Ana/gmu, /^Please let nobody touch/gmu, /^Only if rug/gmu, /^Mira Quill$/gmu]) expect(next.match(once)).toHaveLength(1);
    }
  });
});

describe("first aid for a rug in which mould is likely, though nobody told of any", () => {
  const letter = (mould: number, ...rugs: RugAnswers[]) => composeDraft(inputOfMould(mould, ...rugs)).text;
  it("lets nobody press a cloth on what the same letter says not to touch", () => {
    expect(letter(LIKELY, MUSTY)).toMatch(/– Sewage, chemicals or mould: do not touch it[^]*that mould grows in it[^]*please do not touch/u);
    expect(letter(LIKELY, MUSTY)).not.toMatch(PRESS);
    expect(letter(UNLIKELY, MUSTY)).toMatch(PRESS);
    expect(letter(UNLIKELY, MUSTY)).not.toContain("do not touch");
  });
  it("tells how to blot wine on another beside it, and of this one that nobody touches it", () => {
    expect(pressing(letter(LIKELY, MUSTY, WINE))).toEqual([expect.stringMatching(/^Only if rug 2 lies in a room/u)]);
    expect(top(letter(LIKELY, MUSTY, WINE)).split("\n\n")).toContain("Please let nobody touch rug 1.");
    expect(pressing(letter(UNLIKELY, MUSTY, WINE))).toEqual([expect.not.stringMatching(/Only if/u)]);
  });
  it("has nobody go in for a photo, nor turn up the corner of any that is wet for the label", () => {
    const [LABEL, WHOLE] = (["label", "whole"] as const).map((id) => ({ id, kind: "photo" as const, ask: "", why: "" }));
    const asks = (mould: number) => { const rug = aided(MUSTY, mould); return asksOf({ ...rug, assessment: { ...rug.assessment, nextQuestions: [LABEL!, WHOLE!] } }, []).photos; };
    expect([asks(LIKELY), asks(UNLIKELY)]).toEqual([[], [WHOLE]]);
  });
  it("is not to be touched from where the letter warns of it", () => {
    expect([isHandsOff(aided(MUSTY, LIKELY)), isHandsOff(aided(MUSTY, UNLIKELY))]).toEqual([true, false]);
  });
});

describe("the list of first aid for several rugs", () => {
  const fits = (...rugs: RugAnswers[]) => aidFits(rugs.map((answers) => aided(answers))).map((line) => line.fits);
  it("warns of what any of them calls for, whichever comes first", () => {
    expect(fits(WINE)).not.toContain("much-water");
    expect(fits(WINE, SOAKED)).toContain("much-water");
    for (const letter of [letterTo(WINE, SOAKED), letterTo(SOAKED, WINE)]) expect(top(letter)).toContain("– A wet plug, socket or heated floor: keep off");
  });
  it("allows only what all of them allow", () => {
    expect([fits(WINE, SOAKED).includes("may-touch"), fits(WINE, MOULDY).includes("may-touch"), fits(WINE, GAS).includes("may-stay")]).toEqual([true, false, false]);
  });
});

describe("ownAidOf", () => {
  const own = (...rugs: RugAnswers[]) => ownAidOf(rugs.map((answers, at) => ({ ...aided(answers), at }))).map(({ at }) => at);
  it("is of what may be touched beside what may not, and of nothing else", () => {
    expect([FLOODED, MOULDY, GAS, WINE, {}].map((answers) => isHandsOff(aided(answers)))).toEqual([true, true, true, false, false]);
    expect([own(FLOODED, WINE, {}, MOULDY, SOAKED), own(WINE, SOAKED), own(FLOODED, GAS), own()]).toEqual([[1, 4], [], [], []]);
  });
});
