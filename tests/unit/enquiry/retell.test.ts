import { describe, expect, it } from "vitest";
import { refuse } from "../../../lib/enquiry/caller";
import { retell, retellResult } from "../../../lib/enquiry/retell";
import { parseStep } from "../../../lib/enquiry/step-forms";
import { isUnreadKey, SENTENCE_KEYS, wrong, wrongOf } from "../../../lib/enquiry/wrong";
import { NOT_COMPARED } from "../../../lib/photo/sentences";
import { ONLY_INSPECTION } from "../../../lib/trade/inspection";
import { ACTIONS, REFERRALS } from "../../../lib/trade/losses";
import { URGENCY } from "../../../lib/trade/urgency";
import { wordsIn } from "../../../lib/words/words";

const MARKED = wordsIn("en-XA");

describe("retell", () => {
  it("says every sentence again in the client's words, its limits filled in", () => {
    for (const key of SENTENCE_KEYS) expect(retell(MARKED, wrong(key))).toBe(`⟦${wrong(key)}⟧`);
    expect(wrong("wrong.label-long")).toBe("The label can have at most 2,000 characters.");
    expect(SENTENCE_KEYS.map((key) => (isUnreadKey(key) ? wrongOf(key, "ten") : wrong(key))).join()).not.toMatch(/[{}]/);
  });
  it("says again what was typed, in the client's words around it, and cuts a long text", () => {
    expect(retell(MARKED, wrongOf("wrong.price-unread", "ten “or” $& so"))).toBe(`⟦${wrongOf("wrong.price-unread", "ten “or” $& so")}⟧`);
    expect(wrongOf("wrong.year-unread", "👍".repeat(41))).toContain(`“${"👍".repeat(40)}…”`);
  });
  it("has no two sentences alike, so that none can be taken for another", () => {
    expect(new Set(SENTENCE_KEYS.map(wrong)).size).toBe(SENTENCE_KEYS.length);
  });
  it("leaves English as it is, and what it does not know", () => {
    expect(retell(wordsIn("en-IE"), wrong("wrong.name"))).toBe("Write your name.");
    expect(retell(MARKED, "Somebody moved it.")).toBe("Somebody moved it.");
  });
  it("says again why a rug is advised so, why it is urgent, who should see it, and why two spots were not compared", () => {
    const sentences = [...Object.values(ACTIONS).map((a) => a.why), ...REFERRALS.map((r) => r.to), ...URGENCY.map((u) => u.why), ...ONLY_INSPECTION.map((r) => r.say), ...Object.values(NOT_COMPARED)];
    expect(sentences.length).toBeGreaterThan(50);
    for (const sentence of sentences) expect(retell(MARKED, sentence)).toBe(`⟦${sentence}⟧`);
  });
  it("says a refusal and what belongs to its fields", () => {
    const no = refuse("invalid", wrong("wrong.look-again"), { "contact.email": wrong("refusal.no-way-back") });
    expect(retellResult(MARKED, no)).toEqual({ ok: false, code: "invalid", say: `⟦${no.say}⟧`, fields: { "contact.email": `⟦${wrong("refusal.no-way-back")}⟧` } });
    expect(retellResult(MARKED, { ok: true, value: 1 })).toEqual({ ok: true, value: 1 });
  });
});

describe("what is wrong with a page of the questionnaire", () => {
  it.each([
    ["wet-now", {}], ["happened", { answer: [] }], ["label", { answer: "typed", labelText: " " }], ["label", { answer: "typed", labelText: "x".repeat(2_001) }],
    ["seller", { answer: "silk", sellerWords: "x".repeat(501) }], ["bought", { answer: "online", boughtPlace: "x".repeat(501) }],
    ["price", { boughtYear: "last" }], ["price", { boughtYear: "1700" }], ["price", { boughtYear: "9998" }], ["price", { price: "much" }], ["price", { price: "-5" }], ["price", { price: "99999999" }],
    ["size", { unit: "cm", widthCm: "wide", lengthCm: "long" }], ["size", { unit: "cm", widthCm: "2", lengthCm: "2" }], ["size", { unit: "cm", widthCm: "9000", lengthCm: "9000" }],
    ["story", { story: "x".repeat(8_001) }], ["contact", { name: "", telephone: "12" }], ["contact", { name: "x".repeat(201), email: "nobody" }],
    ["contact", { name: "Ann", email: `${"x".repeat(64)}@${"y".repeat(200)}.example` }], ["contact", { name: "Ann", telephone: "1".repeat(41) }],
  ] as const)("on %s can be said in every language: %j", (step, values) => {
    const parsed = parseStep(step, values as never);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) for (const sentence of Object.values(parsed.errors)) expect(retell(MARKED, sentence)).toBe(`⟦${sentence}⟧`);
  });
});
