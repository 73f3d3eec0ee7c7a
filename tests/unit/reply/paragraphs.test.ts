import { describe, expect, it } from "vitest";
import { NUMBER_FACTS, WORD_FACTS, type Condition } from "../../../lib/reply/condition";
import { PARAGRAPHS, PLACES } from "../../../lib/reply/paragraphs";
import { readingOf } from "../../../lib/reply/reading";
import { isSlot, slotsIn } from "../../../lib/reply/slot-words";
import { chanceOf } from "../../../lib/reply/slots";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import { assessmentOf } from "./make";
import { wordsIn } from "../../../lib/words/words";

const ENGLISH = wordsIn("en-GB");

const ids = PARAGRAPHS.map((p) => p.id);
const rules = (when: Condition) => [...Object.entries({ ...when.is }), ...Object.entries({ ...when.not })];

describe("PARAGRAPHS", () => {
  it("have ids of their own, a version and a source", () => {
    expect(new Set(ids).size).toBe(ids.length);
    for (const p of PARAGRAPHS) expect([p.version >= 1, p.source.length > 0]).toEqual([true, true]);
  });
  it("stand in places that exist, and every place has some but the one kept for the workshop's own", () => {
    expect([...new Set(PARAGRAPHS.map((p) => p.place)), "notes"].sort()).toEqual(PLACES.map((p) => p.id).sort());
  });
  it("ask only facts that exist", () => {
    for (const { when } of PARAGRAPHS) {
      for (const [fact] of rules(when)) expect(WORD_FACTS).toHaveProperty(fact);
      for (const fact of Object.keys({ ...when.atLeast, ...when.below })) expect(NUMBER_FACTS).toHaveProperty(fact);
    }
  });
  it("ask only fibres that exist", () => {
    for (const { when } of PARAGRAPHS) for (const [fact, values] of rules(when)) if (fact === "leading" || fact === "rival") for (const v of values) expect(FIBRE_IDS).toContain(v);
  });
  it("use only slots that exist", () => {
    for (const p of PARAGRAPHS) for (const text of [p.text, ...Object.values(p.tones ?? {})]) expect(slotsIn(text).filter((s) => !isSlot(s)), p.id).toEqual([]);
  });
  it("speak of a mechanism wherever they say how probable it is", () => {
    for (const p of PARAGRAPHS) if (p.text.includes("{chance}")) expect(p.about).toBeDefined();
  });
  it("greet, sign, and say something of the fibre and the next step, whatever the facts", () => {
    for (const place of ["greeting", "fibre", "next-step", "signature"]) expect(PARAGRAPHS.filter((p) => p.place === place && Object.keys(p.when).length === 0)).toHaveLength(1);
  });
  it("are short sentences: none over 35 words", () => {
    for (const p of PARAGRAPHS) for (const sentence of p.text.split(/(?<=[.!?])\s/)) expect(readingOf(sentence).words, p.id).toBeLessThanOrEqual(35);
  });
  it("name no chemical, dose or pH", () => {
    for (const p of PARAGRAPHS) expect(p.text).not.toMatch(/\bpH\b|acid|ammonia|peroxide|enzyme|hypochlorite|\d+ ?(ml|g|%)/i);
  });
});

describe("chanceOf", () => {
  it("is null for a row without a mechanism, and for one that the assessment leaves out", () => {
    const assessment = assessmentOf({ fibres: { wool: 1 }, mechanisms: { mould: 0.7 } });
    const row = (about?: "mould" | "fading") => ({ ...PARAGRAPHS[0]!, ...(about ? { about } : {}) });
    expect([chanceOf(assessment, row("mould"), ENGLISH), chanceOf(assessment, row("fading"), ENGLISH), chanceOf(assessment, row(), ENGLISH)]).toEqual(["likely", null, null]);
  });
});
