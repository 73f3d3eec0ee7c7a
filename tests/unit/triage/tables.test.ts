import { describe, expect, it } from "vitest";
import { CARE_COLUMNS, CARE_COLUMNS_OF, CONSTRUCTION_BY_BACK, METHODS } from "../../../lib/trade/care";
import { COLUMNS, COLUMNS_OF } from "../../../lib/trade/columns";
import { BY_MAKE, CHANGES, CHANGE_IDS, DAMAGE_IDS, MECHANISMS, WICKING_BY_GROUND, mechanismName } from "../../../lib/trade/damage";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import { IMPROVEMENT, ROW_IDS, ROWS_OF, WORSE } from "../../../lib/trade/improvement";
import { LIFE, LIFE_FACTORS, WEAR_LEFT } from "../../../lib/trade/life";
import { LOSSES, RISKS } from "../../../lib/trade/losses";
import { ONLY_INSPECTION } from "../../../lib/trade/inspection";
import { QUESTIONS } from "../../../lib/trade/questions";
import { ASKED_AFTER } from "../../../lib/trade/questions-value";
import { DEPRECIATION_CLASS, HEAVY_WEAR, USEFUL_LIVES } from "../../../lib/trade/depreciation";
import { SIGNS } from "../../../lib/trade/signs";
import { FRESH, TAKES_TIME, TRIGGERS, WHO, WHO_BEARS_ON } from "../../../lib/trade/triggers";
import { answerInWords } from "../../../lib/trade/answer-words";
import { publicTables } from "../../../lib/trade/tables";
import { CONDITIONS, URGENCY } from "../../../lib/trade/urgency";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { handledAs } from "../../../lib/triage/methods";
import { readTold } from "../../../lib/triage/told";

/** An answer written as `question:answer` that a person can really give. */
function isAnswer(text: string): boolean {
  const [question = "", answer = ""] = text.split(":");
  if (question === "sign") return Object.hasOwn(SIGNS, answer);
  const row = (QUESTIONS as Record<string, { answers: Record<string, unknown> }>)[question];
  return row !== undefined && Object.hasOwn(row.answers, answer);
}

describe("tables of damage and prospects", () => {
  it("name only answers that can be given", () => {
    const named = [
      ...TRIGGERS.flatMap((t) => [t.when, ...(t.unless ?? [])]),
      ...URGENCY.flatMap((u) => u.all ?? []).filter((c) => !CONDITIONS[c]),
      ...Object.values(CONDITIONS).flatMap((c) => [...c.anyOf, ...(c.andAnyOf ?? [])]),
      ...WHO.map((w) => w.when), ...TAKES_TIME.flatMap((t) => Object.keys(t.by).map((b) => `since:${b}`)), ...HEAVY_WEAR.changes.map((c) => `changes:${c}`),
      ...LIFE_FACTORS.map((f) => f.when), ...WEAR_LEFT.map((w) => `changes:${w.change}`), ...CHANGE_IDS.map((c) => `changes:${c}`),
      ...Object.values(ASKED_AFTER).flatMap((a) => a?.anyOf ?? []), ...ONLY_INSPECTION.flatMap((r) => r.when?.answer ?? []),
    ];
    expect(named.filter((n) => !isAnswer(n))).toEqual([]);
    expect(named.length).toBeGreaterThan(200);
  });

  it("know every change that can be answered, “none” apart", () => {
    expect([...CHANGE_IDS, "none"].sort()).toEqual(Object.keys(QUESTIONS.changes.answers).sort());
  });

  it("know every back, and its constructions sum to one", () => {
    expect(Object.keys(CONSTRUCTION_BY_BACK).sort()).toEqual([...Object.keys(QUESTIONS.back.answers), "unknown"].sort());
    for (const { share } of Object.values(CONSTRUCTION_BY_BACK)) expect(share.knotted + share.tufted + share.machine).toBeCloseTo(1, 9);
  });

  it("hold only chances from 0 to 1", () => {
    const chances = [
      ...TRIGGERS.map((t) => t.chance), ...Object.values(MECHANISMS).flatMap((m) => [m.leak, m.unasked, ...Object.values(m.hits)]),
      ...CHANGE_IDS.flatMap((c) => [CHANGES[c].none, ...Object.values(CHANGES[c].by)]), ...Object.values(FRESH).flatMap((f) => Object.values(f.by)),
      ...COLUMNS.flatMap((c) => [WORSE[c].gentle, WORSE[c].wet]), ...Object.values(SIGNS).flatMap((r) => [r.none, ...Object.values(r.by)]),
      ...TAKES_TIME.flatMap((t) => Object.values(t.by)), ...Object.values(BY_MAKE).flatMap((m) => [m.knotted, m.tufted, m.machine]), ...WICKING_BY_GROUND.map((w) => w.times),
    ];
    expect(chances.filter((p) => !(p >= 0 && p <= 1))).toEqual([]);
  });

  it("have a cell for every row and column, in order and within 0 to 100", () => {
    for (const r of ROW_IDS) {
      for (const c of COLUMNS) {
        const { low, median, high } = IMPROVEMENT[r].cells[c];
        expect(0 <= low && low <= median && median <= high && high <= 100, `${r} ${c}`).toBe(true);
      }
    }
  });

  it("give every row of improvement a mechanism, or soil", () => {
    const used = new Set(["soil", ...DAMAGE_IDS.flatMap((m) => (ROWS_OF[m] ? Object.values(ROWS_OF[m]) : []))]);
    expect([...used].sort()).toEqual([...ROW_IDS].sort());
  });

  it("let nothing on viscose come back better than on wool", () => {
    for (const r of ROW_IDS) expect(IMPROVEMENT[r].cells.viscose.median, r).toBeLessThanOrEqual(IMPROVEMENT[r].cells.wool.median);
  });

  it("know every fibre: columns, care, life", () => {
    for (const f of FIBRE_IDS) {
      expect(COLUMNS_OF[f].length, f).toBeGreaterThan(0);
      expect(CARE_COLUMNS_OF[f].length, f).toBeGreaterThan(0);
      expect(LIFE[f], f).toBeDefined();
    }
    for (const m of Object.values(METHODS)) expect(Object.values(m.cells).filter(Boolean)).toHaveLength(CARE_COLUMNS.length);
  });

  it("never call a wet method or home cleaning suitable for viscose", () => {
    for (const m of Object.values(METHODS)) if (m.water || m.risk === "wet") expect(m.cells.viscose, m.name).toBe("ruled-out");
  });

  it("say where each row comes from", () => {
    const rows = [
      ...Object.values(MECHANISMS), ...Object.values(CHANGES), ...TRIGGERS, ...Object.values(FRESH), ...Object.values(IMPROVEMENT), ...Object.values(WORSE),
      ...Object.values(SIGNS), ...WHO, ...TAKES_TIME, ...Object.values(BY_MAKE), ...WICKING_BY_GROUND, ...USEFUL_LIVES,
      ...Object.values(METHODS), ...URGENCY, ...Object.values(LOSSES), ...LIFE_FACTORS, ...WEAR_LEFT,
    ];
    expect(rows.filter((r) => r.source.length < 10 || !["read", "memory", "computed", "common practice", "elicited"].includes(r.how))).toEqual([]);
  });

  it("name only events and mechanisms that triggers have, where who did it or time bears on them", () => {
    const pairs = TRIGGERS.map((t) => `${t.mechanism} ${t.event}`);
    for (const t of TAKES_TIME) expect(pairs, t.mechanism).toContain(`${t.mechanism} ${t.event}`);
    for (const e of WHO_BEARS_ON.events) expect(TRIGGERS.some((t) => t.event === e), e).toBe(true);
    expect(TAKES_TIME.some((t) => WHO_BEARS_ON.mechanisms.some((m) => m === t.mechanism) && WHO_BEARS_ON.events.some((e) => e === t.event))).toBe(false);
  });

  it("have a published useful life for every class of pile", () => {
    for (const of of Object.values(DEPRECIATION_CLASS).flatMap((c) => (typeof c === "string" ? [c] : Object.values(c)))) expect(USEFUL_LIVES.some((u) => u.of === of), of).toBe(true);
  });

  it("tell makes apart in depreciation only where they live differently", () => {
    for (const f of FIBRE_IDS) if ("medianYears" in LIFE[f]) expect(typeof DEPRECIATION_CLASS[f], f).toBe("string");
  });

  it("use every loss in the valuation of an action", () => {
    const elsewhere = ["trouble-question", "trouble-photo", "trouble-bench", "called-viscose-was-silk", "called-silk-was-viscose", "misnamed-otherwise"];
    const used = new Set<string>([...RISKS.map((r) => r.loss), ...elsewhere]);
    expect(Object.keys(LOSSES).filter((l) => !used.has(l))).toEqual([]);
  });

  it("end urgency with a row that always holds", () => {
    const last = URGENCY[URGENCY.length - 1];
    expect(last).toMatchObject({ level: "can-wait" });
    expect(last?.all ?? last?.likely).toBeUndefined();
  });
});

describe("the printed table of what a change is handled as", () => {
  it("tells everybody, of every change, what judgements and letters handle it as, and that no source is published for it", () => {
    const rows = publicTables("prospects").find((t) => t.id === "handled-as")?.rows ?? [];
    const printed = Object.fromEntries(rows.map((r) => [r.name, r.cells]));
    const handled = CHANGE_IDS.map((id) => [answerInWords(`changes:${id}`), handledAs(readTold(findingsFromAnswers({ changes: [id] }, {}))).map(mechanismName)] as const);
    expect(printed).toEqual(Object.fromEntries(handled.filter(([, causes]) => causes.length > 0)));
    expect(rows).toHaveLength(4);
    for (const { how, source } of rows) expect([how, source]).toEqual(["common practice", "Common practice, no published source"]);
  });
});
