import { describe, expect, it } from "vitest";
import { FIRST_AID } from "../../../lib/trade/first-aid";
import type { RugAnswers } from "../../../lib/trade/questions";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import type { DraftInput } from "../../../lib/reply/pieces";
import { FIRST_AID_SAID, inputOf, WORKSHOP } from "./make";

const WINE: RugAnswers = { incidents: ["spill"], liquid: "wine", since: "hour" };
const SPOTS: RugAnswers = { ...WINE, changes: ["spots"] };
const PRESS = /^– Press a plain white cloth/mu;
const KNOWN = "our first aid still holds";
const rugOf = (answers: RugAnswers, isWet = true): DraftInput => inputOf({ sketch: { fibres: { wool: 0.93 }, rest: { firstAid: isWet ? FIRST_AID_SAID : null } }, answers, enquiry: { wetNow: "wet", reason: "just-happened" } });
const about = (...rugs: DraftInput[]): DraftInput => ({ ...rugs[0]!, assessments: rugs.flatMap(({ assessments }) => assessments) });
/** The letter after one that was sent. */
function after(before: DraftInput, now: DraftInput): string {
  const { text, paragraphs, leftOut } = composeDraft(before);
  return composeFollowing(now, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text;
}

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
});
