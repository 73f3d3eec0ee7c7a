import { describe, expect, it } from "vitest";
import { mostWords } from "../../../../lib/reply/length";
import { checkLetter, knownOf } from "../../../../lib/reply/promises/check";
import { readingOf } from "../../../../lib/reply/reading";
import { TONE_IDS } from "../../../../lib/trade/tones";
import type { EnquiryAnswers } from "../../../../lib/trade/questions";
import { letterOf, missing, plainly, said, says } from "./letter-of";
import { NEVER, type Line } from "./lists";

/** Letters that come by e-mail while there is water, before anybody has asked anything. Lists written from the trade's first aid (common practice) and from the letter alone. */
const FLOOD = "Our hall flooded last night and the rug is standing in dirty water. What shall we do?";
const LEAK = "The washing machine leaked over my mother's rug and it is soaking wet.";

const BOTH: readonly Line[] = [
  says("that we are sorry", /\bsorry\b/i), says("the emergency number", /\b112\b/), says("children and pets off", /children[^.]*pets/i), says("keep off plugs and sockets", /plug|socket/i),
  says("no more water and no product", /\b(?:no|nothing)\b[^]*\bwater\b/i), says("whether it is wet now, as a question", /wet right now\?/i), says("how to reach us fast", /ring us on 01632 960 200/i), says("a person’s signature", /Nell Harrow/),
];
const COLD: readonly Line[] = [
  says("how much might come out", /\d+\s?[–-]\s?\d+\s?%/), says("years left", /\byears?\b/i), says("a price", /£/), says("that the message is too little", /too little|all we have/i),
  says("thanks before help", /^Dear [^,]+,\s+Thank you/i), says("handling a wet rug", /parted with two fingers|folded corner|\b(?:lift|drag|roll) it\b/i),
];
const FLOOD_ALONE: readonly Line[] = [says("nobody touches it, not even to blot", /nobody touch[^.]*not even to blot/i), says("a flood-damage firm first", /flood-damage firm/i)];
const BLOT = says("press with a white cloth, do not rub", /white cloth[^.]*\b(?:not|never)\b[^.]*rub/i);
const LABEL_PHOTO = says("a photo for which the rug is handled", /photo of the (?:label|back|pile)/i);

const letter = (story: string, tone: (typeof TONE_IDS)[number], enquiry: EnquiryAnswers = {}) => letterOf({ answers: { story }, enquiry, tone, channel: "email" });

describe.each(TONE_IDS)("the draft for a letter of water, %s", (tone) => {
  it.each([
    ["flood", FLOOD, [...BOTH, ...FLOOD_ALONE], [...COLD, BLOT, LABEL_PHOTO]],
    ["a leak", LEAK, [...BOTH, BLOT], [...COLD, ...FLOOD_ALONE]],
  ] as const)("of %s: first aid first, then what we need to know, and no figures", (_what, story, must, never) => {
    const { draft, rugs } = letter(story, tone);
    const text = plainly(draft.text);
    expect(missing(text, must)).toEqual([]);
    expect(said(text, [...never, ...NEVER])).toEqual([]);
    expect(text.indexOf("112")).toBeLessThan(text.indexOf("wet right now?"));
    expect(readingOf(text).words).toBeLessThanOrEqual(mostWords(1));
    expect(readingOf(text).grade).toBeLessThanOrEqual(8);
    expect(checkLetter(draft.text, knownOf(rugs))).toEqual([]);
  });
});

describe("the draft for a letter of water", () => {
  it("goes by the answer once there is one: no first aid where it is dry, the asked-for one where it is wet", () => {
    expect(letter(LEAK, "plain", { wetNow: "no" }).draft.text).not.toMatch(/do this first|sorry to read/);
    const wet = letter(LEAK, "plain", { wetNow: "wet" });
    expect(wet.draft.paragraphs.map((p) => p.id)).toContain("first-aid");
    expect(wet.draft.text).not.toContain("If any of it is still wet");
  });
  it("is not written for one that is dry again, or that asks what a rug is made of", () => {
    for (const story of ["It got wet last year but it is dry now. Is it silk?", "What is it made of?"]) expect(letter(story, "plain").draft.text).not.toContain("112");
  });
});
