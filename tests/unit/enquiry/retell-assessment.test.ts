import { describe, expect, it } from "vitest";
import { assessAnswers } from "../../../lib/enquiry/assess-answers";
import { retellAssessment } from "../../../lib/enquiry/retell-assessment";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import { wordsIn } from "../../../lib/words/words";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";

const judged = (answers: RugAnswers, enquiry: EnquiryAnswers) => {
  const [rug] = assessAnswers({ channel: "web", asOf: "2026-11-28T09:00:00.000Z", enquiry, client: { name: "Ana Example", isTrade: false }, workshop: DEFAULT_SETTINGS, rugs: [{ answers, colours: [], photos: [] }] }).rugs;
  if (!rug) throw new Error("Expected one rug to be judged");
  return rug.assessment;
};
const RUGS: [RugAnswers, EnquiryAnswers][] = [
  [{ labelFound: "typed", labelText: "100% viscose", incidents: ["spill"], liquid: "wine", widthCm: 170, lengthCm: 240 }, { wetNow: "wet", reason: "just-happened" }],
  [{ age: "antique", incidents: ["flood"], changes: ["spots"] }, { wetNow: "no", reason: "older-trouble" }],
  [{ sellerSaid: "silk", incidents: ["insects"] }, {}],
];

const textsIn = (value: unknown): string[] => {
  if (typeof value === "string") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(textsIn) : [];
};

describe("retellAssessment", () => {
  const marked = wordsIn("en-XA");
  it.each(RUGS)("says every sentence of the tables in the client's words: %o", (answers, enquiry) => {
    const before = judged(answers, enquiry);
    const { advice, urgency, onlyInspection, methods, why, firstAid, nextQuestions } = retellAssessment(marked, before, "911");
    const sentences = [advice.why, urgency.why, ...onlyInspection, ...methods.map((m) => m.why), ...Object.values(why), ...(firstAid ?? []), ...nextQuestions.filter((q) => q.kind !== "bench-test").map((q) => q.ask)];
    expect(sentences.length).toBeGreaterThan(8);
    expect(sentences.filter((s) => !s.startsWith("⟦"))).toEqual([]);
    expect(firstAid === null).toBe(before.firstAid === null);
    if (firstAid) expect(firstAid.join()).toMatch(/911/);
  });
  it.each(RUGS)("leaves no sentence outside the catalogue: what was found is data: %o", (answers, enquiry) => {
    const told = retellAssessment(marked, judged(answers, enquiry), "911");
    expect(told.findings.length).toBeGreaterThan(0);
    expect(told.findings.every((f) => f.what !== "" && Number.isFinite(f.decibans))).toBe(true);
    // The words of a label are the client's own.
    const sentences = textsIn({ ...told, findings: told.findings.filter((f) => f.what !== "label") }).filter((text) => /\p{L}{2,} \p{L}{2,}/u.test(text));
    expect(sentences.length).toBeGreaterThan(8);
    expect(sentences.filter((text) => !text.startsWith("⟦"))).toEqual([]);
    for (const f of told.findings) expect(Object.keys(f).sort()).toEqual(["decibans", "from", "strength", "value", "what"]);
  });
  it("keeps the words of a label and what they name, and which findings do not agree", () => {
    const { findings, conflicts } = retellAssessment(marked, judged({ sellerSaid: "silk", labelText: "80% wool 30% viscose" }, {}), "911");
    const label = findings.find((f) => f.what === "label")?.value;
    expect(label).toMatchObject({ text: "80% wool 30% viscose" });
    expect(label).not.toHaveProperty("doubts");
    expect(conflicts.map((c) => [...c.between].sort())).toContainEqual(["label", "sellerSaid"]);
  });
  it("leaves every figure as it is", () => {
    for (const [answers, enquiry] of RUGS) {
      const before = judged(answers, enquiry);
      const { fibres, improvement, lifeYears, money, mechanisms } = retellAssessment(marked, before, "911");
      const figures = (rows: typeof fibres) => rows.map(({ fibre, probability, low, high }) => ({ fibre, probability, low, high }));
      expect({ fibres: figures(fibres), improvement, lifeYears, money, mechanisms }).toEqual({ fibres: figures(before.fibres), improvement: before.improvement, lifeYears: before.lifeYears, money: before.money, mechanisms: before.mechanisms });
    }
  });
});
