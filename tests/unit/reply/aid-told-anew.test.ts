import { describe, expect, it } from "vitest";
import { FIRST_AID } from "../../../lib/trade/first-aid";
import type { RugAnswers } from "../../../lib/trade/questions";
import { composeDraft, type ComposedDraft } from "../../../lib/reply/draft";
import { composeFollowing, composeWholeAgain } from "../../../lib/reply/following";
import { SHIPPED } from "../../../lib/reply/library";
import type { DraftInput } from "../../../lib/reply/pieces";
import { FIRST_AID_SAID, inputOf, WORKSHOP } from "./make";

const WINE: RugAnswers = { incidents: ["spill"], liquid: "wine", since: "hour" };
const SPOTS: RugAnswers = { ...WINE, changes: ["spots"] };
const PRESS = /^– Press a plain white cloth/mu;
const KNOWN = "our first aid still holds";
const rugOf = (answers: RugAnswers, isWet = true): DraftInput => inputOf({ sketch: { fibres: { wool: 0.93 }, rest: { firstAid: isWet ? FIRST_AID_SAID : null } }, answers, enquiry: { wetNow: "wet", reason: "just-happened" } });
const about = (...rugs: DraftInput[]): DraftInput => ({ ...rugs[0]!, assessments: rugs.flatMap(({ assessments }) => assessments) });
/** The last of several letters, each of which follows the one before. `how`: how those after the first are written. */
const lastOf = ([first, ...more]: readonly [DraftInput, ...DraftInput[]], how = composeFollowing): ComposedDraft => more.reduce((before, now) => {
  const { text, paragraphs, leftOut } = before;
  return how(now, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } });
}, composeDraft(first));
const after = (...inputs: readonly [DraftInput, ...DraftInput[]]): string => lastOf(inputs).text;

describe("first aid in a letter that follows", () => {
  it("is told anew of a rug that nobody may touch by now, where we had said to press a cloth on it, and not once more after that", () => {
    const text = after(rugOf(WINE), rugOf(SPOTS));
    expect(text).toMatch(/mould: do not touch it/u);
    expect(text).not.toContain(KNOWN);
    expect(text).not.toMatch(PRESS);
    expect(after(rugOf(SPOTS), rugOf(SPOTS))).toContain(KNOWN);
    expect(after(rugOf(WINE), rugOf(WINE))).toContain(KNOWN);
  });
  it("is told anew where it was flood water by what they had told, and is other water that may be blotted; while any of them had a flood it is not", () => {
    const [flood, water]: RugAnswers[] = [{ incidents: ["flood"], since: "hour" }, { incidents: ["water"], since: "hour" }];
    expect(composeDraft(rugOf(flood!)).text).toMatch(/not even to blot it/u);
    const text = after(rugOf(flood!), rugOf(water!));
    expect(text).toMatch(PRESS);
    expect(text).toMatch(/flood water in it no longer holds/u);
    expect(text).not.toContain(KNOWN);
    expect(after(rugOf(water!), rugOf(water!))).toContain(KNOWN);
    expect(after(rugOf(flood!), rugOf(flood!))).not.toMatch(PRESS);
    expect(after(about(rugOf(flood!), rugOf(flood!)), about(rugOf(flood!), rugOf(water!)))).toMatch(/once it is dry too: please let nobody touch the rug/u);
  });
  it("is told anew where the cloth was pressed on one of several, by lines of its own", () => {
    expect(after(about(rugOf(SPOTS), rugOf(WINE)), about(rugOf(SPOTS), rugOf(SPOTS)))).not.toContain(KNOWN);
    expect(after(about(rugOf(SPOTS), rugOf(WINE)), about(rugOf(SPOTS), rugOf(WINE)))).toContain(KNOWN);
  });
  it("is not told anew for what may be gas on another rug that is dry, of which it says nothing", () => {
    const DRY: RugAnswers = { incidents: ["pet-urine"], treatments: ["bleach"], since: "two-days" };
    const both = about(rugOf(WINE), rugOf(DRY, false));
    const text = after(both, both);
    expect(text).toContain(KNOWN);
    expect(text).not.toContain(FIRST_AID.gas.line(WORKSHOP.emergencyNumber));
  });
  it("is told anew where it was flood water by what they tell now, which no letter before warned of, and not once more after that", () => {
    const [water, mould, flood, still]: RugAnswers[] = [{ incidents: ["water"] }, { incidents: ["water"], changes: ["spots"] }, { incidents: ["flood"] }, { incidents: ["flood"], changes: ["spots"] }];
    for (const before of [[rugOf(water!), rugOf(water!)], [rugOf(mould!)], [rugOf(water!), rugOf(mould!), rugOf(mould!)]] as [DraftInput, ...DraftInput[]][]) {
      const text = after(...before, rugOf(flood!));
      for (const line of [/ask a flood-damage firm/u, /Keep everybody[^.]* out of the room/u, /Mould can start within two days/u, /Leave the rug lying/u]) expect(text).toMatch(line);
      for (const then of [flood!, still!]) expect(after(...before, rugOf(flood!), rugOf(then), rugOf(then))).not.toMatch(/ask a flood-damage firm/u);
    }
  });
  it("is told anew of a rug that nobody may touch by now, where a letter before the last had said to press a cloth on it", () => {
    for (const how of [composeFollowing, composeWholeAgain]) {
      const { text } = lastOf([rugOf(WINE), rugOf(WINE), rugOf(WINE), rugOf(SPOTS)], how);
      expect(text).toMatch(/mould: do not touch it/u);
      expect(text).not.toContain(KNOWN);
      expect(lastOf([rugOf(WINE), rugOf(WINE), rugOf(SPOTS), rugOf(SPOTS), rugOf(SPOTS)], how).text).toContain(KNOWN);
    }
    const both = about(rugOf(SPOTS), rugOf(WINE));
    expect(after(both, both, both)).toContain(KNOWN);
    expect(after(both, both, about(rugOf(SPOTS), rugOf(SPOTS)))).not.toContain(KNOWN);
  });
  it("goes by the newest telling of it: what an older one said of a cloth or of flood water is replaced", () => {
    const [flood, mould]: RugAnswers[] = [{ incidents: ["flood"] }, { incidents: ["water"], changes: ["spots"] }];
    expect(after(rugOf(flood!), rugOf(mould!), rugOf(mould!), rugOf(mould!))).toContain(KNOWN);
    expect(after(rugOf(flood!), rugOf(mould!), rugOf(mould!), rugOf(flood!))).toMatch(/ask a flood-damage firm/u);
  });
  it("is told anew after a letter that said nothing of it, and with the line of the gas only where none before had it", () => {
    const GAS: RugAnswers = { incidents: ["pet-urine"], treatments: ["bleach"], since: "hour" };
    const line = FIRST_AID.gas.line(WORKSHOP.emergencyNumber);
    expect(after(rugOf(WINE), rugOf(WINE, false), rugOf(WINE))).toMatch(PRESS);
    expect(after(rugOf(WINE), rugOf(WINE), rugOf(GAS))).toContain(line);
    expect(after(rugOf(GAS), rugOf(GAS), rugOf(GAS))).toContain(KNOWN);
  });
  it("is told anew where it was for gas that there is none of by what they tell now, or for what nobody was to touch and may by now, and not once more after that", () => {
    const [bleached, blotted, soaked]: RugAnswers[] = [{ incidents: ["pet-urine"], treatments: ["bleach"], since: "hour" }, { incidents: ["pet-urine"], treatments: ["blotted"], since: "hour" }, { incidents: ["water"], since: "hour" }];
    const line = FIRST_AID.gas.line(WORKSHOP.emergencyNumber);
    for (const [told, now] of [[bleached, blotted], [SPOTS, WINE]] as const) {
      const text = after(rugOf(told!), rugOf(now!));
      expect(text).toMatch(PRESS);
      for (const gone of [KNOWN, line, "do not touch it"]) expect(text).not.toContain(gone);
      expect(after(rugOf(told!), rugOf(told!), rugOf(now!))).toMatch(PRESS);
      expect(after(rugOf(told!), rugOf(now!), rugOf(now!))).toContain(KNOWN);
    }
    expect(after(about(rugOf(bleached!), rugOf(SPOTS)), about(rugOf(blotted!), rugOf(SPOTS)))).not.toContain(KNOWN);
    expect(after(about(rugOf(bleached!), rugOf(soaked!)), about(rugOf(bleached!), rugOf(soaked!)))).toContain(KNOWN);
  });
  it("is not told anew because it has no cloth, where a dry one of them was flooded and its form has none, or the workshop words it itself", () => {
    const both = about(rugOf({ incidents: ["flood"] }, false), rugOf(WINE));
    expect(after(both, both)).not.toMatch(/ask a flood-damage firm to see/u);
    const own = { ...rugOf(WINE), library: SHIPPED.map((row) => (row.place === "first-aid" && !row.id.startsWith("first-aid-known") ? { ...row, from: "workshop" as const, text: "Please ring us at once.", tones: {} } : row)) };
    expect(after(own, own)).not.toContain("ring us at once");
  });
});
