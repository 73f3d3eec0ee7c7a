import { describe, expect, it } from "vitest";
import { NUMBER_FACTS, WORD_FACTS, type Condition } from "../../../lib/reply/condition";
import { PARAGRAPHS, PLACES } from "../../../lib/reply/paragraphs";
import { readingOf } from "../../../lib/reply/reading";
import { chanceOf, slotsOf } from "../../../lib/reply/slots";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import { assessmentOf, WORKSHOP } from "./make";

const ids = PARAGRAPHS.map((p) => p.id);
const rules = (when: Condition) => [...Object.entries({ ...when.is }), ...Object.entries({ ...when.not })];

describe("PARAGRAPHS", () => {
  it("have ids of their own, a version and a source", () => {
    expect(new Set(ids).size).toBe(ids.length);
    for (const p of PARAGRAPHS) expect([p.version >= 1, p.source.length > 0]).toEqual([true, true]);
  });
  it("stand in places that exist, and every place has some", () => {
    expect(new Set(PARAGRAPHS.map((p) => p.place))).toEqual(new Set(PLACES.map((p) => p.id)));
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
    const slots = slotsOf({ rug: { title: "", assessment: assessmentOf({ fibres: { wool: 1 } }), answers: {} }, number: 1, rugs: 1, client: { name: "", isTrade: false }, workshop: WORKSHOP });
    for (const p of PARAGRAPHS) for (const [, slot] of p.text.matchAll(/\{(\w+)\}/g)) expect([...Object.keys(slots), "chance"]).toContain(slot);
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
    expect([chanceOf(assessment, row("mould")), chanceOf(assessment, row("fading")), chanceOf(assessment, row())]).toEqual(["likely", null, null]);
  });
});
