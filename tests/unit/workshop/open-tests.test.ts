import { describe, expect, it } from "vitest";
import { BENCH_TESTS, type BenchTestRow } from "../../../lib/trade/bench-tests";
import { closedReadings, openTests } from "../../../lib/workshop/open-tests";
import { DEFAULT_SETTINGS, workshopSettingsSchema } from "../../../lib/workshop/settings-schema";

const rows = Object.entries(BENCH_TESTS) as [keyof typeof BENCH_TESTS, BenchTestRow][];
const ON = { byId: "nell", at: "2026-11-25T09:00:00.000Z" };

describe("openTests", () => {
  it("opens only what needs no reagent before anybody has switched one on", () => {
    const open = openTests(DEFAULT_SETTINGS.reagents);
    expect(open.length).toBeGreaterThan(0);
    for (const [id, row] of rows) expect(open.includes(id), id).toBe(row.reagent === null);
    for (const id of ["burn", "hypochlorite", "sulphuric-acid-75"] as const) expect(open).not.toContain(id);
  });
  it("opens a test with its reagent and no other", () => {
    const before = openTests({});
    expect(openTests({ hypochlorite: ON }).filter((t) => !before.includes(t))).toEqual(["hypochlorite"]);
  });
});

describe("closedReadings", () => {
  it("closes the readings of a dye test that take a reagent, each by its own", () => {
    expect(closedReadings("dye-bleed", {}).sort()).toEqual(["acid", "alkali"]);
    expect(closedReadings("dye-bleed", { "dye-test-acid": ON })).toEqual(["alkali"]);
    expect(closedReadings("microscopy", {})).toEqual([]);
  });
});

describe("workshopSettingsSchema on reagents", () => {
  it("reads settings that were stored before there were any, with all of them off", () => {
    const { reagents: _, ...older } = DEFAULT_SETTINGS;
    expect(workshopSettingsSchema.parse(older)).toEqual(DEFAULT_SETTINGS);
  });
  it("takes no reagent that is not in the table, and none without who and when", () => {
    const takes = (reagents: object) => workshopSettingsSchema.safeParse({ ...DEFAULT_SETTINGS, reagents }).success;
    expect(takes({ flame: ON })).toBe(true);
    expect(takes({ turpentine: ON })).toBe(false);
    expect(takes({ flame: true })).toBe(false);
    expect(takes({ flame: { ...ON, at: "yesterday" } })).toBe(false);
  });
});
