import { describe, expect, it } from "vitest";
import { textOf } from "../../../../lib/photo/label/seen";
import { withoutStrays } from "../../../../lib/photo/label/strays";

const read = (text: string) => text.split("\n").map((line) => line.split(" ").map((word) => ({ text: word, confidence: 0.8, unsure: false })));
const left = (text: string) => textOf(withoutStrays(read(text)));

describe("withoutStrays", () => {
  it.each([
    ["100% VISCOSE\n(MADE IN INDIA", "100% VISCOSE\nMADE IN INDIA"], ["100% VISCOSE\nMADE IN INDIA)", "100% VISCOSE\nMADE IN INDIA"],
    ["[WOOL}", "WOOL"], ["SILK) (VISCOSE)", "SILK (VISCOSE)"], ["( 80% WOOL", "80% WOOL"], ["WOOL\n(", "WOOL"],
  ])("takes a bracket out that has no partner: %j", (text, kept) => expect(left(text)).toBe(kept));
  it.each(["SILK (VISCOSE)", "PILE (80% WOOL\n20% SILK)", "A [B (C) D] E", "no bracket at all"])("leaves those that have one, over lines too: %j", (text) => expect(left(text)).toBe(text));
  it("leaves every other word as it was read, with its doubt", () =>
    expect(withoutStrays([[{ text: "(MADE", confidence: 0.4, unsure: true }, { text: "IN", confidence: 0.9, unsure: false }]])).toEqual([[{ text: "MADE", confidence: 0.4, unsure: true }, { text: "IN", confidence: 0.9, unsure: false }]]));
});
