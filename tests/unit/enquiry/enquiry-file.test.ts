import { Readable } from "node:stream";
import { afterEach, describe, expect, it, vi } from "vitest";
import { triage } from "../../../lib/commands/triage";
import { findingsOfFile } from "../../../lib/enquiry/bench-findings";
import { enquiryFileSchema } from "../../../lib/enquiry/enquiry-file";
import { parseStep } from "../../../lib/enquiry/step-forms";
import { assessmentOf } from "../../../lib/enquiry/stored";
import { assess, defaultSettings } from "../../../lib/triage/assess";
import type { Assessment } from "../../../lib/triage/assessment";

const fileOf = (rug: object) => ({ wetNow: "no", rugs: [{ sellerSaid: "silk", ...rug }] });
const read = (rug: object) => enquiryFileSchema.safeParse(fileOf(rug));
const placesOf = (rug: object) => (read(rug).error?.issues ?? []).map((i) => i.path.slice(2).join("."));
const run = (file: object) => triage(["-"], { stdin: Readable.from([JSON.stringify(file)]), now: new Date("2026-03-01T09:00:00Z") });

const PAPER = { test: "burn", of: { part: "pile", yarn: "field" }, readings: { smell: "paper", approach: "scorches" } };
const REPORT = { name: "Fenwick Fibre Laboratory", percents: { viscose: 100 } };

describe("a file with bench tests", () => {
  it("gives the findings that the desk gives", () => {
    const [rug] = enquiryFileSchema.parse(fileOf({ benchTests: [PAPER, { test: "wet-strength", readings: { wet: "much-weaker" } }], laboratory: REPORT })).rugs;
    expect(findingsOfFile(rug ?? {})).toEqual([
      { what: "test:burn", value: PAPER.readings, strength: "bench", from: "bench:1", of: { part: "pile", yarn: "field" } },
      { what: "test:wet-strength", value: { wet: "much-weaker" }, strength: "bench", from: "bench:2", of: { part: "pile", yarn: "whole" } },
      { what: "laboratory", value: { viscose: 100 }, strength: "laboratory", from: "laboratory:Fenwick Fibre Laboratory", of: { part: "pile", yarn: "whole" } },
    ]);
  });
  it("is judged with them by the command", async () => {
    const [bare, reported] = (await Promise.all([run(fileOf({})), run(fileOf({ laboratory: REPORT }))])).map((out) => JSON.parse(out) as Assessment);
    const viscose = (a: Assessment | undefined) => a?.fibres.find((f) => f.fibre === "viscose")?.probability ?? 0;
    expect(viscose(reported)).toBeGreaterThan(0.9);
    expect(viscose(bare)).toBeLessThan(0.9);
    expect(reported?.findings.map((f) => f.strength)).toContain("laboratory");
  });
  it("names the place of what is wrong", () => {
    expect(placesOf({ benchTests: [{ ...PAPER, test: "tasting" }] })).toEqual(["benchTests.0.test"]);
    expect(placesOf({ benchTests: [{ ...PAPER, readings: { smell: "roses" } }] })).toEqual(["benchTests.0.readings.smell"]);
    expect(placesOf({ benchTests: [{ ...PAPER, of: { part: "ground", yarn: "accent" } }] })).toEqual(["benchTests.0.of"]);
    expect(placesOf({ laboratory: { ...REPORT, percents: { viscose: 80 } } })).toEqual(["laboratory.percents"]);
  });
  it("stands in the schema that the command prints", async () => {
    const schema = await triage(["--schema"], { stdin: Readable.from([]), now: new Date() });
    expect(schema).toContain("benchTests");
    expect(schema).toContain("formic-acid-zinc-chloride");
  });
});

describe("a year and a price that cannot be", () => {
  afterEach(() => { vi.useRealTimers(); });
  it("takes the year it is and none after it, also where the new year begins first", () => {
    vi.useFakeTimers({ now: new Date("2026-12-31T09:00:00Z"), toFake: ["Date"] });
    expect(parseStep("price", { boughtYear: "2026" }).ok).toBe(true);
    expect(parseStep("price", { boughtYear: "2027" })).toEqual({ ok: false, errors: { boughtYear: "That year is still to come." } });
    vi.setSystemTime(new Date("2026-12-31T10:00:00Z"));
    expect(parseStep("price", { boughtYear: "2027" }).ok).toBe(true);
  });
  it("says it in a file as well", () => expect(placesOf({ boughtYear: 3020 })).toEqual(["boughtYear"]));
  it.each(["-5", "−5", "£ -1,200", "- 40"])("says of %j that a price cannot be below zero", (price) => {
    expect(parseStep("price", { price })).toEqual({ ok: false, errors: { price: "A price cannot be below zero." } });
  });
  it.each(["950-1200", "ten", "1.2.3"])("says of %j that it cannot be read as a price", (price) => {
    expect(parseStep("price", { price })).toEqual({ ok: false, errors: { price: `We cannot read “${price}” as a price. Write it in figures, such as 1,200, about £1,200 or 1.2k.` } });
  });
  it("names no more than the beginning of what could not be read", () => {
    const { errors } = parseStep("price", { price: "x".repeat(500) }) as { errors: Record<string, string> };
    expect(errors["price"]).toContain(`“${"x".repeat(40)}…”`);
  });
  it("takes a year that was told roughly or counted back, and says what it cannot read as one", () => {
    vi.useFakeTimers({ now: new Date("2026-11-29T09:00:00Z"), toFake: ["Date"] });
    for (const [boughtYear, year] of [["about 2019", 2019], ["3 years ago", 2023]] as const)
      expect(parseStep("price", { boughtYear })).toMatchObject({ ok: true, patch: { rug: { boughtYear: year } } });
    expect(parseStep("price", { boughtYear: "200 years ago" })).toEqual({ ok: false, errors: { boughtYear: "That year is too long ago to be when you bought it." } });
    expect(parseStep("price", { boughtYear: "long ago" })).toEqual({ ok: false, errors: { boughtYear: "We cannot read “long ago” as a year. Write four figures, such as 2019, or how long ago, such as 3 years ago." } });
  });
  it("takes the currency that was typed, before the one chosen beside it, and asks which dollars", () => {
    const paid = (price: string, currency: "GBP" | "CAD") => parseStep("price", { price, currency });
    expect(paid("about £1,200", "CAD")).toMatchObject({ ok: true, patch: { rug: { price: 1200, currency: "GBP" } } });
    expect(paid("about 1,200", "CAD")).toMatchObject({ ok: true, patch: { rug: { price: 1200, currency: "CAD" } } });
    expect(paid("$900", "CAD")).toMatchObject({ ok: true, patch: { rug: { price: 900, currency: "CAD" } } });
    expect(paid("$900", "GBP")).toEqual({ ok: false, errors: { currency: "Choose which dollars you paid in." } });
  });
  it("says of a side below zero that it is too short", () => {
    expect(parseStep("size", { unit: "cm", widthCm: "-170" })).toEqual({ ok: false, errors: { widthCm: "The width must be at least 20 cm (8 in)." } });
  });
});

describe("assessmentOf", () => {
  it("reads an assessment of an earlier model, which knew no components and no cap", () => {
    const a = assess([], defaultSettings(), "2026-03-01T09:00:00Z");
    const { components: _, ...older } = JSON.parse(JSON.stringify(a)) as Assessment;
    const { cap: __, ...balance } = older.balance;
    expect(assessmentOf({ ...older, balance })).toMatchObject({ components: [], balance: { ...balance, cap: 0 } });
  });
});
