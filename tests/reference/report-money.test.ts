import { describe, expect, it } from "vitest";
import { assessAnswers } from "../../lib/enquiry/assess-answers";
import { conditionReport } from "../../lib/reply/documents/condition-report";
import type { RugAnswers } from "../../lib/trade/questions";
import { DEFAULT_SETTINGS } from "../../lib/workshop/settings-schema";

const WORKSHOP = { ...DEFAULT_SETTINGS, currency: "EUR" as const, prices: { ...DEFAULT_SETTINGS.prices, cleanPerM2: 45, cleanMinimum: 0 } };

/** The rows and small print under "Cost and value" of the report on a rug whose fibre a laboratory has named: from answers to the printed words. */
function printed(answers: RugAnswers, percents: Record<string, number>) {
  const [rug] = assessAnswers({
    channel: "web", asOf: "2026-06-01T09:00:00Z", enquiry: { wetNow: "no" }, client: { name: "Ana Example", isTrade: false }, workshop: WORKSHOP,
    rugs: [{ answers, colours: [], photos: [], tests: [{ what: "laboratory", value: percents, strength: "laboratory", from: "lab:1", of: { part: "pile", yarn: "whole" } }] }],
  }).rugs;
  const { blocks } = conditionReport({
    figures: { locale: "en-GB", areaUnit: "m2" },
    reference: "K7-204", place: { n: 1, of: 1 }, theirReference: null, asker: { name: "Ana Example", as: "owner", customer: null }, rug: "A rug", told: { wet: null, answers, seen: [], sinceToldOn: null, account: null }, assessment: rug!.assessment, photos: [], isLabelShown: false, reports: [], tests: [], moisture: [], madeBy: "Ivo Castellane", inspection: null, cutDown: null, cutting: null,
    workshop: { name: "Lantern Yard", lines: [] }, today: "1 June 2026", judgedOn: "1 June 2026",
  });
  const from = blocks.findIndex((b) => b.kind === "heading" && b.text === "Cost and value");
  const table = blocks[from + 1];
  if (table?.kind !== "table") throw new Error("Expected a table of costs.");
  const money = (what: string): { low: number; high: number } => {
    const said = table.rows.find(([name]) => name?.startsWith(what))?.[1] ?? "";
    const [low = NaN, high = low] = said.match(/€[\d,]+/gu)?.map((m) => Number(m.slice(1).replaceAll(",", ""))) ?? [];
    return { low, high };
  };
  return { money, small: blocks.slice(from).flatMap((b) => (b.kind === "small" ? [b.text] : [])).join("\n") };
}
const SIZE = { widthCm: 170, lengthCm: 240 };

describe("money in a condition report, from answers to printed words, against published examples", () => {
  it("two years of a life of five: 60 per cent are left, so that 975 new are 585, as 9.75 are 5.85 (urban.co.uk, five-year life span; NAVEDTRA 10287F, 9.75 × 60 %)", () => {
    const { money, small } = printed({ ...SIZE, boughtWhere: "furniture", price: 975, currency: "EUR", boughtYear: 2024, back: "machine" }, { viscose: 100 });
    expect(small).toContain("In the middle of it, about 60 per cent of the price of a new one is left.");
    const [fresh, today] = [money("A new one like it"), money("Value today")];
    expect(fresh.low < 975 && 975 < fresh.high).toBe(true);
    expect(today.low < 585 && 585 < today.high).toBe(true);
    // The middle of a range of prices is its geometric one.
    expect(Math.sqrt((today.low * today.high) / (fresh.low * fresh.high))).toBeCloseTo(0.6, 1);
  });
  it("a genuine Oriental of ten years, 2,000 new: the 1,200 of 4 % a year lies in the range, whose lower end is within 100 of the 600 of 7 % (National Joint Council of the Public Service of Canada)", () => {
    const { money } = printed({ ...SIZE, boughtWhere: "specialist", price: 2_000, currency: "EUR", boughtYear: 2016, back: "knots" }, { wool: 100 });
    const today = money("Value today");
    expect(today.low < 1_200 && 1_200 < today.high).toBe(true);
    expect(Math.abs(today.low - 600)).toBeLessThanOrEqual(100);
  });
  it("a clean of 4.08 m² at 45 a square metre begins at 180 in two figures (170 × 240 cm by hand: 1.7 × 2.4 = 4.08; × 45 = 183.60)", () => {
    expect(printed({ ...SIZE }, { wool: 100 }).money("Cleaning").low).toBe(180);
  });
});
