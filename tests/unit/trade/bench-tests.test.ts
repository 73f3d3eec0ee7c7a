import { describe, expect, it } from "vitest";
import { BENCH_RESPONSES, LEADING_READING, READING_POWERS, RESPONSE_VOTES } from "../../../lib/trade/bench-responses";
import { responseTable, type ResponseVotes } from "../../../lib/trade/bench-responses-rule";
import { BENCH_TESTS, type BenchTestRow, type ReagentId, type TestId } from "../../../lib/trade/bench-tests";
import { FRINGE_FEELS, GROUNDS, GROUND_UNDER_SILK, SEWN_FRINGE } from "../../../lib/trade/ground-fringe";
import { SMALLEST_CELL } from "../../../lib/trade/likelihood-table";
import { REAGENTS, type ReagentRow } from "../../../lib/trade/reagents";
import { SINGLE_FIBRES } from "../../../lib/trade/single-fibres";
import { YARNS, YARN_IDS } from "../../../lib/trade/yarns";
import { NAMED } from "../../../lib/triage/classes";

const rows = Object.entries(BENCH_TESTS) as [TestId, BenchTestRow][];
const reagents = Object.entries(REAGENTS) as [ReagentId, ReagentRow][];
const sum = (row: readonly number[]) => row.reduce((a, b) => a + b, 0);

describe("BENCH_TESTS", () => {
  it("holds every test the desk and triage know", () => {
    expect(rows.map(([id]) => id).sort()).toEqual([
      "acetone", "burn", "dye-bleed", "formic-acid", "formic-acid-zinc-chloride", "hypochlorite", "microscopy", "moisture", "spot-ph", "sulphuric-acid-75",
        "ultraviolet", "wet-strength",
    ]);
  });
  it.each(rows)("%s: cautions, readings with a choice in them, a source and what it takes", (_, row) => {
    expect(row.cautions.length).toBeGreaterThanOrEqual(2);
    expect(row.source).not.toBe("");
    expect(row.takes.minutes).toBeGreaterThan(0);
    for (const r of Object.values(row.readings)) if (r.kind === "choice") expect(Object.keys(r.answers).length).toBeGreaterThanOrEqual(2);
  });
  it("gives no dose: no degree, gram, litre or molar in any sentence", () => {
    for (const [, row] of rows) expect(JSON.stringify([row.tells, row.cautions, row.readings, row.takes.fibres])).not.toMatch(/\d+ ?(°|g\b|ml|mol|M\b|l\b)/);
  });
  it("warns of fire for the flame, of gas for hypochlorite, and keeps every acid from hypochlorite", () => {
    expect(BENCH_TESTS.burn.cautions.join(" ")).toMatch(/Fire.*ventilation/s);
    expect(BENCH_TESTS.hypochlorite.cautions.join(" ")).toMatch(/Never near an acid or ammonia, its waste included/);
    for (const id of ["formic-acid", "formic-acid-zinc-chloride",
      "sulphuric-acid-75"] as const) expect(BENCH_TESTS[id].cautions.join(" ")).toMatch(/Never near hypochlorite or its waste/);
    for (const id of ["hypochlorite", "acetone", "formic-acid", "formic-acid-zinc-chloride",
      "sulphuric-acid-75"] as const) expect(BENCH_TESTS[id].cautions.join(" ")).toMatch(/fume cupboard.*goggles.*gloves/s);
  });
  it("has answers of every response table among its own, and a leading reading for each test of a yarn", () => {
    for (const t of BENCH_RESPONSES) {
      const reading = (BENCH_TESTS[t.test as TestId] as BenchTestRow).readings[t.reading];
      expect(reading?.kind === "choice" ? Object.keys(reading.answers) : []).toEqual(t.answers);
    }
    for (const [id, row] of rows) {
      expect(LEADING_READING[id] !== undefined).toBe(row.speaksFor === "yarn");
      if (row.speaksFor === "yarn") expect(BENCH_RESPONSES.filter((t) => t.test === id).map((t) => t.reading).sort()).toEqual(Object.keys(row.readings).sort());
    }
  });
});

describe("REAGENTS", () => {
  it("holds every reagent a test or a reading takes", () => {
    const taken = rows.flatMap(([, row]) => [row.reagent, ...Object.values(row.readingReagents ?? {})]).filter((r) => r !== null);
    expect([...new Set(taken)].sort()).toEqual(reagents.map(([id]) => id).sort());
  });
  it.each(reagents)("%s: assessed, cautions and waste are said", (_, row) => {
    expect(Math.min(row.assessed.length, row.cautions.length, row.waste.length)).toBeGreaterThan(0);
  });
  it("keeps apart both ways", () => {
    for (const [id, row] of reagents) for (const other of row.neverWith) expect((REAGENTS[other] as ReagentRow).neverWith, `${other} never with ${id}`).toContain(id);
  });
  it("keeps hypochlorite from everything acid and from ammonia", () => {
    for (const id of ["formic-acid", "formic-acid-zinc-chloride", "sulphuric-acid-75", "dye-test-acid",
      "dye-test-alkali"] as const) expect(REAGENTS.hypochlorite.neverWith).toContain(id);
  });
});

describe("BENCH_RESPONSES", () => {
  it.each(BENCH_RESPONSES.map((t) => [t.what, t] as const))("%s: every row sums to 1, no cell under .001, every row with its source", (_, t) => {
    for (const f of NAMED) {
      expect(t.rows[f]).toHaveLength(t.answers.length);
      expect(sum(t.rows[f])).toBeCloseTo(1, 9);
      expect(Math.min(...t.rows[f])).toBeGreaterThanOrEqual(SMALLEST_CELL);
      expect(t.rowSources[f].source).not.toBe("");
    }
  });
  it("hears only votes for answers there are, with shares that sum to 1", () => {
    for (const t of RESPONSE_VOTES) {
      expect(sum(t.strays)).toBeCloseTo(1, 9);
      for (const v of t.votes) {
        for (const a of Array.isArray(v.says) ? (v.says as string[]) : Object.keys(v.says)) expect(t.answers).toContain(a);
        if (!Array.isArray(v.says)) expect(sum(Object.values(v.says))).toBeCloseTo(1, 9);
      }
    }
  });
  it("tempers more the more readings a test has, for as many as any test has", () => {
    expect(READING_POWERS.length).toBeGreaterThanOrEqual(Math.max(...rows.map(([, r]) => Object.keys(r.readings).length)));
    READING_POWERS.slice(1).forEach((p, i) => {
      expect(p).toBeLessThan(READING_POWERS[i] as number);
      expect(p * (i + 2)).toBeGreaterThan((READING_POWERS[i] as number) * (i + 1));
    });
  });
});

describe("responseTable", () => {
  const source = { how: "elicited", source: "made up for the test" } as const;
  const base: ResponseVotes = { test: "t", reading: "r", answers: ["dissolves", "partly", "stays"], error: 0.1, strays: [0.2, 0.6, 0.2],
    kin: { lyocell: "viscose" }, mixed: "partly", source, votes: [] };
  const vote = (how: "read" | "memory", fibres: ["silk"] | ["viscose"] | ["wool"], ...says: string[]) => ({ how, source: "a", fibres, says });

  it("shares the votes out, a remembered one at half, with the chance of misreading", () => {
    // silk: one read vote dissolves, one remembered stays: shares 2/3 and 1/3; × .9 + strays × .1.
    const { rows: r } = responseTable({ ...base, votes: [vote("read", ["silk"], "dissolves"), vote("memory", ["silk"], "stays")] });
    [0.9 * (2 / 3) + 0.02, 0.06, 0.9 / 3 + 0.02].forEach((p, i) => expect(r.silk[i]).toBeCloseTo(p, 9));
  });
  it("lets kin answer for a fibre nobody speaks of, and says so; nobody at all: any answer", () => {
    const t = responseTable({ ...base, votes: [vote("read", ["viscose"], "stays")] });
    expect(t.rows.lyocell).toEqual(t.rows.viscose);
    expect(t.rowSources.lyocell.source).toMatch(/Taken to answer as viscose \(elicited\)/);
    expect(t.rowSources.wool.how).toBe("elicited");
    expect(t.rows.wool[0]).toBeCloseTo(0.9 / 3 + 0.02, 9);
  });
  it("keeps one kind of knowing, and calls a row of several kinds computed", () => {
    const t = responseTable({ ...base, votes: [vote("read", ["viscose"], "stays"), vote("read", ["silk"], "stays"), vote("memory", ["silk"], "stays")] });
    expect([t.rowSources.viscose.how, t.rowSources.silk.how]).toEqual(["read", "computed"]);
  });
  it("has a mixture answer partly where one fibre dissolves and the other stays", () => {
    const { rows: r } = responseTable({ ...base, votes: [vote("read", ["silk"], "dissolves"), vote("read", ["viscose"], "stays"), vote("read", ["wool"], "dissolves")] });
    expect(r["silk-viscose"][1]).toBeGreaterThan(0.6);
    expect(r["wool-silk"][0]).toBeGreaterThan(0.7);
  });
  it("draws rows that a test cannot tell apart towards each other, by its share", () => {
    const votes = [vote("read", ["silk"], "dissolves"), vote("read", ["wool"], "stays")];
    const gap = (share: number) => {
      const { rows: r } = responseTable({ ...base, votes, alike: { groups: [["silk", "wool"]], share } });
      return (r.silk[0] as number) - (r.wool[0] as number);
    };
    expect(gap(0.5)).toBeCloseTo(gap(0) / 2, 9);
    expect(gap(1)).toBeCloseTo(0, 9);
  });
});

describe("yarns, grounds and fringes", () => {
  it("leave something over for the unexpected in every row", () => {
    for (const f of NAMED) for (const yarn of YARN_IDS) {
      const total = sum(Object.values(YARNS[f][yarn]));
      expect(total).toBeLessThan(1);
      expect(total).toBeGreaterThan(0.85);
    }
    for (const row of [...Object.values(GROUNDS), GROUND_UNDER_SILK, SEWN_FRINGE]) {
      expect(sum(Object.values(row))).toBeLessThan(1);
      expect(sum(Object.values(row))).toBeGreaterThan(0.8);
    }
  });
  it("have a fringe feel one way or another for every fibre", () => {
    for (const f of SINGLE_FIBRES) expect(sum(Object.values(FRINGE_FEELS[f]))).toBeCloseTo(1, 9);
  });
});
