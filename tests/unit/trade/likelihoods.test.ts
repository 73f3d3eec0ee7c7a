import { describe, expect, it } from "vitest";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import { LABEL } from "../../../lib/trade/likelihoods-label";
import { strengthBy, SMALLEST_CELL, sourceOfRow, strengthOfRow, type NamedFibre } from "../../../lib/trade/likelihood-table";
import { LIKELIHOODS } from "../../../lib/trade/likelihoods";
import { WETTING_ANSWERS } from "../../../lib/trade/likelihoods-use";
import { QUESTIONS, type QuestionId } from "../../../lib/trade/questions";
import { SELLER_CLAIMS, SELLER_SAID } from "../../../lib/trade/seller-words";

const NAMED = FIBRE_IDS.filter((f): f is NamedFibre => f !== "other");
const cell = (table: (typeof LIKELIHOODS)[number], fibre: NamedFibre, answer: string) => table.rows[fibre][table.answers.indexOf(answer)] as number;

describe.each(LIKELIHOODS.map((t) => [t.what, t] as const))("the table of %s", (what, table) => {
  it.each(NAMED)("has a row for %s: every cell at least .001, summing to 1, with source and strength", (fibre) => {
    const row = table.rows[fibre];
    expect(row).toHaveLength(table.answers.length);
    for (const p of row) expect(p).toBeGreaterThanOrEqual(SMALLEST_CELL - 1e-15);
    expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    expect(sourceOfRow(table, fibre).source.length).toBeGreaterThan(20);
    expect(strengthOfRow(table, fibre)).toBe(strengthBy(sourceOfRow(table, fibre).how));
  });
  it("asks what the questionnaire offers, answer by answer", () => {
    if (what === "label" || what === "changes") return expect(what in QUESTIONS).toBe(what === "changes");
    expect([...table.answers].sort()).toEqual(Object.keys(QUESTIONS[what as QuestionId].answers).sort());
  });
});

describe("what the trade says of words and labels", () => {
  it.each([
    ["silk", "silk", 0.75], ["silk-viscose", "silk", 0.55], ["viscose", "silk", 0.3], ["mercerised-cotton", "silk", 0.4], ["polyester", "silk", 0.05], ["wool", "silk", 0.01],
    ["wool-silk", "wool-and-silk", 0.6], ["wool-viscose", "wool-and-silk", 0.35],
    ["viscose", "art-silk", 0.3], ["lyocell", "art-silk", 0.15], ["mercerised-cotton", "art-silk", 0.05], ["polyester", "art-silk", 0.05], ["silk", "art-silk", 0.003],
    ["viscose", "viscose", 0.25], ["silk", "viscose", 0.001],
  ] as const)("%s is called %s with chance %d", (fibre, word, p) => {
    expect(cell(SELLER_SAID, fibre, word)).toBe(p);
  });
  it("believes a label that says viscose almost wholly and one that says silk much less", () => {
    expect(cell(LABEL, "silk", "silk")).toBe(0.9);
    expect(cell(LABEL, "viscose", "viscose")).toBe(0.9);
    expect(cell(LABEL, "silk", "viscose")).toBeLessThan(0.002);
    expect(cell(LABEL, "viscose", "silk")).toBeGreaterThanOrEqual(0.015);
    expect(cell(LABEL, "viscose", "silk")).toBeLessThanOrEqual(0.045);
  });
  it("lets labels lie upward: every fibre sold as silk is called silk more often than silk is called it", () => {
    for (const fibre of ["viscose", "silk-viscose", "mercerised-cotton", "acetate", "lyocell", "polyester"] as const) {
      expect(cell(LABEL, fibre, "silk")).toBeGreaterThan(cell(LABEL, "silk", fibre));
    }
  });
  it("claims only fibres that have rows, for words the question offers", () => {
    for (const [word, fibre] of Object.entries(SELLER_CLAIMS)) {
      expect(SELLER_SAID.answers).toContain(word);
      expect(NAMED).toContain(fibre);
    }
  });
});

describe("the answers that wet a rug", () => {
  it("are answers of their questions", () => {
    for (const [question, answers] of Object.entries(WETTING_ANSWERS)) {
      for (const a of answers) expect(Object.keys(QUESTIONS[question as QuestionId].answers)).toContain(a);
    }
  });
});
